// SPDX-License-Identifier: MIT

#include "app/garage/standing_moves.h"

namespace flarestock {

std::vector<StandingMove> standingMoves(const std::vector<Movement> &movements,
                                        const Ledger &ledger)
{
    std::map<MovementId, const Movement *> byId;
    for (const Movement &one : movements)
        byId.emplace(one.id, &one);
    std::vector<StandingMove> standing;
    for (const Movement &one : movements) {
        if (ledger.isTakenBack(one.id))
            continue;
        const Movement *first = &one;
        bool isReversal = false;
        while (first->reverses) {
            const auto past = byId.find(*first->reverses);
            if (past == byId.end())
                break;
            first = past->second;
            isReversal = !isReversal;
        }
        if (!isReversal)
            standing.push_back({&one, first});
    }
    return standing;
}

} // namespace flarestock
