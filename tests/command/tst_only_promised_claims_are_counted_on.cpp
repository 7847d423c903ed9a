// SPDX-License-Identifier: MIT
//
// What a supplier owes helps a build only once he has said by when: what was short of an order is
// not awaited of the order as well. (Common practice, no source.)

#include "tests/command/demo_copy.h"
#include "tests/command/run_flarestock.h"

#include <QJsonArray>
#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

class PromisedClaims : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatLacksInABox();
    void whatWasShortOfAnOrder();

private:
    /// How much of a part lacks to a build, as `short` says; "0" where it is not short.
    static QString lacking(const std::string &shop, const char *part);
    static void done(Words words, const std::string &shop);
};

QString PromisedClaims::lacking(const std::string &shop, const char *part)
{
    const auto said = runFlarestock(
        {"short", "--build", "coupe-fuel", "--on", "2026-11-28", "--shop", shop, "--json"});
    for (const auto &each : said.json().value(QLatin1String("lines")).toArray()) {
        const auto line = each.toObject();
        if (line.value(QLatin1String("part")).toString() == QLatin1String(part))
            return line.value(QLatin1String("short")).toString();
    }
    return QStringLiteral("no line");
}

void PromisedClaims::done(Words words, const std::string &shop)
{
    words.insert(words.end(), {"--shop", shop});
    const Ran ran = runFlarestock(words);
    QVERIFY2(ran.status == 0, ran.err.c_str());
}

void PromisedClaims::whatLacksInABox()
{
    DemoCopy demo;
    const std::string shop = demo.made();
    QCOMPARE(lacking(shop, "BK-460"), QStringLiteral("1"));
    done({"claim", "raise", "BK-460", "1", "--fault", "missing", "--supplier", "MPW"}, shop);
    QCOMPARE(lacking(shop, "BK-460"), QStringLiteral("1"));
    done({"claim", "promise", "C-1", "--by", "2026-12-05"}, shop);
    QCOMPARE(lacking(shop, "BK-460"), QStringLiteral("0"));
    done({"claim", "promise", "C-1", "--by", "2026-12-20"}, shop); // Built on the 12th.
    QCOMPARE(lacking(shop, "BK-460"), QStringLiteral("1"));
}

void PromisedClaims::whatWasShortOfAnOrder()
{
    DemoCopy demo;
    const std::string shop = demo.made();
    QCOMPARE(lacking(shop, "HE-10"), QStringLiteral("1"));
    done({"order", "new", "--supplier", "NHT", "--line", "HE-10 1", "--day", "2026-11-28"}, shop);
    QCOMPARE(lacking(shop, "HE-10"), QStringLiteral("1")); // A draft brings nothing.
    done({"order", "place", "2026-0001", "--due", "2026-12-03"}, shop);
    QCOMPARE(lacking(shop, "HE-10"), QStringLiteral("0"));
    done({"receive", "--order", "2026-0001", "--short", "HE-10", "1"}, shop);
    QCOMPARE(lacking(shop, "HE-10"), QStringLiteral("1"));
    done({"claim", "promise", "C-1", "--by", "2026-12-05"}, shop);
    QCOMPARE(lacking(shop, "HE-10"), QStringLiteral("0"));
}

QTEST_GUILESS_MAIN(PromisedClaims)
#include "tst_only_promised_claims_are_counted_on.moc"
