// SPDX-License-Identifier: MIT

#include "app/stockroom/cut_planning.h"

#include "app/stockroom/asked.h"

namespace flarestock {

NamedTask::NamedTask(const CutWish &wish)
{
    for (const auto &[name, length] : wish.pieces) {
        m_names.push_back(name);
        m_task.pieces.push_back(std::min(length, CutLengthMost));
    }
    m_task.lengths = wish.lengths;
    m_task.kerf = wish.loss.kerf;
    m_task.leastUseful = wish.loss.leastUseful;
    m_task.coil = wish.coil;
}

Result<std::vector<CutFrom>> NamedTask::cuts(const CutPlan &plan, const Part &part) const
{
    if (!plan.lacking.empty() || plan.coils() > 0) {
        const std::int64_t length = plan.lacking.empty()
                                        ? m_task.lengths[plan.from.back().lengths.front()]
                                        : m_task.lengths[plan.lacking.front()];
        return problem(part.number,
                       "has no piece left for " + spoken(length, part) +
                           ", in whatever order the lengths are cut",
                       "Get more, or cut fewer.");
    }
    std::vector<CutFrom> cuts;
    for (const auto &from : plan.from)
        for (const std::size_t length : from.lengths)
            cuts.push_back({m_names[*from.piece], m_task.lengths[length]});
    return cuts;
}

} // namespace flarestock
