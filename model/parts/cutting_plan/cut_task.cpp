// SPDX-License-Identifier: MIT

#include "model/parts/cutting_plan/cut_task.h"

#include <functional>

namespace flarestock {

std::int64_t CutTask::wholeCoil() const
{
    if (coil)
        return *coil;
    return pieces.empty() ? 0 : *std::max_element(pieces.begin(), pieces.end());
}

std::vector<WantedLength> wantedLengths(const CutTask &task)
{
    std::vector<std::int64_t> lengths = task.lengths;
    std::sort(lengths.begin(), lengths.end(), std::greater<>());
    std::vector<WantedLength> wanted;
    for (const std::int64_t length : lengths) {
        if (wanted.empty() || wanted.back().length != length)
            wanted.push_back({length, 0});
        ++wanted.back().count;
    }
    return wanted;
}

CutPattern patternOf(const CutTask &task, std::int64_t piece,
                     const std::vector<WantedLength> &wanted, std::vector<std::int64_t> counts)
{
    CutPattern pattern;
    pattern.counts = std::move(counts);
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        pattern.cuts += pattern.counts[i];
        pattern.length += pattern.counts[i] * wanted[i].length;
    }
    pattern.rest = std::max<std::int64_t>(0, piece - pattern.length - pattern.cuts * task.kerf);
    if (pattern.cuts > 0 && pattern.rest < task.leastUseful)
        pattern.rest = 0;
    pattern.waste = piece - pattern.length - pattern.rest;
    return pattern;
}

namespace {

/// Deeper and deeper into the lengths that are wanted, as far as the piece lasts.
class Patterns {
public:
    Patterns(const CutTask &task, std::int64_t piece, const std::vector<WantedLength> &wanted)
        : m_task(task), m_piece(piece), m_wanted(wanted), m_counts(wanted.size(), 0)
    {
    }

    std::vector<CutPattern> upTo(std::size_t most)
    {
        m_most = most;
        // The last cut may end with the piece, and then takes no kerf.
        grow(0, m_piece + m_task.kerf);
        return std::move(m_found);
    }

private:
    void grow(std::size_t at, std::int64_t left)
    {
        if (m_found.size() >= m_most)
            return;
        if (at == m_wanted.size()) {
            CutPattern pattern = patternOf(m_task, m_piece, m_wanted, m_counts);
            if (pattern.cuts > 0)
                m_found.push_back(std::move(pattern));
            return;
        }
        const std::int64_t each = m_wanted[at].length + m_task.kerf;
        for (std::int64_t count = std::min(m_wanted[at].count, left / each); count >= 0; --count) {
            m_counts[at] = count;
            grow(at + 1, left - count * each);
        }
        m_counts[at] = 0;
    }

    const CutTask &m_task;
    std::int64_t m_piece;
    const std::vector<WantedLength> &m_wanted;
    std::vector<std::int64_t> m_counts;
    std::vector<CutPattern> m_found;
    std::size_t m_most = 0;
};

} // namespace

std::vector<CutPattern> patternsOf(const CutTask &task, std::int64_t piece,
                                   const std::vector<WantedLength> &wanted, std::size_t most)
{
    return Patterns(task, piece, wanted).upTo(most);
}

} // namespace flarestock
