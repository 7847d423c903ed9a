// SPDX-License-Identifier: MIT
//
// Choosing: one way for each joint, as a programme. It has one number for each way (it is taken or
// not), and for each build and part one for each count of it that the joints up to that build may
// take (it is that count or not); so that what a count costs may be anything.

#pragma once

#include "model/joints/sharing/shared_takings.h"
#include "model/programme/programme.h"

namespace flarestock {

/// The first of each joint; nothing where it has none.
[[nodiscard]] SharedTakings::Chosen firstWays(const ShareRequest &request);

class Choosing {
public:
    /// Both outlive it. It begins with the first way of each joint.
    Choosing(const ShareRequest &request, const SharedTakings &takings);

    [[nodiscard]] Solution solution(std::chrono::milliseconds within) const;
    /// By joint, as the solution has it.
    [[nodiscard]] SharedTakings::Chosen chosen(const std::vector<std::int64_t> &values) const;

private:
    /// So many of a part are taken: a number, and how many each 1 of it stands for.
    struct Taking {
        std::size_t part = 0;
        std::size_t build = 0;
        Term term;
    };

    void addWays();
    /// Of what does once for a build: taken where any of the ways that take it is, and else not.
    void addOnce();
    void addParts(std::size_t build);
    void addAim(std::size_t build, Criterion criterion);
    [[nodiscard]] std::vector<std::int64_t> valuesOf(const SharedTakings::Chosen &chosen) const;

    struct Once {
        std::size_t any = 0; ///< Its number.
        LinearSum ways;
    };
    const ShareRequest &m_request;
    const SharedTakings &m_takings;
    Programme m_programme;
    std::vector<std::vector<std::size_t>> m_ways; ///< By joint and way: its number.
    std::vector<Taking> m_takes;
    std::vector<Once> m_once;
    /// By build, part and count: its number.
    std::vector<std::vector<std::vector<std::size_t>>> m_counts;
};

} // namespace flarestock
