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

constexpr std::array<std::string_view, 5> NutWords = {"fitting", "hose", "aluminium tube",
                                                      "steel tube", "other tube"};

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
        row.torque.published = least;
        if (least != most)
            row.torque.published.append(" to ").append(most);
        row.torque.published.append(" ").append(unit);
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

/// Whether a row is of this joint; flare nuts of no said use are of every one.
bool isOf(const Row &row, const TorqueAsked &asked)
{
    switch (asked.port.family) {
    case Family::Orb:
        return row.joint == "boss";
    case Family::Sae45:
        return row.joint == "flare 45 nut";
    case Family::An:
    case Family::Jic:
        return row.joint == "flare nut" ||
               (row.joint == "flare hose nut" && asked.on == NutOn::Hose) ||
               (row.joint == "flare nut on tube" && row.torque.metal == text(asked.on));
    default:
        return false;
    }
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
                       "Say fitting, hose, aluminium tube, steel tube or other tube.");
    return static_cast<NutOn>(found - NutWords.begin());
}

std::vector<Torque> torquesFor(const TorqueAsked &asked)
{
    const bool ferrous =
        asked.ferrous && asked.on != NutOn::AluminiumTube && asked.on != NutOn::OtherTube;
    std::vector<Torque> torques;
    for (const Row &row : rows()) {
        if (row.size != asked.port.size || !isOf(row, asked))
            continue;
        const bool tooMuch = row.torque.metal == "ferrous" && !ferrous;
        if (tooMuch && !row.halves)
            continue;
        torques.push_back(row.torque);
        if (tooMuch) {
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
    const auto [least, most] =
        std::minmax_element(torques.begin(), torques.end(),
                            [](const Torque &a, const Torque &b) { return middle(a) < middle(b); });
    const double factor = middle(*most) / middle(*least);
    return factor >= DifferFrom ? std::optional(factor) : std::nullopt;
}

} // namespace flarestock
