// SPDX-License-Identifier: MIT
//
// Shared takings: what each way takes of each part, and what so many of a part come to when all
// joints have taken theirs. What one more costs depends on how many are taken (the shelf ends, a
// price breaks), so that a part's sums stand in a row by their number.

#pragma once

#include "model/joints/sharing/sharing.h"

#include <map>

namespace flarestock {

class SharedTakings {
public:
    /// The request outlives it.
    explicit SharedTakings(const ShareRequest &request);

    struct PartRow {
        const Part *part = nullptr;
        std::vector<WayRank> byCount; ///< toBuy, unpriced and costMicro of 0, 1, 2 … taken.
        bool isOnce = false;          ///< One does for all joints of a build: sealant.
    };
    [[nodiscard]] const std::vector<PartRow> &parts() const noexcept { return m_parts; }
    /// What 0, 1, 2 … up to `most` of a part come to.
    [[nodiscard]] static std::vector<WayRank> byCount(const ShareRequest &request, const Part &part,
                                                      int most);

    /// Builds, at least one.
    [[nodiscard]] std::size_t builds() const noexcept { return m_builds; }
    /// Of a way: by place in parts(), how many; of what does once for all, one.
    using Counts = std::map<std::size_t, int>;
    [[nodiscard]] const Counts &counts(std::size_t joint, std::size_t way) const
    {
        return m_counts[joint][way];
    }
    /// What a way counts whoever else takes what: unanswered, narrow, pieces, cautions.
    [[nodiscard]] const WayRank &own(std::size_t joint, std::size_t way) const
    {
        return m_own[joint][way];
    }
    using Chosen = std::vector<std::optional<std::size_t>>;
    /// By place in parts(), how many the joints of these builds take: all up to `build`.
    [[nodiscard]] std::vector<int> taken(const Chosen &chosen, std::size_t build) const;
    [[nodiscard]] WayRank together(const Chosen &chosen, std::size_t build) const;

private:
    void addJoint(const SharedJoint &joint, std::vector<int> &most);
    [[nodiscard]] std::size_t placeOf(const Part &part, std::vector<int> &most);

    const std::vector<SharedJoint> &m_joints;
    std::size_t m_builds = 1;
    std::map<const Part *, std::size_t> m_places;
    std::vector<PartRow> m_parts;
    std::vector<std::vector<Counts>> m_counts;
    std::vector<std::vector<WayRank>> m_own;
};

} // namespace flarestock
