// SPDX-License-Identifier: MIT

#include "model/checks/rules/build_under_check.h"

#include <algorithm>
#include <set>

namespace flarestock {

BuildUnderCheck::BuildUnderCheck(const Expansion &expansion, const Catalogue &catalogue,
                                 const Shelf &shelf)
    : m_expansion(expansion), m_catalogue(catalogue), m_shelf(shelf)
{
}

const FreeStock *BuildUnderCheck::stock(const Part &part) const
{
    const auto found = m_shelf.find(part.number);
    return found == m_shelf.end() ? nullptr : &found->second;
}

BuildUnderCheck::Stations BuildUnderCheck::after(const PlacedStation &station,
                                                 const Ends &ends) const
{
    return walk(station, ends, true);
}

BuildUnderCheck::Stations BuildUnderCheck::before(const PlacedStation &station,
                                                  const Ends &ends) const
{
    return walk(station, ends, false);
}

BuildUnderCheck::Stations BuildUnderCheck::walk(const PlacedStation &station, const Ends &ends,
                                                bool forward) const
{
    Stations reached;
    std::set<std::string, std::less<>> seen{station.id};
    std::vector<const PlacedStation *> edge{&station};
    for (std::size_t at = 0; at < edge.size(); ++at) {
        for (const auto &run : m_expansion.runs) {
            const auto &here = forward ? run.from : run.to;
            const auto &there = forward ? run.to : run.from;
            if (here != edge[at]->id || run.run->level == Level::Return)
                continue;
            const auto *next = m_expansion.station(there);
            if (next == nullptr || !seen.insert(next->id).second)
                continue;
            reached.push_back(next);
            if (!ends(*next))
                edge.push_back(next);
        }
    }
    return reached;
}

std::optional<Measure> BuildUnderCheck::wanted(const PlacedStation &station,
                                               const Varying &demand) const
{
    const auto text = demand.with(station.answers);
    if (!text)
        return {};
    const auto measure = Measure::parse(*text);
    return measure ? std::optional(*measure) : std::nullopt;
}

std::optional<std::string> BuildUnderCheck::said(const PlacedRun &run, const Varying &text) const
{
    const auto module = run.id.rfind('/');
    if (module == std::string::npos)
        return text.with(m_expansion.answers);
    // A station of the same module has its answers.
    const auto beside = std::find_if(
        m_expansion.stations.begin(), m_expansion.stations.end(), [&](const auto &station) {
            return station.id.rfind('/') == module &&
                   station.id.compare(0, module, run.id, 0, module) == 0;
        });
    return beside == m_expansion.stations.end() ? std::nullopt : text.with(beside->answers);
}

std::optional<Measure> BuildUnderCheck::systemPressure() const
{
    std::optional<Measure> highest;
    for (const auto &station : m_expansion.stations) {
        const auto kind = station.station->demand.kind;
        if (kind != Kind::Regulator && kind != Kind::Pump)
            continue;
        const auto pressure = wanted(station, station.station->demand.pressure);
        if (pressure && pressure->dimension == Dimension::Pressure &&
            (!highest || pressure->si > highest->si))
            highest = pressure;
    }
    return highest;
}

bool BuildUnderCheck::isBrakes() const noexcept
{
    return m_expansion.system == "brakes" ||
           (m_expansion.fluid && isBrakeFluid(*m_expansion.fluid));
}

const SystemFlow &BuildUnderCheck::flow() const
{
    if (!m_flow)
        m_flow = systemFlow(m_expansion, conditionsOf(m_expansion));
    return *m_flow;
}

std::string BuildUnderCheck::named(const PlacedStation &station)
{
    return station.station->title + (station.part ? " " + station.part->number : "");
}

std::string BuildUnderCheck::capital(std::string words)
{
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::optional<DirtStop> dirtStop(const PlacedStation &station)
{
    if (station.part == nullptr)
        return {};
    if (const auto *filter = station.part->as<FilterFacts>())
        return DirtStop{&station, filter->rating, false};
    const auto *vessel = station.part->as<VesselFacts>();
    if (vessel != nullptr && vessel->pickupSock)
        return DirtStop{&station, vessel->sock, true};
    if (station.part->kind == Kind::Pump && station.part->says("sock"))
        return DirtStop{&station, {}, true};
    return {};
}

std::vector<const Part *> injectorsOf(const Expansion &expansion)
{
    std::vector<const Part *> injectors;
    for (const auto &line : expansion.lines) {
        if (line.part->kind == Kind::Injector && line.stations.empty())
            injectors.push_back(line.part);
    }
    return injectors;
}

std::string listed(const std::vector<std::string> &names)
{
    constexpr std::size_t Most = 6;
    std::string said;
    for (std::size_t i = 0; i < std::min(Most, names.size()); ++i) {
        const bool last = i + 1 == names.size();
        said += (i == 0 ? "" : last ? " and " : ", ") + names[i];
    }
    if (names.size() > Most)
        said += " and " + std::to_string(names.size() - Most) + " more";
    return said;
}

bool wantsCleanFluid(Kind kind) noexcept
{
    return kind == Kind::Pump || kind == Kind::Carburettor || kind == Kind::Rail ||
           kind == Kind::Injector || kind == Kind::Regulator;
}

} // namespace flarestock
