// SPDX-License-Identifier: MIT
//
// What an opened joint says of a piece is what lies in the bin that it names: never the sum of all
// places under the name of the first, and what the build has got is in the car and in no bin.

#include "app/desk/opened/detail.h"

#include <QTest>

using namespace flarestock;

namespace {

Quantity each(int count)
{
    return {count, Unit::Each};
}

Quantity millimetres(int length)
{
    return {length, Unit::Millimetre};
}

Part counted(const char *number)
{
    Part part;
    part.number = number;
    return part;
}

} // namespace

class BinHoldsWhatIsSaidOfIt : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void eachPlaceIsNamedWithItsOwn();
    void whatTheBuildHasGotIsInTheCar();
    void whatWasCutForTheBuildIsLongEnough();
    void nothingIsNothing();
};

void BinHoldsWhatIsSaidOfIt::eachPlaceIsNamedWithItsOwn()
{
    Shelf shelf;
    shelf["AD-6-6"].free = each(3);
    shelf["AD-6-6"].places = {{"A2", each(2)}, {"TR-D1", each(1)}};
    shelf["UN-6"].free = each(6);
    shelf["UN-6"].places = {{"B1", each(2)}, {"B2", each(1)}, {"TR-D1", each(2)}, {"Z", each(1)}};
    const auto says = whereabouts(shelf, counted("AD-6-6"), 3, Units::Metric);
    QCOMPARE(says.text, QStringLiteral("2 in A2, 1 in TR-D1"));
    QVERIFY(!says.isShort);
    QCOMPARE(whereabouts(shelf, counted("UN-6"), 1, Units::Metric).text,
             QStringLiteral("2 in B1, 1 in B2, 3 elsewhere"));
}

void BinHoldsWhatIsSaidOfIt::whatTheBuildHasGotIsInTheCar()
{
    Shelf shelf;
    shelf["AD-6-6"].free = each(3); // Two of them issued: they lie at no place of stock.
    shelf["AD-6-6"].places = {{"A2", each(1)}};
    QCOMPARE(whereabouts(shelf, counted("AD-6-6"), 3, Units::Metric).text,
             QStringLiteral("2 in the car, 1 in A2"));
    shelf["HE-6"].free = each(1);
    QCOMPARE(whereabouts(shelf, counted("HE-6"), 1, Units::Metric).text,
             QStringLiteral("1 in the car"));
}

/// 7 m were cut for the build and are in its car, 5,292 mm lie on the shelf.
void BinHoldsWhatIsSaidOfIt::whatWasCutForTheBuildIsLongEnough()
{
    FreeStock hose;
    hose.free = millimetres(12292);
    hose.pieces = {millimetres(5292)};
    hose.places = {{"SH-1", millimetres(5292)}};
    hose.cutBefore = millimetres(7000);
    Shelf shelf;
    shelf["PT-8"] = hose;
    const auto says = whereabouts(shelf, counted("PT-8"), 7000, Units::Metric);
    QCOMPARE(says.text, QStringLiteral("7,000 mm in the car, 5,292 mm in SH-1"));
    QVERIFY(!says.isShort);
    shelf["PT-8"].cutBefore.reset();
    QVERIFY(whereabouts(shelf, counted("PT-8"), 7000, Units::Metric).isShort);
}

void BinHoldsWhatIsSaidOfIt::nothingIsNothing()
{
    const auto says = whereabouts({}, counted("AD-6-6"), 1, Units::Metric);
    QCOMPARE(says.text, QStringLiteral("none here"));
    QVERIFY(says.isShort);
}

QTEST_APPLESS_MAIN(BinHoldsWhatIsSaidOfIt)

#include "tst_bin_holds_what_is_said_of_it.moc"
