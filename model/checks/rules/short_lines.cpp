// SPDX-License-Identifier: MIT
//
// What the shelf does not hold, once for the build.

#include "model/checks/rules/rules.h"

namespace flarestock::rules {

void shortLines(const BuildUnderCheck &build, Findings &found)
{
    const auto &lines = build.expansion().lines;
    std::vector<std::string> numbers;
    for (const auto &line : lines) {
        if (allotted(line, build.stock(*line.part)) < line.need.amount)
            numbers.push_back(line.part->number);
    }
    if (numbers.empty())
        return;
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::Stock,
                     .about = std::to_string(numbers.size()) + " of " +
                              std::to_string(lines.size()) +
                              (numbers.size() == 1 ? " lines is short" : " lines are short"),
                     .where = {},
                     .text = "Not enough of it is free: " + listed(numbers) + ".",
                     .source = "the shop's stock",
                     .remedy = "Order them, or choose another way where there is one.",
                     .mend = {},
                     .isShortage = true});
}

void lowLevels(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &line : build.expansion().lines) {
        const auto *stock = build.stock(*line.part);
        if (!stock || !stock->level || *stock->level != StockLevel::Low)
            continue;
        found.push_back({.severity = Severity::Caution,
                         .matter = Matter::Stock,
                         .about = line.part->number + ": little is left",
                         .where = line.stations.empty() ? std::string() : line.stations.front(),
                         .text = "Nobody counts it, and it was seen to be low: " + stock->seen +
                                 ". Whether it is enough for the " + line.need.spoken() +
                                 " that the build takes is not known.",
                         .source = "the shop's record of levels",
                         .remedy = "Look before you begin, and get more.",
                         .mend = {}});
    }
}

} // namespace flarestock::rules
