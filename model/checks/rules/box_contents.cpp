// SPDX-License-Identifier: MIT
//
// Boxes on the shelf that were found incomplete.

#include "model/checks/rules/rules.h"

#include <algorithm>
#include <map>

namespace flarestock::rules {

namespace {

/// What the looks have found missing, each part once.
struct LackingBoxes {
    std::string missing; ///< "BK-460, RG-6"
    Decimal atLeast;     ///< As if one box lacked all kinds of it.
    Decimal atMost;      ///< As if no box lacked two kinds of it.
    bool spare = true;   ///< Each of it lies loose.
};

Decimal inOneBox(const Part &box, const std::string &part)
{
    for (const PartCount &inside : box.box) {
        if (inside.part == part)
            return inside.count;
    }
    return Decimal(1);
}

LackingBoxes lackingBoxes(const BuildUnderCheck &build, const Part &box, const FreeStock &stock)
{
    std::map<std::string, std::int64_t> counts;
    for (const std::string &number : stock.missing)
        ++counts[number];
    LackingBoxes lacking;
    for (const auto &[number, count] : counts) {
        lacking.missing += (lacking.missing.empty() ? "" : ", ") + number;
        const Decimal boxes = divide(Decimal(count), inOneBox(box, number), 0, Rounding::Ceiling);
        lacking.atLeast = std::max(lacking.atLeast, boxes);
        lacking.atMost = lacking.atMost + boxes;
        const auto *part = build.catalogue().find(number);
        const auto *loose = part != nullptr ? build.stock(*part) : nullptr;
        lacking.spare = lacking.spare && loose != nullptr && loose->free.amount.sign() > 0;
    }
    return lacking;
}

/// `boxes`: as many of those that lack something as the build takes.
std::string saidLacking(const Part &part, const Decimal &boxes, const std::string &missing)
{
    if (boxes <= Decimal(1))
        return part.number + ": its box on the shelf lacks " + missing;
    return part.number + ": " + boxes.text() + " of its boxes on the shelf lack " + missing;
}

} // namespace

void boxContents(const BuildUnderCheck &build, Findings &found)
{
    for (const auto &line : build.expansion().lines) {
        const auto *stock = build.stock(*line.part);
        if (stock == nullptr || stock->missing.empty() || stock->free.amount.sign() <= 0)
            continue;
        const LackingBoxes lacking = lackingBoxes(build, *line.part, *stock);
        const bool enough = stock->free.amount - lacking.atMost >= line.need.amount;
        const Decimal taken =
            enough ? lacking.atLeast : std::min(lacking.atLeast, line.need.amount);
        found.push_back(
            {.severity = enough ? Severity::Note : Severity::Caution,
             .matter = Matter::Stock,
             .about = saidLacking(*line.part, taken, lacking.missing),
             .where = line.stations.empty() ? std::string() : line.stations.front(),
             .text = enough ? "That was found when the box was opened; enough others are whole."
                            : "That was found when the box was opened; the part cannot be fitted "
                              "as it is.",
             .source = "the shop's record of opened boxes",
             .remedy = enough          ? "Take another one."
                       : lacking.spare ? "Take it from the loose stock."
                                       : "Order it, or claim it from the supplier.",
             .mend = {},
             .isShortage = !enough});
    }
}

} // namespace flarestock::rules
