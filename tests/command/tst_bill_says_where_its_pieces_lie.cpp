// SPDX-License-Identifier: MIT
//
// The bill says of each line what of it is here, in the trailer, in the car and on the way, as the
// ledger on the screen does, and what the hand has done shows in it. The demo shop is invented;
// what is checked are laws, and each figure of the sheet against the document.

#include "tests/command/changed_shop.h"

#include <QRegularExpression>
#include <QTest>

using namespace flarestock::tests;

namespace {

const Words CoupeFuel = {"bill", "--build", "coupe-fuel"};

/// The head of the bill's table.
std::string headOf(const std::string &sheet)
{
    const auto at = sheet.find("\nBILL\n") + 6;
    return sheet.substr(at, sheet.find('\n', at) - at);
}

bool has(const std::string &text, const std::string &what)
{
    return text.find(what) != std::string::npos;
}

} // namespace

class BillSaysWhere : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { m_shop.renew(); }
    void aColumnStandsOnlyWhereALineHasSome();
    void whatIsIssuedIsInTheCar();
    void whatGoesToTheTrailerIsNotHere();

private:
    [[nodiscard]] QJsonObject line(const std::string &part) const
    {
        return objectWith(arrayOf(m_shop.json(CoupeFuel), "lines"), "part", part);
    }
    /// "2 here, 0 trailer, 0 car", of a line of the document.
    [[nodiscard]] std::string lying(const std::string &part) const
    {
        const QJsonObject one = line(part);
        return textOf(one, "here") + " here, " + textOf(one, "inTrailer") + " trailer, " +
               textOf(one, "got") + " car";
    }
    /// Need, free here, those of the other places that are shown, short: of a line of the sheet.
    [[nodiscard]] QString row(const std::string &part) const
    {
        const auto lines = QString::fromStdString(m_shop.run(CoupeFuel).out).split(u'\n');
        for (const QString &one : lines) {
            static const QRegularExpression blanks(QStringLiteral("  +"));
            const auto cells = one.split(blanks, Qt::SkipEmptyParts);
            if (cells.value(0) == QString::fromStdString(part))
                return cells.mid(2, 4).join(u'|');
        }
        return {};
    }

    ChangedShop m_shop;
};

void BillSaysWhere::aColumnStandsOnlyWhereALineHasSome()
{
    const auto any = [](const QJsonArray &lines, const char *key) {
        return std::any_of(lines.begin(), lines.end(),
                           [key](const QJsonValue &one) { return textOf(one, key) != "0"; });
    };
    for (const char *build : {"coupe-fuel", "coupe-brakes", "roadster-fuel"}) {
        const QJsonArray lines = arrayOf(m_shop.json({"bill", "--build", build}), "lines");
        const std::string head = headOf(m_shop.run({"bill", "--build", build}).out);
        QVERIFY2(has(head, "free here"), head.c_str());
        QCOMPARE(has(head, "in the trailer"), any(lines, "inTrailer"));
        QCOMPARE(has(head, "in the car"), any(lines, "got"));
        QCOMPARE(has(head, "on the way"), any(lines, "onTheWay"));
        QVERIFY2(!has(head, "in the car"), build); // Nothing was issued yet.
    }
}

void BillSaysWhere::whatIsIssuedIsInTheCar()
{
    QCOMPARE(lying("AD-6-6"), std::string("2 here, 1 trailer, 0 car"));
    QCOMPARE(row("AD-6-6"), QStringLiteral("4|2|1|1"));
    QCOMPARE(m_shop.run({"reserve", "coupe-fuel"}).status, 0);
    QCOMPARE(m_shop.run({"issue", "coupe-fuel"}).status, 0);
    QCOMPARE(lying("AD-6-6"), std::string("0 here, 0 trailer, 3 car"));
    QCOMPARE(row("AD-6-6"), QStringLiteral("4|-|3|1")); // Nothing of the build is in the trailer.
    const std::string head = headOf(m_shop.run(CoupeFuel).out);
    QVERIFY2(has(head, "free here  in the car  short") && !has(head, "trailer"), head.c_str());
}

void BillSaysWhere::whatGoesToTheTrailerIsNotHere()
{
    QCOMPARE(m_shop.run({"move", "AD-6-6", "1", "--from", "A2", "--to", "trailer-2"}).status, 0);
    QCOMPARE(lying("AD-6-6"), std::string("1 here, 2 trailer, 0 car"));
    QCOMPARE(row("AD-6-6"), QStringLiteral("4|1|2|1"));
}

QTEST_GUILESS_MAIN(BillSaysWhere)
#include "tst_bill_says_where_its_pieces_lie.moc"
