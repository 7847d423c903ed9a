// SPDX-License-Identifier: MIT
//
// Cut planning: the pieces that lie in the shop and the lengths that are wanted as a task for
// planCuts(), and its plan as cuts off named pieces.

#pragma once

#include "app/stockroom/cutting.h"
#include "model/parts/cutting_plan/cut_plan.h"

namespace flarestock {

/// Lengths off the pieces of one part, in smallest units.
struct CutWish {
    const Part &part;
    std::vector<std::int64_t> lengths; ///< Each above zero.
    std::map<BalanceKey, std::int64_t> pieces;
    CutLoss loss;
    std::optional<std::int64_t> coil; ///< What a new one has; nothing: none is bought.
};

class NamedTask {
public:
    explicit NamedTask(const CutWish &wish);
    [[nodiscard]] const CutTask &task() const noexcept { return m_task; }
    /// Of a piece, as the task counts them.
    [[nodiscard]] const BalanceKey &name(std::size_t piece) const { return m_names[piece]; }
    /// Piece by piece, the longest length first. Problem: a length lacks, or is cut off a coil that
    /// is still to be bought.
    [[nodiscard]] Result<std::vector<CutFrom>> cuts(const CutPlan &plan, const Part &part) const;

private:
    std::vector<BalanceKey> m_names;
    CutTask m_task;
};

} // namespace flarestock
