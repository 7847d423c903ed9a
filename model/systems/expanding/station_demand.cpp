// SPDX-License-Identifier: MIT

#include "model/systems/expanding/station_demand.h"

#include "model/exact/case_fold.h"
#include "model/parts/fluid_allowed.h"
#include "model/systems/expanding/pump_curve.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace flarestock {

namespace {

constexpr double SamePressure = 0.005; // Half a percent: 43.5 psi is meant to be 3 bar.

double litresPerHour(const Measure &flow)
{
    return flow.si * 3.6e6;
}

double kilopascals(const Measure &pressure)
{
    return pressure.si / 1000;
}

/// To four digits, with a point whatever the locale.
std::string rounded(double number)
{
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number,
                                   std::chars_format::general, 4);
    return {digits.data(), end.ptr};
}

Problem wrongDemand(const FlatStation &station, const Problem &because)
{
    Problem wrong = because;
    wrong.thing = "template " + station.scope->form->id + ", station " + station.id;
    return wrong;
}

Result<std::optional<Measure>> measureOf(const Varying &varying, Dimension dimension,
                                         const FlatStation &station)
{
    const auto said = varying.with(station.scope->answers);
    if (!said || trimmed(*said).empty())
        return std::nullopt;
    auto measure = Measure::parse(*said, dimension);
    if (!measure)
        return tl::unexpected(wrongDemand(station, measure.error()));
    return std::optional(std::move(*measure));
}

Result<std::optional<StationDemand::Microns>> micronsOf(const FlatStation &station)
{
    const auto said = station.station->demand.micron.with(station.scope->answers);
    if (!said || trimmed(*said).empty())
        return std::nullopt;
    const std::string_view typed = trimmed(*said);
    const auto to = typed.find(" to ");
    const auto least = Decimal::parse(trimmed(typed.substr(0, to)));
    const auto most =
        to == std::string_view::npos ? least : Decimal::parse(trimmed(typed.substr(to + 4)));
    if (!least || !most || *most < *least)
        return tl::unexpected(wrongDemand(
            station, {"", "\"" + *said + "\" is no range of microns", "Write \"75 to 150\"."}));
    return StationDemand::Microns{*least, *most, std::string(typed)};
}

std::optional<MicronRating> ratingOf(const Part &part)
{
    if (const auto *filter = part.as<FilterFacts>())
        return filter->rating;
    if (const auto *element = part.as<ElementFacts>())
        return element->rating;
    if (const auto *vessel = part.as<VesselFacts>())
        return vessel->sock;
    return std::nullopt;
}

/// A word that a template may ask for: one of the part's own, or one that its facts say.
bool saysWord(const Part &part, std::string_view word)
{
    if (part.says(word) || sameFolded(part.material, word))
        return true;
    if (const auto *pump = part.as<PumpFacts>())
        return sameFolded(pump->position, word) || (pump->electric && sameFolded(word, "electric"));
    if (const auto *regulator = part.as<RegulatorFacts>())
        return sameFolded(word, regulator->bypass ? "bypass" : "dead-head");
    if (const auto *filter = part.as<FilterFacts>())
        return sameFolded(filter->medium, word) ||
               (filter->serviceable && sameFolded(word, "serviceable"));
    return false;
}

bool within(double value, std::optional<double> low, std::optional<double> high)
{
    return low && high && value >= *low * (1 - SamePressure) && value <= *high * (1 + SamePressure);
}

/// The flow that a part publishes for a demand; nothing where it publishes none.
std::optional<double> flowOf(const Part &part, const StationDemand &demand)
{
    if (const auto *pump = part.as<PumpFacts>())
        return demand.pressure ? pumpFlowLh(*pump, kilopascals(*demand.pressure))
                               : mostFlowLh(*pump);
    if (const auto *filter = part.as<FilterFacts>())
        return filter->flowLh;
    if (const auto *regulator = part.as<RegulatorFacts>())
        return regulator->flowLh;
    return std::nullopt;
}

/// Kinds that publish a flow; of others none can be asked.
bool hasFlow(const Part &part)
{
    return part.as<PumpFacts>() || part.as<FilterFacts>() || part.as<RegulatorFacts>();
}

bool meetsPressure(const Part &part, const StationDemand &demand)
{
    const double wanted = kilopascals(*demand.pressure);
    if (const auto *regulator = part.as<RegulatorFacts>())
        return within(wanted, regulator->lowKpa, regulator->highKpa);
    if (const auto *user = part.as<FuelUserFacts>())
        return within(wanted, user->pressureLowKpa, user->pressureHighKpa);
    if (const auto *pump = part.as<PumpFacts>())
        return pumpFlowLh(*pump, wanted).has_value();
    return true;
}

} // namespace

Result<StationDemand> demandOf(const FlatStation &station)
{
    const Demand &demand = station.station->demand;
    StationDemand made;
    made.as = &demand;
    made.fluid = station.scope->fluid;
    if (auto part = demand.part.with(station.scope->answers))
        made.part = std::string(trimmed(*part));
    auto microns = micronsOf(station);
    if (!microns)
        return tl::unexpected(microns.error());
    made.microns = std::move(*microns);
    struct Asked {
        const Varying &varying;
        Dimension dimension;
        std::optional<Measure> &into;
    };
    for (const Asked &asked : {Asked{demand.flow, Dimension::VolumeFlow, made.flow},
                               Asked{demand.pressure, Dimension::Pressure, made.pressure},
                               Asked{demand.rated, Dimension::Pressure, made.rated}}) {
        auto measure = measureOf(asked.varying, asked.dimension, station);
        if (!measure)
            return tl::unexpected(measure.error());
        asked.into = std::move(*measure);
    }
    for (const std::string &port : station.station->plugged)
        made.ports.push_back(port);
    return made;
}

Lack lackOf(const Part &part, const StationDemand &demand)
{
    if (part.kind != demand.as->kind)
        return Lack::Kind;
    const auto &words = demand.as->words;
    if (!std::all_of(words.begin(), words.end(),
                     [&](const std::string &word) { return saysWord(part, word); }))
        return Lack::Word;
    if (demand.microns) {
        const auto rating = ratingOf(part);
        if (!rating || rating->micron < demand.microns->least ||
            rating->micron > demand.microns->most)
            return Lack::Micron;
    }
    if (demand.flow && hasFlow(part)) {
        const auto flow = flowOf(part, demand);
        // The demand may be typed in another unit than the maker's: a millionth is no shortcoming.
        if (!flow || *flow < litresPerHour(*demand.flow) * (1 - 1e-6))
            return Lack::Flow;
    }
    if (demand.pressure && !meetsPressure(part, demand))
        return Lack::Pressure;
    if (demand.rated &&
        (!part.ratings.pressureKpa ||
         *part.ratings.pressureKpa < kilopascals(*demand.rated) * (1 - SamePressure)))
        return Lack::Rated;
    if (!allowsFluid(part, demand.fluid))
        return Lack::Fluid;
    if (!std::all_of(demand.ports.begin(), demand.ports.end(),
                     [&](std::string_view port) { return part.port(port) != nullptr; }))
        return Lack::Port;
    return Lack::Nothing;
}

std::string text(Lack lack, const Part &part, const StationDemand &demand)
{
    switch (lack) {
    case Lack::Nothing:
        break;
    case Lack::Kind:
        return std::string(text(part.kind)) + " where " + std::string(text(demand.as->kind)) +
               " is wanted";
    case Lack::Word:
        for (const std::string &word : demand.as->words)
            if (!saysWord(part, word))
                return "not said to be " + word;
        break;
    case Lack::Micron: {
        const auto rating = ratingOf(part);
        return (rating ? rating->text() : "no micron rating") + " where " + demand.microns->typed +
               " µm is wanted";
    }
    case Lack::Flow: {
        const auto flow = flowOf(part, demand);
        return (flow ? rounded(*flow) + " L/h" : std::string("no published flow")) +
               (demand.pressure && part.as<PumpFacts>() ? " at " + demand.pressure->typed : "") +
               " where " + demand.flow->typed + " is wanted";
    }
    case Lack::Pressure:
        return demand.pressure->typed + " is outside its published range";
    case Lack::Rated:
        return (part.ratings.pressureKpa ? "rated " + rounded(*part.ratings.pressureKpa) + " kPa"
                                         : std::string("no pressure rating")) +
               " where " + demand.rated->typed + " is wanted";
    case Lack::Fluid:
        return "not made for " + std::string(text(*demand.fluid));
    case Lack::Port:
        for (const std::string_view port : demand.ports)
            if (!part.port(port))
                return "without a port \"" + std::string(port) + "\"";
        break;
    }
    return {};
}

std::string meritOf(const Part &part, const StationDemand &demand)
{
    std::string merit;
    const auto add = [&merit](const std::string &one) {
        merit += (merit.empty() ? "" : "; ") + one;
    };
    if (const auto rating = ratingOf(part); rating && demand.microns)
        add(rating->text() + ", " + demand.microns->typed + " µm wanted");
    if (const auto flow = flowOf(part, demand); flow && demand.flow)
        add(rounded(*flow) + " L/h" +
            (demand.pressure && part.as<PumpFacts>() ? " at " + demand.pressure->typed : "") +
            ", " + demand.flow->typed + " wanted");
    if (demand.pressure && part.as<RegulatorFacts>())
        add("adjusts to " + demand.pressure->typed);
    return merit;
}

} // namespace flarestock
