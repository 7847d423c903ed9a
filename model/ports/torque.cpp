// SPDX-License-Identifier: MIT

#include "model/ports/torque.h"

#include "model/fluids/measure.h"
#include "model/fluids/table_cells.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <map>

namespace flarestock {

namespace embedded {
extern const std::string_view torquesCsv; // model/ports/data/torques.csv
extern const std::string_view sourcesCsv; // model/ports/data/sources.csv
} // namespace embedded

namespace {

constexpr double InchPoundNm = 0.45359237 * 9.80665 * 0.0254; // Exact.
constexpr double DifferFrom = 1.5;

constexpr std::array<std::string_view, 4> NutWords = {"fitting", "hose", "aluminium tube",
                                                      "steel tube"};

struct Row {
    std::string_view joint;
    std::string_view size;
    bool halves = false;
    Torque torque;
};

struct Source {
    std::string_view what;
    std::string_view stands;
};

double numberIn(std::string_view cell)
{
    return Measure::parse(cell, Dimension::Count).value().si;
}

std::map<std::string_view, Source> readSources()
{
    const auto rows = rowsOfTable(embedded::sourcesCsv);
    std::map<std::string_view, Source> sources;
    for (auto row = rows.begin() + 1; row != rows.end(); ++row)
        sources.emplace(row->at(0), Source{row->at(1), row->at(3)});
    return sources;
}

std::vector<Row> readRows()
{
    const auto sources = readSources();
    const auto rows = rowsOfTable(embedded::torquesCsv);
    std::vector<Row> read;
    for (auto cells = rows.begin() + 1; cells != rows.end(); ++cells) {
        const std::string least(cells->at(3));
        const std::string most(cells->at(4));
        const std::string unit(cells->at(5));
        const double each = unit == "in-lb" ? InchPoundNm : 1;
        const auto source = sources.find(cells->at(7));
        assert(source != sources.end() && (unit == "in-lb" || unit == "N.m"));
        Row row{cells->at(0), cells->at(1), cells->at(6) == "yes", {}};
        row.torque.leastNm = numberIn(least) * each;
        row.torque.mostNm = numberIn(most) * each;
        row.torque.published = (least == most ? least : least + " to " + most) + " " + unit;
        row.torque.metal = cells->at(2);
        row.torque.note = cells->at(8);
        row.torque.sourceId = cells->at(7);
        row.torque.source = source->second.what;
        row.torque.sourceStands = source->second.stands;
        read.push_back(std::move(row));
    }
    return read;
}

const std::vector<Row> &rows()
{
    static const std::vector<Row> Rows = readRows();
    return Rows;
}

/// The name that the table has for the joint; empty where it has none.
std::string_view jointOf(const TorqueAsked &asked)
{
    switch (asked.port.family) {
    case Family::Orb:
        return "boss";
    case Family::Sae45:
        return "flare 45 nut";
    case Family::An:
    case Family::Jic:
        break;
    default:
        return {};
    }
    if (asked.on == NutOn::Fitting)
        return "flare nut";
    return asked.on == NutOn::Hose ? "flare hose nut" : "flare nut on tube";
}

bool isForTube(const Row &row, NutOn on)
{
    return row.joint != "flare nut on tube" || row.torque.metal == text(on);
}

double middle(const Torque &torque)
{
    return (torque.leastNm + torque.mostNm) / 2;
}

} // namespace

std::string_view text(NutOn on) noexcept
{
    return NutWords[static_cast<std::size_t>(on)];
}

Result<NutOn> parseNutOn(std::string_view typed)
{
    const auto found = std::find(NutWords.begin(), NutWords.end(), typed);
    if (found == NutWords.end())
        return problem("\"" + std::string(typed) + "\"", "is nothing that a flare nut holds",
                       "Say fitting, hose, aluminium tube or steel tube.");
    return static_cast<NutOn>(found - NutWords.begin());
}

std::vector<Torque> torquesFor(const TorqueAsked &asked)
{
    const auto joint = jointOf(asked);
    std::vector<Torque> torques;
    for (const Row &row : rows()) {
        if (row.joint != joint || row.size != asked.port.size || !isForTube(row, asked.on))
            continue;
        const bool onlyFerrous = row.torque.metal == "ferrous";
        if (onlyFerrous && !asked.ferrous && !row.halves)
            continue;
        torques.push_back(row.torque);
        if (onlyFerrous && !asked.ferrous) {
            torques.back().leastNm /= 2;
            torques.back().mostNm /= 2;
            torques.back().halved = true;
        }
    }
    std::stable_sort(torques.begin(), torques.end(),
                     [](const Torque &a, const Torque &b) { return middle(a) > middle(b); });
    return torques;
}

std::optional<double> disagreement(std::span<const Torque> torques)
{
    if (torques.size() < 2)
        return std::nullopt;
    const auto [least, most] = std::minmax_element(
        torques.begin(), torques.end(),
        [](const Torque &a, const Torque &b) { return middle(a) < middle(b); });
    const double factor = middle(*most) / middle(*least);
    return factor >= DifferFrom ? std::optional(factor) : std::nullopt;
}

} // namespace flarestock
