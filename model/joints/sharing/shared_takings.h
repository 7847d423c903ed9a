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
    explicit SharedTakings(const ShareRequest &request);

    struct PartRow {
        const Part *part = nullptr;
        std::vector<WayRank> byCount; ///< toBuy, unpriced and costMicro of 0, 1, 2 … taken.
        bool isOnce = false;          ///< One does for all: sealant.
    };
    [[nodiscard]] const std::vector<PartRow> &parts() const noexcept { return m_parts; }

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
    [[nodiscard]] WayRank together(const std::vector<std::optional<std::size_t>> &chosen) const;

private:
    std::vector<PartRow> m_parts;
    std::vector<std::vector<Counts>> m_counts;
    std::vector<std::vector<WayRank>> m_own;
};

} // namespace flarestock
