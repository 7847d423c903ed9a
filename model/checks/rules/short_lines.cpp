// SPDX-License-Identifier: MIT
//
// What the shelf does not hold, once for the build.

#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

namespace {

constexpr std::size_t NamedMost = 6;

bool isShort(const BuildUnderCheck &build, const BillLine &line)
{
    const auto *stock = build.stock(*line.part);
    if (stock == nullptr || stock->free.amount < line.need.amount)
        return true;
    // A length lies in pieces: the longest cut needs one piece that holds it.
    return !line.cuts.empty() &&
           (stock->pieces.empty() || stock->pieces.front().amount < line.cuts.front().amount);
}

} // namespace

void shortLines(const BuildUnderCheck &build, Findings &found)
{
    const auto &lines = build.expansion().lines;
    std::vector<std::string> numbers;
    for (const auto &line : lines) {
        if (isShort(build, line))
            numbers.push_back(line.part->number);
    }
    if (numbers.empty())
        return;
    std::string named;
    for (std::size_t i = 0; i < std::min(NamedMost, numbers.size()); ++i)
        named += (i == 0 ? "" : ", ") + numbers[i];
    if (numbers.size() > NamedMost)
        named += " and " + std::to_string(numbers.size() - NamedMost) + " more";
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::Stock,
                     .about = std::to_string(numbers.size()) + " of " +
                              std::to_string(lines.size()) + " lines are short",
                     .where = {},
                     .text = "Not enough of it is free: " + named + ".",
                     .source = "the shop's stock",
                     .remedy = "Order them, or choose another way where there is one.",
                     .mend = {}});
}

} // namespace flarestock::rules
