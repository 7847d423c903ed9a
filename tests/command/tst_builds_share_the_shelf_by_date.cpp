// SPDX-License-Identifier: MIT
//
// Two builds and the last hose ends, reckoned by hand. The earlier one goes from an O-ring boss to
// its hose by A-66 and HE-6 or by B-68 and HE-8; the later one has a flare that only HE-6 fits (an
// O-ring boss takes its own male thread, a flare its own swivel nut: SAE J1926-1, SAE J514).

#include "tests/command/changed_shop.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock::tests;

namespace {

QByteArray templateOf(const QByteArray &id)
{
    return "id = \"" + id + "\"\ntitle = \"" + id +
           "\"\nsystem = \"fuel\"\nfluid = \"gasoline\"\nfilters = \"none\"\n"
           "[[station]]\nid = \"cell\"\ntitle = \"cell\"\nkind = \"tank\"\nlevel = \"suction\"\n"
           "[[station]]\nid = \"pump\"\ntitle = \"pump\"\nkind = \"pump\"\n"
           "level = \"suction\"\nbracketed = false\n[[run]]\nid = \"supply\"\nlevel = \"suction\"\n"
           "from = \"cell.out\"\nto = \"pump.in\"\nlength = \"36 in\"\ndash = \"-6\"\n";
}

constexpr const char *Parts =
    "part,kind,description,unit,ports,construction,liner,dash,fits,angle,designation\n"
    "TANK-BOSS,tank,cell,,out: ORB -6 female,,,,,,\n"
    "TANK-FLARE,tank,cell,,out: AN -6 male,,,,,,\n"
    "PUMP,pump,pump,,in: AN -10 male,,,,,,\n"
    "PT-6,hose,hose,in,cut: HOSE PT -6,PT,PTFE,6,,,\n"
    "OR-6,ring,ring,,,,,,,,AS568-906\n"
    "A-66,adapter,adapter,,a: ORB -6 male; b: AN -6 male,,,,,,\n"
    "B-68,adapter,adapter,,a: ORB -6 male; b: AN -8 male,,,,,,\n"
    "HE-6,hose end,end,,hose: HOSE PT -6; end: AN -6 female swivel,,,6,PT,0,\n"
    "HE-8,hose end,end,,hose: HOSE PT -6; end: AN -8 female swivel,,,6,PT,0,\n"
    "HE-10,hose end,end,,hose: HOSE PT -6; end: AN -10 female swivel,,,6,PT,0,\n";

} // namespace

class BuildsByDate : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    /// A shop where the earlier build's other way costs so much on the shelf.
    [[nodiscard]] std::string shopWhereB68Cost(const QByteArray &value) const;
    [[nodiscard]] static Ran shortOf(const std::string &shop, Words more = {});
    [[nodiscard]] static std::string lacking(const Ran &ran);

private Q_SLOTS:
    void earlierBuildSparesTheLaterOneItsEnd();
    void earlierBuildIsNotWorseOffForIt();
    void anotherDayChangesWhoTakesWhat();
};

std::string BuildsByDate::shopWhereB68Cost(const QByteArray &value) const
{
    const std::string files = m_folder.path().toStdString() + "/files" + value.toStdString();
    const QDir folder(QString::fromStdString(files));
    if (!folder.mkpath(QStringLiteral("parts")) || !folder.mkpath(QStringLiteral("templates")))
        return {};
    writeBytes(files + "/parts/all.csv", Parts);
    writeBytes(files + "/suppliers.csv", "supplier,name,lead days\nS,Supplier,3\n");
    writeBytes(files + "/offers.csv",
               "part,supplier,supplier part,currency,pack,minimum,prices,lead days\n"
               "HE-6,S,,USD,1,1,1: 4,\n");
    writeBytes(files + "/stock.csv", "part,place,quantity,value,lot,condition,missing\n"
                                     "OR-6,B1,2,2,,new,\nA-66,B1,1,2,,new,\nB-68,B1,1," +
                                         value +
                                         ",,new,\nHE-6,B1,1,2,,new,\nHE-8,B1,1,2,,new,\n"
                                         "HE-10,B1,2,4,,new,\n");
    writeBytes(files + "/templates/boss.toml", templateOf("boss"));
    writeBytes(files + "/templates/flare.toml", templateOf("flare"));
    QByteArray builds;
    for (const char *id : {"boss", "flare"})
        builds += QByteArray("[[build]]\nid = \"") + id + "-build\"\ntitle = \"" + id +
                  "\"\ncar = \"car-" + id + "\"\ntemplate = \"" + id +
                  "\"\nprefer = \"shelf\"\npicks = { cell = \"TANK-" + QByteArray(id).toUpper() +
                  "\" }\nby = \"2027-0" + (QByteArray(id) == "boss" ? "1" : "2") + "-10\"\n";
    writeBytes(files + "/builds.toml", builds);
    QByteArray shop = "title = \"Shop\"\ncurrency = \"USD\"\n";
    for (const char *place :
         {"B1:bin", "supplier-S:supplier", "scrap:scrap", "way:in transit", "used:used up",
          "opening:opening", "bench:bench", "diff:difference"}) {
        const auto of = QByteArray(place).split(':');
        shop += "[[place]]\nid = \"" + of[0] + "\"\ntitle = \"" + of[0] + "\"\nkind = \"" + of[1] +
                "\"\n";
    }
    writeBytes(files + "/shop.toml", shop);
    const std::string file = files + ".flarestock";
    const Ran begun = runFlarestock({"begin", "--from", files, "--to", file});
    return begun.status == 0 ? file : begun.err;
}

Ran BuildsByDate::shortOf(const std::string &shop, Words more)
{
    Words words{"short", "--on", "2026-12-01", "--json", "--shop", shop};
    words.insert(words.end(), more.begin(), more.end());
    return runFlarestock(words);
}

/// "HE-6 for flare-build; ", of what joins.
std::string BuildsByDate::lacking(const Ran &ran)
{
    std::string all = ran.err;
    for (const auto &line : arrayOf(ran, "lines")) {
        const std::string part = textOf(line, "part");
        if (textOf(line, "short") != "0" && (part.starts_with("HE") || part.starts_with("A-") ||
                                             part.starts_with("B-") || part == "OR-6"))
            all += part + " for " + textOf(line, "for") + "; ";
    }
    return all;
}

void BuildsByDate::earlierBuildSparesTheLaterOneItsEnd()
{
    const std::string shop = shopWhereB68Cost("2");
    const Ran said = shortOf(shop);
    QCOMPARE(lacking(said), std::string());
    const auto together = said.json().value(QStringLiteral("together")).toObject();
    QVERIFY(together.value(QStringLiteral("proven")).toBool());
    QVERIFY(together.value(QStringLiteral("searched")).toBool());
    // By itself the build takes the first of two ways that are as good for it.
    const auto others = together.value(QStringLiteral("otherWays")).toArray();
    QCOMPARE(others.size(), 1);
    QCOMPARE(textOf(others[0], "build"), std::string("boss-build"));
    QCOMPARE(textOf(others[0], "joint"), std::string("supply.start"));
    QCOMPARE(textOf(others[0], "way"), std::string("B-68 + HE-8"));
    QCOMPARE(textOf(others[0], "bill"), std::string("A-66 + HE-6"));
    const Ran words = runFlarestock({"short", "--on", "2026-12-01", "--shop", shop});
    QVERIFY2(words.out.find("--pick 'supply.start=B-68 + HE-8'") != std::string::npos,
             words.out.c_str());
}

/// A cent is no piece; but what a build gets by itself, it gets.
void BuildsByDate::earlierBuildIsNotWorseOffForIt()
{
    const Ran said = shortOf(shopWhereB68Cost("3"));
    QCOMPARE(lacking(said), std::string("HE-6 for flare-build; "));
    const auto together = said.json().value(QStringLiteral("together")).toObject();
    QVERIFY(together.value(QStringLiteral("proven")).toBool());
    QVERIFY(together.value(QStringLiteral("otherWays")).toArray().isEmpty());
}

void BuildsByDate::anotherDayChangesWhoTakesWhat()
{
    const Ran moved = shortOf(shopWhereB68Cost("3.5"), {"--move", "boss-build=2027-03-10"});
    QCOMPARE(lacking(moved), std::string());
    const auto end = objectWith(arrayOf(moved, "changes"), "part", "HE-6");
    QVERIFY2(!end.isEmpty(), moved.out.c_str());
    const auto together = moved.json().value(QStringLiteral("together")).toObject();
    QVERIFY(together.value(QStringLiteral("proven")).toBool());
}

QTEST_GUILESS_MAIN(BuildsByDate)
#include "tst_builds_share_the_shelf_by_date.moc"
