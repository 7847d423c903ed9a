// SPDX-License-Identifier: MIT

#include "app/stockroom/cutting.h"

#include "model/parts/cutting.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What a cut takes off a piece: its kerf too, unless the piece is used up to its end.
std::int64_t takenOff(std::int64_t piece, std::int64_t length, std::int64_t kerf) noexcept
{
    return std::min(piece, length + kerf);
}

} // namespace

CutLoss usualCutLoss() noexcept
{
    return {UsualKerf, 64 * UsualKerf};
}

Result<std::vector<CutFrom>> cuttingPlan(const Part &part, std::vector<std::int64_t> lengths,
                                         const std::map<BalanceKey, std::int64_t> &pieces,
                                         const CutLoss &loss)
{
    auto left = pieces;
    std::sort(lengths.begin(), lengths.end(), std::greater<>());
    std::vector<CutFrom> plan;
    for (const std::int64_t length : lengths) {
        auto best = left.end();
        std::int64_t longest = 0;
        for (auto at = left.begin(); at != left.end(); ++at) {
            longest = std::max(longest, at->second);
            if (at->second >= length && (best == left.end() || at->second < best->second))
                best = at;
        }
        if (best == left.end())
            return problem(part.number,
                           "has no piece of " + spoken(length, part) +
                               "; the longest that is left has " + spoken(longest, part),
                           "Get more, or cut another piece first.");
        plan.push_back({best->first, length});
        best->second -= takenOff(best->second, length, loss.kerf);
    }
    return plan;
}

std::vector<Movement> cutMovements(const std::vector<CutFrom> &cuts,
                                   std::map<BalanceKey, std::int64_t> pieces,
                                   const CutAction &action)
{
    std::vector<Movement> movements;
    std::map<BalanceKey, std::int64_t> waste;
    for (const CutFrom &cut : cuts) {
        Movement movement = movementOf(cut.piece, cut.length, action.to, action.deed);
        movement.document = action.document;
        movements.push_back(std::move(movement));
        std::int64_t &left = pieces[cut.piece];
        const std::int64_t off = takenOff(left, cut.length, action.loss.kerf);
        left -= off;
        waste[cut.piece] += off - cut.length;
    }
    for (auto &[piece, lost] : waste) {
        const std::int64_t rest = pieces[piece];
        if (rest < action.loss.leastUseful)
            lost += rest;
        if (lost <= 0)
            continue;
        movements.push_back(movementOf(piece, lost, action.scrap, Deed::Scrap));
        movements.back().why = rest < action.loss.leastUseful && rest > 0
                                   ? "kerf, and a rest too short to use"
                                   : "kerf";
    }
    return movements;
}

} // namespace flarestock
