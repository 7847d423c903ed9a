// SPDX-License-Identifier: MIT
//
// Boxes on the shelf that were found incomplete.

#include "model/checks/rules/rules.h"

#include <algorithm>

namespace flarestock::rules {

void boxContents(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &line : build.expansion().lines) {
        const auto *stock = build.stock(*line.part);
        if (stock == nullptr || stock->missing.empty() || stock->free.amount.sign() <= 0)
            continue;
        std::string missing;
        bool spare = true;
        for (const auto &number : stock->missing) {
            missing += (missing.empty() ? "" : ", ") + number;
            const auto *part = build.catalogue().find(number);
            const auto *loose = part != nullptr ? build.stock(*part) : nullptr;
            spare = spare && loose != nullptr && loose->free.amount.sign() > 0;
        }
        found.push_back(
            {.severity = Severity::Caution,
             .matter = Matter::Stock,
             .about = line.part->number + ": its box on the shelf lacks " + missing,
             .where = line.stations.empty() ? std::string() : line.stations.front(),
             .text = "That was found when the box was opened; the part cannot be fitted as it is.",
             .source = "the shop's record of opened boxes",
             .remedy = spare ? "Take it from the loose stock."
                             : "Order it, or claim it from the supplier.",
             .mend = {},
             .isShortage = true});
    }
}

} // namespace flarestock::rules
