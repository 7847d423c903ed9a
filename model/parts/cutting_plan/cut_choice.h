// SPDX-License-Identifier: MIT
//
// Cut choice: how often each pattern is cut off pieces of each length, as a programme in whole
// numbers. Its rows count pieces and lengths, so that its factors are small; lengths stand only in
// what is to be as low as it can be.

#pragma once

#include "model/parts/cutting_plan/cut_plan.h"
#include "model/programme/programme.h"

namespace flarestock {

class CutChoice {
public:
    /// The task outlives it.
    CutChoice(const CutTask &task, CutAim aim);

    [[nodiscard]] CutPlan best(std::chrono::milliseconds within);

private:
    /// Pieces of one length, or the coils that can be bought.
    struct Group {
        std::int64_t length = 0;
        std::vector<std::size_t> pieces; ///< As the task counts them; none of new coils.
        bool isNew = false;
        std::vector<CutPattern> patterns;
        std::vector<std::int64_t> times; ///< How often each is cut.
        std::size_t firstNumber = 0;     ///< Of the programme; one for each pattern.
        bool hasAll = true;              ///< No pattern was left out.
    };
    void addGroups();
    void cutGreedily();
    void cutOff(Group &group, std::vector<std::int64_t> counts);
    [[nodiscard]] Programme programme();
    void addAim(Programme &programme, CutMeasure measure) const;
    [[nodiscard]] std::int64_t worth(const Group &group, const CutPattern &pattern,
                                     CutMeasure measure) const;
    [[nodiscard]] std::vector<std::int64_t> valuesNow() const;
    void take(const std::vector<std::int64_t> &values);
    [[nodiscard]] CutPlan planNow() const;
    [[nodiscard]] std::optional<CutBound> boundOf(const CutPlan &plan,
                                                  const Solution &solution) const;
    [[nodiscard]] std::int64_t certain(CutMeasure measure) const;

    const CutTask &m_task;
    CutAim m_aim;
    std::vector<WantedLength> m_wanted;
    std::vector<Group> m_groups;         ///< Shortest first, new coils last.
    std::vector<std::int64_t> m_lacking; ///< Of each wanted length, so many.
    std::size_t m_firstLacking = 0;      ///< Its number in the programme.
};

} // namespace flarestock
