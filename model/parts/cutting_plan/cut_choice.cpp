// SPDX-License-Identifier: MIT

#include "model/parts/cutting_plan/cut_choice.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace flarestock {

CutChoice::CutChoice(const CutTask &task, CutAim aim)
    : m_task(task), m_aim(aim), m_wanted(wantedLengths(task)), m_lacking(m_wanted.size(), 0)
{
    addGroups();
    cutGreedily();
}

void CutChoice::addGroups()
{
    std::map<std::int64_t, std::vector<std::size_t>> byLength;
    for (std::size_t i = 0; i < m_task.pieces.size(); ++i)
        byLength[m_task.pieces[i]].push_back(i);
    for (auto &[length, pieces] : byLength)
        m_groups.push_back({length, std::move(pieces), false, {}, {}, 0, true});
    if (m_task.coil)
        m_groups.push_back({*m_task.coil, {}, true, {}, {}, 0, true});
    for (Group &group : m_groups) {
        const std::size_t most = PatternsMost / m_groups.size();
        group.patterns = patternsOf(m_task, group.length, m_wanted, most);
        group.hasAll = group.patterns.size() < most;
        group.times.assign(group.patterns.size(), 0);
    }
}

/// Each length, the longest first, off the shortest piece that still holds it; a new coil where
/// none does.
void CutChoice::cutGreedily()
{
    struct Begun {
        Group *group;
        std::int64_t left; ///< With the kerf that the last cut does not take.
        std::vector<std::int64_t> counts;
    };
    std::vector<Begun> begun;
    const std::vector<std::int64_t> none(m_wanted.size(), 0);
    for (Group &group : m_groups)
        for (std::size_t i = 0; i < group.pieces.size(); ++i)
            begun.push_back({&group, group.length + m_task.kerf, none});
    for (std::size_t at = 0; at < m_wanted.size(); ++at) {
        const std::int64_t each = m_wanted[at].length + m_task.kerf;
        for (std::int64_t count = 0; count < m_wanted[at].count; ++count) {
            Begun *shortest = nullptr;
            for (Begun &one : begun)
                if (one.left >= each && (!shortest || one.left < shortest->left))
                    shortest = &one;
            if (!shortest && m_task.coil && *m_task.coil >= m_wanted[at].length)
                shortest =
                    &begun.emplace_back(Begun{&m_groups.back(), *m_task.coil + m_task.kerf, none});
            if (!shortest) {
                ++m_lacking[at];
                continue;
            }
            shortest->left -= each;
            ++shortest->counts[at];
        }
    }
    for (Begun &one : begun)
        if (one.counts != none)
            cutOff(*one.group, std::move(one.counts));
}

/// Once more by this pattern, which is added where it was left out.
void CutChoice::cutOff(Group &group, std::vector<std::int64_t> counts)
{
    const auto found =
        std::find_if(group.patterns.begin(), group.patterns.end(),
                     [&](const CutPattern &pattern) { return pattern.counts == counts; });
    const auto at = static_cast<std::size_t>(found - group.patterns.begin());
    if (found == group.patterns.end()) {
        group.patterns.push_back(patternOf(m_task, group.length, m_wanted, std::move(counts)));
        group.times.push_back(0);
    }
    ++group.times[at];
}

std::int64_t CutChoice::worth(const Group &group, const CutPattern &pattern,
                              CutMeasure measure) const
{
    switch (measure) {
    case CutMeasure::Coils:
        return group.isNew ? 1 : 0;
    case CutMeasure::FromCoils:
        return group.length >= m_task.wholeCoil() ? pattern.length : 0;
    case CutMeasure::Waste:
        return pattern.waste;
    case CutMeasure::Started:
        return 1;
    case CutMeasure::Longer:
        return (&group - m_groups.data()) * pattern.cuts;
    case CutMeasure::Short:
        break;
    }
    return 0;
}

Programme CutChoice::programme()
{
    Programme programme;
    std::vector<LinearSum> gets(m_wanted.size());
    for (Group &group : m_groups) {
        group.firstNumber = programme.size();
        const auto pieces =
            static_cast<std::int64_t>(group.isNew ? m_task.lengths.size() : group.pieces.size());
        LinearSum used;
        for (const CutPattern &pattern : group.patterns) {
            std::int64_t most = pieces;
            for (std::size_t i = 0; i < m_wanted.size(); ++i)
                if (pattern.counts[i] > 0)
                    most = std::min(most, m_wanted[i].count / pattern.counts[i]);
            const std::size_t number = programme.number(0, most);
            used.push_back({number, 1});
            for (std::size_t i = 0; i < m_wanted.size(); ++i)
                if (pattern.counts[i] > 0)
                    gets[i].push_back({number, pattern.counts[i]});
        }
        if (!group.isNew && !used.empty())
            programme.keep(std::move(used), NoLimit::Below, pieces);
    }
    m_firstLacking = programme.size();
    for (std::size_t i = 0; i < m_wanted.size(); ++i) {
        gets[i].push_back({programme.number(0, m_wanted[i].count), 1});
        programme.keep(std::move(gets[i]), m_wanted[i].count, m_wanted[i].count);
    }
    for (const CutMeasure measure : measuresOf(m_aim))
        addAim(programme, measure);
    programme.startWith(valuesNow());
    return programme;
}

void CutChoice::addAim(Programme &programme, CutMeasure measure) const
{
    LinearSum sum;
    for (const Group &group : m_groups)
        for (std::size_t i = 0; i < group.patterns.size(); ++i)
            sum.push_back({group.firstNumber + i, worth(group, group.patterns[i], measure)});
    if (measure == CutMeasure::Short)
        for (std::size_t i = 0; i < m_wanted.size(); ++i)
            sum.push_back({m_firstLacking + i, m_wanted[i].length});
    programme.aim(std::move(sum));
}

std::vector<std::int64_t> CutChoice::valuesNow() const
{
    std::vector<std::int64_t> values;
    for (const Group &group : m_groups)
        values.insert(values.end(), group.times.begin(), group.times.end());
    values.insert(values.end(), m_lacking.begin(), m_lacking.end());
    return values;
}

void CutChoice::take(const std::vector<std::int64_t> &values)
{
    auto next = values.begin();
    for (Group &group : m_groups)
        for (std::int64_t &times : group.times)
            times = *next++;
    for (std::int64_t &lacking : m_lacking)
        lacking = *next++;
}

CutPlan CutChoice::planNow() const
{
    std::vector<std::vector<std::size_t>> waiting(m_wanted.size()); // The first is the last.
    for (std::size_t i = m_task.lengths.size(); i-- > 0;) {
        const auto at =
            std::find_if(m_wanted.begin(), m_wanted.end(), [&](const WantedLength &wanted) {
                return wanted.length == m_task.lengths[i];
            });
        waiting[static_cast<std::size_t>(at - m_wanted.begin())].push_back(i);
    }
    const auto next = [&waiting](std::size_t at) {
        const std::size_t length = waiting[at].back();
        waiting[at].pop_back();
        return length;
    };
    CutPlan plan;
    for (const Group &group : m_groups) {
        std::size_t piece = 0;
        for (std::size_t i = 0; i < group.patterns.size(); ++i)
            for (std::int64_t times = 0; times < group.times[i]; ++times) {
                const CutPattern &pattern = group.patterns[i];
                CutPlan::FromPiece from{{}, group.length, {}, pattern.rest, pattern.waste};
                if (!group.isNew)
                    from.piece = group.pieces.at(piece++);
                for (std::size_t at = 0; at < m_wanted.size(); ++at)
                    for (std::int64_t count = 0; count < pattern.counts[at]; ++count)
                        from.lengths.push_back(next(at));
                plan.from.push_back(std::move(from));
            }
    }
    for (const auto &left : waiting)
        plan.lacking.insert(plan.lacking.end(), left.begin(), left.end());
    std::sort(plan.lacking.begin(), plan.lacking.end());
    std::stable_sort(plan.from.begin(), plan.from.end(),
                     [this](const CutPlan::FromPiece &a, const CutPlan::FromPiece &b) {
                         const std::size_t last = m_task.pieces.size();
                         return a.piece.value_or(last) < b.piece.value_or(last);
                     });
    return plan;
}

/// What no plan goes below, without looking for one: what is longer than all there is lacks, and
/// what a coil holds is cut, off pieces or coils.
std::int64_t CutChoice::certain(CutMeasure measure) const
{
    std::int64_t longest = 0;
    for (const Group &group : m_groups)
        longest = std::max(longest, group.length);
    std::int64_t tooLong = 0;
    std::int64_t cut = 0;    // Of what a coil holds.
    std::int64_t needed = 0; // With the kerfs, less what all pieces have.
    for (const WantedLength &wanted : m_wanted) {
        if (wanted.length > longest)
            tooLong += wanted.count * wanted.length;
        if (!m_task.coil || wanted.length > *m_task.coil)
            continue;
        cut += wanted.count * wanted.length;
        needed += wanted.count * (wanted.length + m_task.kerf);
    }
    std::int64_t remnants = 0;
    for (const std::int64_t piece : m_task.pieces) {
        needed -= piece + m_task.kerf;
        remnants += piece < m_task.wholeCoil() ? piece : 0;
    }
    if (measure == CutMeasure::Short)
        return tooLong;
    if (!m_task.coil)
        return 0;
    if (measure == CutMeasure::FromCoils)
        return std::max<std::int64_t>(0, cut - remnants);
    if (measure != CutMeasure::Coils)
        return 0;
    const std::int64_t each = *m_task.coil + m_task.kerf;
    return needed <= 0 ? 0 : (needed + each - 1) / each;
}

std::optional<CutBound> CutChoice::boundOf(const CutPlan &plan, const Solution &solution) const
{
    const auto measures = measuresOf(m_aim);
    const bool hasAll = std::all_of(m_groups.begin(), m_groups.end(),
                                    [](const Group &group) { return group.hasAll; });
    if (hasAll && solution.outcome == Solution::Outcome::Found) {
        if (solution.isProven())
            return std::nullopt;
        return CutBound{measures[solution.proven], *solution.bound};
    }
    const auto reached = plan.measured(m_task, m_aim);
    for (std::size_t i = 0; i < measures.size(); ++i)
        if (const std::int64_t least = certain(measures[i]); reached[i] > least)
            return CutBound{measures[i], least};
    return std::nullopt;
}

CutPlan CutChoice::best(std::chrono::milliseconds within)
{
    const Solution solution = programme().solve(within);
    if (solution.outcome == Solution::Outcome::Found)
        take(solution.values);
    CutPlan plan = planNow();
    assert(solution.outcome != Solution::Outcome::Found ||
           plan.measured(m_task, m_aim) == solution.aims);
    plan.bound = boundOf(plan, solution);
    return plan;
}

} // namespace flarestock
