// SPDX-License-Identifier: MIT
//
// Lengths on map and bill in feet and inches or in millimetres, as the person has chosen; the bill
// says where its pieces lie. 1 in = 25.4 mm exactly (NIST SP 811, appendix B).

#include "app/desk/build/build_desk.h"
#include "app/desk/launch/open_shop.h"
#include "app/desk/shop/desk.h"
#include "app/desk/words/key_fact.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/demo_shop.h"
#include "bench_shop.h"
#include "model/exchange/catalogue_csv.h"

#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

class PersonsUnits : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QLocale::setDefault(QLocale::c()); }
    void aLengthIsSaidAsATapeShowsIt_data();
    void aLengthIsSaidAsATapeShowsIt();
    void aPriceIsSaidForTheSameUnit();
    void mapAndBillFollowTheSwitch();
    void theBillSaysWhatLiesInTheTrailer();
    void aPumpSaysWhatItIsNamedBy();
};

void PersonsUnits::aLengthIsSaidAsATapeShowsIt_data()
{
    QTest::addColumn<QString>("amount");
    QTest::addColumn<int>("unit");
    QTest::addColumn<QString>("inches");
    QTest::addColumn<QString>("metric");
    const auto row = [](const char *name, const char *amount, Unit unit, const char *inches,
                        const char *metric) {
        QTest::newRow(name) << QString::fromLatin1(amount) << static_cast<int>(unit)
                            << QString::fromUtf8(inches) << QString::fromUtf8(metric);
    };
    row("66 in", "66", Unit::Inch, "5 ft 6 in", "1676.4 mm");
    row("1/16 in", "0.0625", Unit::Inch, "1/16 in", "≈ 1.6 mm"); // 1.5875
    row("1 m", "1", Unit::Metre, "≈ 3 ft 3 3/8 in", "1000 mm");  // 39.3701 in
    row("762 mm", "762", Unit::Millimetre, "2 ft 6 in", "762 mm");
    row("pieces", "3", Unit::Each, "3", "3");
}

void PersonsUnits::aLengthIsSaidAsATapeShowsIt()
{
    QFETCH(QString, amount);
    QFETCH(int, unit);
    QFETCH(QString, inches);
    QFETCH(QString, metric);
    const Quantity quantity{Decimal::parse(amount.toStdString()).value(), static_cast<Unit>(unit)};
    QCOMPARE(saidAmount(quantity, Units::Inch), inches);
    QString said = saidAmount(quantity, Units::Metric);
    QCOMPARE(said.remove(QLocale().groupSeparator()), metric);
}

/// 0.574 an inch are 6.888 a foot, and 0.574 / 0.0254 = 22.598… a metre.
void PersonsUnits::aPriceIsSaidForTheSameUnit()
{
    const Rational price(Decimal::parse("0.574").value());
    QCOMPARE(pricePer(price, Unit::Inch, Units::Inch).toDecimal(4, Rounding::HalfEven),
             Decimal::parse("6.8880").value());
    QCOMPARE(pricePer(price, Unit::Inch, Units::Metric).toDecimal(4, Rounding::HalfEven),
             Decimal::parse("22.5984").value());
    QVERIFY(pricePer(price, Unit::Each, Units::Metric) == price);
    QCOMPARE(saidPriceUnit(Unit::Each, Units::Inch), QString());
}

void PersonsUnits::mapAndBillFollowTheSwitch()
{
    BuildDesk desk;
    QVERIFY(openBench(desk));
    const auto cell = [](const Rows *rows, const char *key, const char *name) {
        return rows->cell(rows->rowOf(QString::fromLatin1(key)), QString::fromLatin1(name))
            .toString();
    };
    const QString cost = cell(desk.bill(), "HO-8", "cost");
    const QString total = desk.total();
    desk.setInInches(true);
    QCOMPARE(cell(desk.map()->runs(), "suction", "length"), QStringLiteral("5 ft 6 in"));
    QCOMPARE(cell(desk.bill(), "HO-8", "need"), QStringLiteral("5 ft 6 in"));
    QVERIFY(cell(desk.bill(), "HO-8", "each").endsWith(QStringLiteral(" / ft")));
    desk.setInInches(false);
    QCOMPARE(cell(desk.map()->runs(), "suction", "length"), QStringLiteral("1.68 m"));
    QVERIFY(cell(desk.bill(), "HO-8", "need").endsWith(QStringLiteral("676.4 mm")));
    QVERIFY(cell(desk.bill(), "HO-8", "each").endsWith(QStringLiteral(" / m")));
    QVERIFY(!cell(desk.bill(), "PU-460", "each").contains(u'/'));
    QCOMPARE(cell(desk.bill(), "HO-8", "cost"), cost); // Only the words have changed.
    QCOMPARE(desk.total(), total);
    desk.openAt(QStringLiteral("suction"));
    QVERIFY(desk.opened()->subtitle().contains(QStringLiteral("676.4 mm")));
}

/// A column has a figure on a line, or it is folded away; what one is short of is nowhere.
void PersonsUnits::theBillSaysWhatLiesInTheTrailer()
{
    const QTemporaryDir folder;
    Desk desk(nullptr);
    auto shop = makeDemoFile(folder.filePath(QStringLiteral("demo.flarestock")).toStdString());
    QVERIFY(shop);
    desk.show(std::move(*shop));
    desk.build()->setInInches(false);
    int withTrailer = 0;
    int lengths = 0; // Of the reasons why a line is cut.
    for (int row = 0; row < desk.builds()->count(); ++row) {
        QVERIFY(desk.openBuild(desk.builds()->cell(row, QStringLiteral("key")).toString()));
        const Rows *bill = desk.build()->bill();
        bool trailer = false;
        for (int line = 0; line < bill->count(); ++line) {
            const QString lies = bill->cell(line, QStringLiteral("trailer")).toString();
            trailer = trailer || !lies.isEmpty();
            const QString says = bill->cell(line, QStringLiteral("says")).toString();
            QCOMPARE(says.contains(QStringLiteral("in the trailer")), !lies.isEmpty());
            const QString why = bill->cell(line, QStringLiteral("why")).toString();
            lengths += why.contains(QRegularExpression(QStringLiteral(", [\\d,.]+ mm"))) ? 1 : 0;
            QVERIFY2(!why.contains(QRegularExpression(QStringLiteral(", \\d+ (ft|in)\\b"))),
                     qPrintable(why));
        }
        QCOMPARE(desk.build()->billHasTrailer(), trailer);
        QVERIFY(!desk.build()->billHasGot()); // Nothing was issued yet.
        withTrailer += trailer ? 1 : 0;
    }
    QVERIFY(withTrailer > 0);
    QVERIFY(lengths > 5);
}

/// The demo shop's pumps are described by flow and pressure: "460 L/h at 3 bar".
void PersonsUnits::aPumpSaysWhatItIsNamedBy()
{
    const auto catalogue = readCatalogue(demoDocuments()).value();
    const QRegularExpression named(QStringLiteral("(\\d+ L/h) at (\\d+ bar)"));
    int pumps = 0;
    for (const Part &part : catalogue.parts()) {
        const auto found = named.match(said(part.description));
        const auto *pump = part.as<PumpFacts>();
        if (pump == nullptr || pump->curve.empty() || !found.hasMatch())
            continue;
        QCOMPARE(keyFact(part, Units::Metric),
                 QString(found.captured(1) + QStringLiteral(", ") + found.captured(2)));
        ++pumps;
    }
    QVERIFY(pumps > 3);
}

QTEST_MAIN(PersonsUnits)
#include "tst_lengths_are_in_the_persons_units.moc"
