// SPDX-License-Identifier: MIT
//
// From engine to hose and back: what power 5 m of line with K = 5 can feed at a given loss, against
// a table that was worked out apart (power_by_dash.csv). Demand, liquid, bore, line and search
// together.

#include "model/fluids/demand/fuel_demand.h"
#include "model/fluids/demand/specific_consumption.h"
#include "model/fluids/line/dash_bore.h"
#include "model/fluids/liquid.h"
#include "model/fluids/pump/operating_point.h"
#include "tests/fluids/table_file.h"

#include <QTest>

using namespace flarestock;

namespace {

constexpr double Psi = 6894.757293168361;

struct Hose {
    Fluid fuel = Fluid::Gasoline;
    double consumptionKgJ = 0;
    double boreM = 0;
};

double flowM3S(const Hose &hose, double horsepower)
{
    FuelAsked asked;
    asked.powerW = wattsOf(horsepower, PowerUnit::MechanicalHorsepower);
    asked.consumptionKgJ = hose.consumptionKgJ;
    asked.densityKgM3 = liquidAt20C(hose.fuel).densityKgM3;
    return fuelDemand(asked).value().volumeM3S;
}

WholeLine lineOf(const Hose &hose)
{
    WholeLine line;
    line.densityKgM3 = liquidAt20C(hose.fuel).densityKgM3;
    line.viscosityPaS = liquidAt20C(hose.fuel).viscosityPaS;
    line.pieces = {{StraightLine{hose.boreM, 5, 1.5e-6}}, {Adapter{hose.boreM, 5}}};
    return line;
}

/// The largest power that the hose feeds at no more than that loss.
double horsepowerAt(const Hose &hose, double lossPa)
{
    const SystemCurve loss = systemOf(lineOf(hose), -lossPa);
    const Curve excess = [&hose, &loss](double horsepower) {
        return loss(flowM3S(hose, horsepower));
    };
    return crossing(excess, {1, 1e5}).value().at.value();
}

} // namespace

class PowerByDashTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agreesWithTheTable();
    void boresOfBothNumberings();
    void unknownSizesAreRefused();
};

void PowerByDashTest::agreesWithTheTable()
{
    const TableFile table("power_by_dash.csv");
    QCOMPARE(table.size(), std::size_t(36));
    for (std::size_t row = 0; row < table.size(); ++row) {
        Hose hose;
        hose.fuel = parseFluid(table.cell(row, "fuel")).value();
        hose.consumptionKgJ = kilogramPerJoule(table.number(row, "consumption lb/hp.h"),
                                               ConsumptionUnit::PoundPerMechanicalHorsepowerHour);
        const bool asTube = table.cell(row, "numbering") == "as tube";
        hose.boreM = assumedBore(static_cast<int>(table.number(row, "dash")),
                                 asTube ? DashNumbering::AsTube : DashNumbering::ByBore)
                         .value()
                         .boreM;
        for (const char *psi : {"0.5", "1", "3", "5"}) {
            const double horsepower = horsepowerAt(hose, QByteArray(psi).toDouble() * Psi);
            // Three figures in the table.
            NEAR_PERCENT(horsepower, table.number(row, "hp at " + std::string(psi) + " psi"), 0.6);
        }
        WholeLine line = lineOf(hose);
        line.flowM3S = flowM3S(hose, table.number(row, "hp at 1 psi"));
        NEAR_PERCENT(wholeLineLoss(line).value().losses.front().velocityMS,
                     table.number(row, "m/s at 1 psi"), 1.2);
    }
}

void PowerByDashTest::boresOfBothNumberings()
{
    // SAE J517: -8 of 100R5 13/32 in, of other hose 8/16 in.
    NEAR_PERCENT(assumedBore(8, DashNumbering::AsTube).value().boreM, 13.0 / 32 * 0.0254, 1e-9);
    NEAR_PERCENT(assumedBore(8, DashNumbering::ByBore).value().boreM, 0.0127, 1e-9);
    int swept = 0;
    for (const int dash : {4, 5, 6, 8, 10, 12, 16, 20, 24}) {
        const double byBore = assumedBore(dash, DashNumbering::ByBore).value().boreM;
        NEAR_PERCENT(byBore, dash / 16.0 * 0.0254, 1e-9);
        QVERIFY(assumedBore(dash, DashNumbering::AsTube).value().boreM < byBore);
        ++swept;
    }
    QCOMPARE(swept, 9);
}

void PowerByDashTest::unknownSizesAreRefused()
{
    QVERIFY(!assumedBore(7, DashNumbering::AsTube).has_value());
    QVERIFY(!assumedBore(3, DashNumbering::AsTube).has_value());
    QVERIFY(assumedBore(3, DashNumbering::ByBore).has_value());
}

QTEST_APPLESS_MAIN(PowerByDashTest)
#include "tst_power_by_dash.moc"
