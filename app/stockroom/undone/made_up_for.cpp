// SPDX-License-Identifier: MIT

#include "app/stockroom/undone/made_up_for.h"

#include "model/storage/trailer/own_entries.h"

#include <algorithm>

namespace flarestock {

Result<void> nothingMadeUpFor(const std::vector<Movement> &moved, const ShopFile &file,
                              const Ledger &shop)
{
    std::map<std::string, std::vector<Movement>> madeUp; // By part, the differences that did it.
    for (const Movement &one : moved) {
        const auto [ofPart, isNew] = madeUp.try_emplace(one.part);
        if (isNew) {
            auto all = file.movements(one.part);
            if (!all)
                return tl::unexpected(all.error());
            std::copy_if(std::make_move_iterator(all->begin()), std::make_move_iterator(all->end()),
                         std::back_inserter(ofPart->second), [&](const Movement &found) {
                             return found.why.starts_with(BothSidesTook) &&
                                    !shop.isTakenBack(found.id);
                         });
        }
        const bool isMadeUpFor = std::any_of(
            ofPart->second.begin(), ofPart->second.end(), [&](const Movement &difference) {
                return target(difference) == source(one) && difference.at >= one.at;
            });
        if (isMadeUpFor)
            return problem(one.part + " at " + one.from,
                           "was made up for when a copy was brought, as both sides had taken it, "
                           "and stays",
                           "Count it there: what is found holds.");
    }
    return {};
}

} // namespace flarestock
