// SPDX-License-Identifier: MIT
//
// Lengths are cut whole, each from one piece, and a cut costs its kerf. The rule of the shortest
// piece that holds it is best fit decreasing of cutting stock (D. S. Johnson, "Near-optimal bin
// packing algorithms", 1973); a kerf of 1/16 in is common practice, no source.

#include "model/parts/cutting.h"

#include <QTest>

using namespace flarestock;

namespace {

std::vector<Quantity> inches(const std::vector<const char *> &lengths)
{
    std::vector<Quantity> all;
    for (const char *length : lengths)
        all.push_back({Decimal::parse(length).value(), Unit::Inch});
    return all;
}

FreeStock lying(const std::vector<const char *> &pieces, const char *cutBefore = nullptr)
{
    FreeStock stock;
    stock.pieces = inches(pieces);
    for (const auto &piece : stock.pieces)
        stock.free.amount += piece.amount;
    stock.free.unit = Unit::Inch;
    if (cutBefore)
        stock.cutBefore = inches({cutBefore}).front();
    return stock;
}

std::string cutFrom(const std::vector<const char *> &cuts, const FreeStock &stock)
{
    return cuttable(inches(cuts), stock).stripped().text();
}

} // namespace

class LengthsAreCutWhole : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noneIsJoined();
    void eachFromTheShortestThatHoldsIt();
    void aCutCostsItsKerf();
    void millimetresAndInches();
    void whatWasCutBeforeCostsNoKerf();
    void whatNobodyMeasuredIsOnePiece();
    void itIsSaidWhichPiece();
};

void LengthsAreCutWhole::noneIsJoined()
{
    // 60 in of hose in three pieces do not make one line of 36 in.
    QCOMPARE(cutFrom({"36"}, lying({"20", "20", "20"})), std::string("0"));
    QCOMPARE(cutFrom({}, lying({"72"})), std::string("0"));
    QCOMPARE(cutFrom({"36"}, lying({})), std::string("0"));
}

void LengthsAreCutWhole::eachFromTheShortestThatHoldsIt()
{
    // 30 comes from 31, so that 40 is still there for 40.
    QCOMPARE(cutFrom({"30", "40"}, lying({"40", "31"})), std::string("70"));
    QCOMPARE(cutFrom({"40", "30", "30"}, lying({"72"})), std::string("70"));
}

void LengthsAreCutWhole::aCutCostsItsKerf()
{
    // To the end of the piece nothing is sawn off.
    QCOMPARE(cutFrom({"60"}, lying({"60"})), std::string("60"));
    // 120 gives 60, and then 59 15/16 are left.
    QCOMPARE(cutFrom({"60", "60"}, lying({"120"})), std::string("60"));
    QCOMPARE(cutFrom({"60", "59.9375"}, lying({"120"})), std::string("119.9375"));
    // A rest of less than the kerf goes with it.
    QCOMPARE(cutFrom({"59.96875"}, lying({"60"})), std::string("59.96875"));
    CutPieces pieces(lying({"60"}), Unit::Inch);
    QVERIFY(pieces.cut(Decimal::parse("59.96875").value()));
    QVERIFY(!pieces.holds(Decimal::parse("0.01").value()));
}

void LengthsAreCutWhole::millimetresAndInches()
{
    // 24 in are 609.6 mm (25.4 mm to the inch, exact by agreement of 1959).
    FreeStock stock;
    stock.free = {Decimal(610), Unit::Millimetre};
    stock.pieces = {stock.free};
    QCOMPARE(cutFrom({"24"}, stock), std::string("24"));
    stock.free = {Decimal(609), Unit::Millimetre};
    stock.pieces = {stock.free};
    QCOMPARE(cutFrom({"24"}, stock), std::string("0"));
}

void LengthsAreCutWhole::whatWasCutBeforeCostsNoKerf()
{
    // 30, 20 and 10 were issued: they are in the car and need no saw.
    QCOMPARE(cutFrom({"30", "20", "10"}, lying({}, "60")), std::string("60"));
    // 40 still comes from the coil.
    QCOMPARE(cutFrom({"40", "30"}, lying({"50"}, "30")), std::string("70"));
}

void LengthsAreCutWhole::whatNobodyMeasuredIsOnePiece()
{
    FreeStock stock;
    stock.free = {Decimal(100), Unit::Inch};
    QCOMPARE(cutFrom({"60", "30"}, stock), std::string("90"));
}

void LengthsAreCutWhole::itIsSaidWhichPiece()
{
    // Kerf 1. Of the two of 10 the first; then its rest of 1 gives 1, and the other one 8.
    CutPieces pieces({Decimal(20), Decimal(10), Decimal(10), Decimal(30)}, Decimal(1));
    QCOMPARE(pieces.cutOff(Decimal(8)).value(), std::size_t{1});
    QCOMPARE(pieces.cutOff(Decimal(1)).value(), std::size_t{1});
    QCOMPARE(pieces.cutOff(Decimal(8)).value(), std::size_t{2});
    QCOMPARE(pieces.longest(), Decimal(30));
    QCOMPARE(pieces.cutOff(Decimal(25)).value(), std::size_t{3});
    QCOMPARE(pieces.longest(), Decimal(20));
    QVERIFY(!pieces.cutOff(Decimal(21)));
    QCOMPARE(CutPieces().longest(), Decimal());
}

QTEST_APPLESS_MAIN(LengthsAreCutWhole)
#include "tst_lengths_are_cut_whole.moc"
