// SPDX-License-Identifier: MIT
//
// What each filter protects, as one note, and what stands behind no filter at all. A filter whose
// maker says nothing of its rating is named.

#include "model/checks/check.h"
#include "model/checks/rules/filters/swapped_filters.h"
#include "model/checks/rules/rules.h"

namespace flarestock::rules {

namespace {

/// " with injectors IJ-550" for a rail that the bill takes them for.
std::string behindIt(const BuildUnderCheck &build, const PlacedStation &station)
{
    if (station.part == nullptr || station.part->kind != Kind::Rail)
        return {};
    const auto injectors = injectorsOf(build.expansion());
    std::vector<std::string> numbers;
    numbers.reserve(injectors.size());
    for (const auto *injector : injectors)
        numbers.push_back(injector->number);
    return numbers.empty() ? std::string() : " with injectors " + listed(numbers);
}

std::string titles(const BuildUnderCheck &build, const std::vector<std::string> &ids)
{
    std::string said;
    for (std::size_t i = 0; i < ids.size(); ++i) {
        const auto *station = build.expansion().station(ids[i]);
        said += (i == 0                ? ""
                 : i + 1 == ids.size() ? " and "
                                       : ", ") +
                (station != nullptr ? station->station->title + behindIt(build, *station) : ids[i]);
    }
    return said;
}

/// A number without its basis compares with no other.
void saysNoBasis(const PlacedStation &station, const MicronRating &rating, Findings &found)
{
    if (rating.basis != RatingBasis::Unstated)
        return;
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::DirectionAndFilters,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) + ": " +
                              rating.text() + " without a basis",
                     .where = station.id,
                     .text = "Nominal lets much of that size through, absolute little of it; which "
                             "it is nobody says.",
                     .source = "ISO 16889 for what a rating means; the catalogue",
                     .remedy = "Enter the maker's basis, with its beta where he gives one.",
                     .mend = {}});
}

void saysNothing(const PlacedStation &station, Findings &found)
{
    found.push_back({.severity = Severity::Caution,
                     .matter = Matter::DirectionAndFilters,
                     .about = BuildUnderCheck::capital(BuildUnderCheck::named(station)) +
                              ": its rating is not known",
                     .where = station.id,
                     .text = "Without a rating nobody can say what it keeps back.",
                     .source = "the catalogue",
                     .remedy = "Enter the maker's rating with its basis.",
                     .mend = {}});
}

/// One line without a filter is one cause, whatever stands in it. A pump without its filters is
/// said by pumpFilters().
void nothingBefore(const BuildUnderCheck &build, const std::vector<std::string> &ids,
                   Findings &found)
{
    std::vector<std::string> open;
    for (const auto &id : ids) {
        const auto *station = build.expansion().station(id);
        if (station->part->kind != Kind::Pump && !isToldOfItsPump(build, *station))
            open.push_back(id);
    }
    if (open.empty())
        return;
    found.push_back({.severity = Severity::Stop,
                     .matter = Matter::DirectionAndFilters,
                     .about = BuildUnderCheck::capital(titles(build, open)) +
                              ": no filter stands before " + (open.size() == 1 ? "it" : "them"),
                     .where = open.front(),
                     .text = "Whatever is in the tank or the lines gets there.",
                     .source = "common practice, no source",
                     .remedy = "Put a filter into the line before it.",
                     .mend = {}});
}

} // namespace

void unprotected(const BuildUnderCheck &build, Findings &found)
{
    if (build.expansion().filters == FilterRule::None)
        return;
    std::string chain;
    for (const auto &protection : protections(build.expansion())) {
        if (protection.station.empty()) {
            nothingBefore(build, protection.protects, found);
            continue;
        }
        const auto *station = build.expansion().station(protection.station);
        const auto stop = dirtStop(*station);
        if (!stop->sock && !stop->rating)
            saysNothing(*station, found);
        if (!stop->sock && stop->rating)
            saysNoBasis(*station, *stop->rating, found);
        if (!protection.protects.empty())
            chain += BuildUnderCheck::capital(station->station->title) +
                     (stop->rating ? " (" + stop->rating->text() + ")" : "") + " protects " +
                     titles(build, protection.protects) + ". ";
    }
    if (chain.empty())
        return;
    chain.pop_back();
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::DirectionAndFilters,
                     .about = "What protects what",
                     .where = {},
                     .text = chain,
                     .source = "the runs of the template, read along the flow",
                     .remedy = "Look whether anything dear stands outside.",
                     .mend = {}});
}

} // namespace flarestock::rules
