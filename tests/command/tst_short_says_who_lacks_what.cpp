// SPDX-License-Identifier: MIT
//
// What lacks, for whom and until when, as a shell asks it: it adds up with the bill of the build
// that comes first and with what lies free, what another day changes is what the shop says once the
// build has that day, and a plan in a file is netted as its textbook prints it.

#include "tests/command/changed_shop.h"

#include <QTest>

#include <map>

using namespace flarestock::tests;

namespace {

constexpr const char *On = "2026-11-28";

double amountOf(const QJsonValue &object, const char *key)
{
    return std::stod(textOf(object, key)); // Small whole numbers and 64ths: exact.
}

std::map<std::string, std::string> shortByPart(const QJsonArray &lines)
{
    std::map<std::string, std::string> all;
    for (const auto &line : lines)
        if (amountOf(line, "short") > 0)
            all[textOf(line, "part")] = textOf(line, "short");
    return all;
}

} // namespace

class ShortSaysWhoLacksWhat : public QObject {
    Q_OBJECT

private:
    ChangedShop m_shop;
    [[nodiscard]] QJsonArray lines(Words words) const
    {
        words.insert(words.begin(), {"short", "--on", On});
        return arrayOf(m_shop.json(words), "lines");
    }

private Q_SLOTS:
    void init() { m_shop.renew(); }
    void firstBuildLacksWhatItsBillSays();
    void noPieceIsGivenTwice();
    void whatIsPromisedStaysItsOwn();
    void anotherDayIsAsIfItStoodInTheShop();
    void planOfATextbook();
    void wrongWordsAreAnswered();
};

void ShortSaysWhoLacksWhat::firstBuildLacksWhatItsBillSays()
{
    const auto bill = arrayOf(m_shop.json({"bill", "--build", "coupe-fuel"}), "lines");
    const auto wanted = shortByPart(bill);
    QVERIFY(!wanted.empty());
    const auto said = lines({"--build", "coupe-fuel"});
    QCOMPARE(shortByPart(said), wanted);
    QCOMPARE(said.size(), bill.size());
    const Ran strict = m_shop.run({"short", "--strict"});
    QCOMPARE(strict.status, 1);
}

/// What is free goes to the earliest build first, as far as it reaches, and to no other then.
void ShortSaysWhoLacksWhat::noPieceIsGivenTwice()
{
    const Ran stock = m_shop.json({"stock", "--on", On});
    std::map<std::string, double> left;
    for (const auto &line : arrayOf(stock, "stock"))
        left[textOf(line, "part")] += amountOf(line, "free");
    std::set<std::string> notCounted;
    for (const auto &level : arrayOf(stock, "levels"))
        notCounted.insert(textOf(level, "part"));
    std::set<std::string> builds;
    std::string day;
    int shared = 0;
    for (const auto &line : lines({})) {
        QCOMPARE(amountOf(line, "own") + amountOf(line, "free") + amountOf(line, "short"),
                 amountOf(line, "need"));
        const std::string part = textOf(line, "part");
        const bool isPlace = line.toObject().value(QStringLiteral("place")).toBool();
        if (isPlace || textOf(line, "unit") != "each" || notCounted.contains(part) ||
            part.starts_with("TL-")) // Tools come back.
            continue;
        QVERIFY(day <= textOf(line, "day"));
        day = textOf(line, "day");
        builds.insert(textOf(line, "for"));
        const double given = std::min(left[part], amountOf(line, "need") - amountOf(line, "own"));
        QCOMPARE(std::pair(part, amountOf(line, "free")), std::pair(part, given));
        left[part] -= given;
        shared += given > 0 && amountOf(line, "short") > 0 ? 1 : 0;
    }
    QVERIFY(builds.size() >= 10 && shared >= 3);
}

void ShortSaysWhoLacksWhat::whatIsPromisedStaysItsOwn()
{
    const auto before = lines({"--build", "coupe-fuel"});
    std::string part;
    for (const auto &line : before)
        if (part.empty() && textOf(line, "unit") == "each" && amountOf(line, "free") > 0)
            part = textOf(line, "part");
    const auto was = objectWith(before, "part", part);
    QCOMPARE(m_shop.run({"reserve", "coupe-fuel", part, "1"}).status, 0);
    const auto now = objectWith(lines({"--build", "coupe-fuel"}), "part", part);
    QCOMPARE(amountOf(now, "own"), 1.0);
    QCOMPARE(amountOf(now, "free"), amountOf(was, "free") - 1);
    QCOMPARE(textOf(now, "short"), textOf(was, "short"));
}

void ShortSaysWhoLacksWhat::anotherDayIsAsIfItStoodInTheShop()
{
    const Ran moved = m_shop.json({"short", "--on", On, "--move", "coupe-fuel=2027-06-30"});
    QVERIFY2(moved.status == 0, moved.err.c_str());
    QVERIFY(!arrayOf(moved, "changes").isEmpty());
    const std::string folder = m_shop.path() + ".files";
    QCOMPARE(m_shop.run({"export", "--to", folder}).status, 0);
    const std::string builds = folder + "/builds.toml";
    QByteArray text = bytesOf(builds);
    const auto at = text.indexOf("2026-12-12", text.indexOf("coupe-fuel"));
    QVERIFY(at > 0);
    writeBytes(builds, text.replace(at, 10, "2027-06-30"));
    const Ran taken = m_shop.run({"import", "--from", folder});
    QVERIFY2(taken.status == 0, taken.err.c_str());
    QCOMPARE(lines({}), arrayOf(moved, "lines"));
}

// Lecture example of a chair of seat, back and four legs, with published answers for weeks 1 to 4.
void ShortSaysWhoLacksWhat::planOfATextbook()
{
    const std::string file = m_shop.path() + ".chair.toml";
    QByteArray text = R"(
[[item]]
id = "chair"
on-hand = 260
lead = 2
made-of = { seat = 1, legs = "4" }
[[item]]
id = "seat"
on-hand = 60
lead = 2
[[item]]
id = "legs"
on-hand = 80
lead = 2
[[due]]
item = "seat"
period = 1
quantity = 50
)";
    const std::vector<int> wanted{150, 0, 70, 0, 175, 0, 90, 60};
    for (std::size_t i = 0; i < wanted.size(); ++i)
        text +=
            "[[need]]\nitem = \"chair\"\nperiod = " + QByteArray::number(static_cast<int>(i + 1)) +
            "\nquantity = " + QByteArray::number(wanted[i]) + "\nfor = \"week\"\n";
    writeBytes(file, text);
    const Ran ran = runFlarestock({"short", "--plan", file, "--json"});
    QVERIFY2(ran.status == 0, ran.err.c_str());
    const auto seat = objectWith(arrayOf(ran, "items"), "item", "seat");
    QCOMPARE(seat.value(QStringLiteral("level")).toInt(), 1);
    std::string releases;
    for (const auto &release : seat.value(QStringLiteral("releases")).toArray())
        releases += textOf(release, "quantity") + "@" +
                    std::to_string(release.toObject().value(QStringLiteral("release")).toInt()) +
                    " ";
    QCOMPARE(releases, std::string("25@1 90@3 60@4 "));
    double needed = 0;
    double met = 0;
    for (const auto &need : arrayOf(ran, "needs")) {
        needed += amountOf(need, "quantity");
        met += amountOf(need, "covered") + amountOf(need, "short");
    }
    QVERIFY(needed > 0);
    QCOMPARE(met, needed);
    QCOMPARE(runFlarestock({"short", "--plan", file, "--strict"}).status, 1);
}

void ShortSaysWhoLacksWhat::wrongWordsAreAnswered()
{
    const std::string file = m_shop.path() + ".circle.toml";
    writeBytes(file, "[[item]]\nid = \"A\"\nmade-of = { B = 1 }\n[[item]]\nid = \"B\"\n"
                     "made-of = { A = 1 }\n");
    const Ran circle = runFlarestock({"short", "--plan", file});
    QVERIFY(circle.refusesInOneLine());
    QVERIFY2(circle.err.find("A > B > A") != std::string::npos, circle.err.c_str());
    writeBytes(file, "[[item]]\nid = \"A\"\nlead = -1\n");
    QCOMPARE(runFlarestock({"short", "--plan", file}).status, 2);
    QVERIFY(runFlarestock({"short"}).refusesInOneLine());
    QVERIFY(m_shop.run({"short", "--move", "coupe-fuel"}).refusesInOneLine());
    QVERIFY(m_shop.run({"short", "--move", "coupe-fuel=soon"}).refusesInOneLine());
    QVERIFY(m_shop.run({"short", "--build", "nobody"}).refusesInOneLine());
    QVERIFY(m_shop.run({"short", "--by", "2027-02-30"}).refusesInOneLine());
}

QTEST_GUILESS_MAIN(ShortSaysWhoLacksWhat)
#include "tst_short_says_who_lacks_what.moc"
