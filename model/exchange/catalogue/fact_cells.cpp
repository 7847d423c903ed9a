// SPDX-License-Identifier: MIT

#include "model/exchange/catalogue/fact_cells.h"

#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/part_columns.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

using namespace column;

constexpr double PascalPerKilopascal = 1000;
constexpr double LitrePerHourPerSi = 3.6e6; // 1 m³/s = 1000 L × 3600/h
constexpr double LitrePerSi = 1000;
constexpr double MillimetrePerSi = 1000;
constexpr int DashMax = 64;

std::optional<double> kilopascal(const SheetRow &row, ColumnId at)
{
    const auto pascal = row.positive(at, Dimension::Pressure);
    return pascal ? std::optional(*pascal / PascalPerKilopascal) : std::nullopt;
}

std::optional<double> litrePerHour(const SheetRow &row, ColumnId at)
{
    const auto flow = row.positive(at, Dimension::VolumeFlow);
    return flow ? std::optional(*flow * LitrePerHourPerSi) : std::nullopt;
}

std::optional<double> millimetre(const SheetRow &row, ColumnId at)
{
    const auto length = row.positive(at, Dimension::Length);
    return length ? std::optional(*length * MillimetrePerSi) : std::nullopt;
}

std::string upper(std::string_view text)
{
    std::string large(text);
    for (char &letter : large) {
        if (letter >= 'a' && letter <= 'z')
            letter = static_cast<char>(letter - 'a' + 'A');
    }
    return large;
}

/// "-8" or "8", as a spreadsheet may leave it. 0 with a problem where it is empty or wrong.
int readDash(const SheetRow &row)
{
    std::string_view typed = row.text(Dash);
    if (typed.empty()) {
        (void)row.required(Dash);
        return 0;
    }
    if (typed.front() == '-')
        typed.remove_prefix(1);
    const auto number = Decimal::parse(typed);
    const auto dash = number && number->scale() == 0 ? number->toInt64() : std::nullopt;
    if (dash && *dash >= 1 && *dash <= DashMax && typed.front() != '-' && typed.front() != '+')
        return static_cast<int>(*dash);
    row.wrong(Dash,
              {'"' + std::string(row.text(Dash)) + "\" is no dash size", "Write for example -8."});
    return 0;
}

std::optional<MicronRating> readRating(const SheetRow &row)
{
    static constexpr std::array<std::string_view, 2> Bases = {"nominal", "absolute"};
    auto micron = row.numberAbove(Micron, 0);
    const auto basis = row.word(Basis, Bases);
    auto beta = row.numberAbove(Beta, 1);
    if (!row.has(Micron) && (row.has(Basis) || row.has(Beta)))
        row.wrong(row.has(Basis) ? Basis : Beta, {"there is a basis of a rating, but no rating",
                                                  "Fill in micron, or leave both empty."});
    if (beta && basis != 1U)
        row.wrong(Beta, {"a beta belongs to an absolute rating",
                         "Write absolute as the basis, or leave beta empty."});
    if (!micron)
        return std::nullopt;
    MicronRating rating;
    rating.micron = std::move(*micron);
    rating.basis = !basis         ? RatingBasis::Unstated
                   : *basis == 0U ? RatingBasis::Nominal
                                  : RatingBasis::Absolute;
    rating.beta = std::move(beta);
    return rating;
}

Facts readHose(const SheetRow &row)
{
    HoseFacts facts;
    facts.construction = upper(row.required(Construction));
    facts.dash = readDash(row);
    facts.boreMm = millimetre(row, Bore);
    facts.bendRadiusMm = millimetre(row, BendRadius);
    facts.liner = row.text(Liner);
    facts.conductive = row.yesNo(Conductive).value_or(false);
    facts.clamped = row.yesNo(Clamped);
    return facts;
}

int readAngle(const SheetRow &row)
{
    static constexpr std::array Angles = {0, 30, 45, 60, 90, 120, 150, 180};
    std::string_view typed = row.text(Angle);
    if (typed.empty())
        return 0;
    for (const std::string_view unit : {"°", "deg"}) {
        if (typed.ends_with(unit))
            typed = trimmed(typed.substr(0, typed.size() - unit.size()));
    }
    const auto number = Decimal::parse(typed);
    const auto angle = number ? number->toInt64() : std::nullopt;
    if (angle && std::find(Angles.begin(), Angles.end(), *angle) != Angles.end())
        return static_cast<int>(*angle);
    row.wrong(Angle, {'"' + std::string(row.text(Angle)) + "\" is no angle of a hose end",
                      "Write 0, 30, 45, 60, 90, 120, 150 or 180."});
    return 0;
}

Facts readHoseEnd(const SheetRow &row)
{
    HoseEndFacts facts;
    (void)row.required(Fits);
    for (const SheetRow::Item &item : row.items(Fits))
        facts.constructions.push_back(upper(item.text));
    facts.hoseDash = readDash(row);
    facts.angleDegrees = readAngle(row);
    facts.boreMm = millimetre(row, Bore);
    if (row.has(Allowance)) {
        // Exact, because lengths to cut are exact: not through a double.
        const auto length = Quantity::parse(row.text(Allowance)).and_then([](const Quantity &read) {
            return read.exactlyIn(Unit::Millimetre);
        });
        if (length && length->amount.sign() > 0)
            facts.allowanceMm = length->amount;
        else
            row.wrong(Allowance, {'"' + std::string(row.text(Allowance)) + "\" is no length",
                                  "Write for example 0.75 in or 19 mm."});
    }
    return facts;
}

Facts readFilter(const SheetRow &row)
{
    FilterFacts facts;
    facts.rating = readRating(row);
    facts.medium = row.text(Medium);
    facts.element = row.text(Element);
    facts.serviceable = row.yesNo(Serviceable).value_or(true);
    facts.flowLh = litrePerHour(row, Flow);
    facts.cleanLossKpa = kilopascal(row, CleanLoss);
    facts.bypassKpa = kilopascal(row, Bypass);
    return facts;
}

Facts readElement(const SheetRow &row)
{
    ElementFacts facts;
    (void)row.required(Micron);
    if (auto rating = readRating(row))
        facts.rating = std::move(*rating);
    facts.medium = row.text(Medium);
    facts.washable = row.yesNo(Washable).value_or(false);
    return facts;
}

Facts readPump(const SheetRow &row)
{
    static constexpr std::array<std::string_view, 3> Positions = {"in-line", "in-tank",
                                                                  "mechanical"};
    PumpFacts facts;
    const auto position = row.word(Position, Positions);
    facts.position = position ? Positions[*position] : std::string_view();
    facts.electric = row.yesNo(Electric).value_or(facts.position != "mechanical");
    facts.amps = readAmps(row);
    facts.serviceable = row.yesNo(Serviceable).value_or(false);
    facts.curve = readCurve(row, facts.electric);
    return facts;
}

/// A range of pressures in `low` and `high`.
void readRange(const SheetRow &row, std::optional<double> &low, std::optional<double> &high)
{
    low = kilopascal(row, Low);
    high = kilopascal(row, High);
    if (low && high && *low > *high)
        row.wrong(Low, {"the low pressure is above the high one", "Exchange them."});
}

Facts readRegulator(const SheetRow &row)
{
    RegulatorFacts facts;
    readRange(row, facts.lowKpa, facts.highKpa);
    facts.flowLh = litrePerHour(row, Flow);
    facts.bypass = row.yesNo(Bypass).value_or(false);
    facts.wideOpenKpa = kilopascal(row, WideOpen);
    if (facts.wideOpenKpa && (!facts.bypass || !facts.flowLh))
        row.wrong(WideOpen, {"a loss wide open is that of a bypass regulator at a flow",
                             "Give its flow and yes under bypass, or leave the cell empty."});
    return facts;
}

Facts readFuelUser(const SheetRow &row)
{
    FuelUserFacts facts;
    readRange(row, facts.pressureLowKpa, facts.pressureHighKpa);
    if (const auto passage = row.numberAbove(Passage, 0))
        facts.passageMicron = passage->approximate();
    return facts;
}

Facts readVessel(const SheetRow &row)
{
    VesselFacts facts;
    if (const auto volume = row.positive(Volume, Dimension::Volume))
        facts.litres = *volume * LitrePerSi;
    facts.pickupSock = row.yesNo(Sock).value_or(false);
    facts.sock = readRating(row);
    if (facts.sock && !facts.pickupSock)
        row.wrong(Micron, {"there is a rating of a sock, but no sock", "Write yes under sock."});
    return facts;
}

void refuseForeignCells(const SheetRow &row, Kind kind)
{
    for (ColumnId at = FirstOfSomeKinds; at < PartColumnCount; ++at) {
        if (!hasColumn(kind, at) && row.has(at))
            row.wrong(at, {"the kind " + std::string(text(kind)) + " has no \"" +
                               std::string(partHeadings()[at]) + '"',
                           "Leave the cell empty, or correct the kind."});
    }
}

} // namespace

Facts readFacts(const SheetRow &row, Kind kind)
{
    refuseForeignCells(row, kind);
    switch (kind) {
    case Kind::Hose:
        return readHose(row);
    case Kind::HoseEnd:
        return readHoseEnd(row);
    case Kind::Tubing:
        return TubingFacts{row.required(Tube), millimetre(row, Bore)};
    case Kind::Filter:
        return readFilter(row);
    case Kind::Element:
        return readElement(row);
    case Kind::Pump:
        return readPump(row);
    case Kind::Regulator:
        return readRegulator(row);
    case Kind::Ring:
        return RingFacts{row.required(Designation)};
    case Kind::Washer:
        return WasherFacts{row.yesNo(Crush).value_or(false), row.required(Thread)};
    case Kind::Carburettor:
    case Kind::Rail:
    case Kind::Injector:
        return readFuelUser(row);
    case Kind::Tank:
        return readVessel(row);
    case Kind::Wire:
        return readWire(row);
    case Kind::Fuse:
    case Kind::Relay:
        return CurrentFacts{readAmps(row)};
    default:
        return std::monostate();
    }
}

} // namespace flarestock
