// SPDX-License-Identifier: MIT
//
// Dated takings: what each way of each build takes of parts that may run short, what the rest of it
// comes to, and what so many of such a part come to for a build when others took theirs.

#pragma once

#include "model/joints/sharing/dated/by_date.h"
#include "model/joints/sharing/shared_takings.h"

#include <array>
#include <map>
#include <memory>

namespace flarestock {

class DatedTakings {
public:
    /// The request outlives it.
    explicit DatedTakings(const ByDateRequest &request);

    /// By criteria() of a build's order.
    using Values = std::array<std::int64_t, 7>;
    [[nodiscard]] Values valuesOf(const WayRank &rank, std::size_t build) const;
    /// Whether a build comes off worse; what a cost differs by rounding is the same.
    [[nodiscard]] bool isAbove(const Values &values, const Values &than, std::size_t build) const;
    /// The first at which they differ so; their size where none does.
    [[nodiscard]] std::size_t differAt(const Values &a, const Values &b, std::size_t build) const;

    /// A part that may run short, or that is not as dear by the number.
    struct Scarce {
        const Part *part = nullptr;
        bool isOnce = false;        ///< One does for all joints of a build: sealant.
        int left = 0;               ///< Any build may take; no more than all could.
        std::vector<int> own;       ///< By build: only it may take.
        std::vector<int> full;      ///< By build: all that is there for it if it is the only one.
        std::vector<int> most;      ///< By build: what its joints could take.
        std::vector<int> mostLater; ///< By build: what those behind it could.
    };
    [[nodiscard]] const std::vector<Scarce> &scarce() const noexcept { return m_scarce; }

    struct Takes {
        Values rest{};  ///< What it comes to without the scarce parts, whoever takes what.
        Values least{}; ///< What it comes to at least, with them.
        std::vector<std::pair<std::size_t, int>> scarce; ///< By place in scarce(), how many.
    };
    /// By build, joint and way.
    [[nodiscard]] const Takes &takes(std::size_t build, std::size_t joint, std::size_t way) const
    {
        return m_takes[build][joint][way];
    }
    /// Of all ways of a joint that are given; zeros where it has none.
    [[nodiscard]] Values least(std::size_t build, std::size_t joint) const;
    /// The same of the ways that are not given; nothing where all are.
    [[nodiscard]] std::optional<Values> leastBeyond(std::size_t build, std::size_t joint) const;

    /// So many of a scarce part, where so many are left for any build.
    struct Taken {
        std::size_t build = 0;
        std::size_t scarce = 0;
        int left = 0;
        int count = 0;
    };
    [[nodiscard]] WayRank sum(const Taken &taken) const;
    /// How many of them lie here.
    [[nodiscard]] int here(const Taken &taken) const;
    /// At least what they come to where the build takes further ones besides, less the least of
    /// those.
    [[nodiscard]] WayRank sumAtLeast(const Taken &taken) const;

private:
    using Most =
        std::map<const Part *, std::vector<int>>; ///< By build: what its joints could take.
    void addScarce(const Part &part, const std::vector<int> &most, bool isOnce);
    void addTakes(std::size_t build);
    [[nodiscard]] Takes takesOf(std::size_t build, std::size_t joint, std::size_t way) const;
    [[nodiscard]] WayRank leastOf(std::size_t build, std::size_t place, const WayRank &alone,
                                  int count) const;
    /// What so many of a part that lie here, and so many that are bought, come to.
    [[nodiscard]] WayRank sum(std::size_t build, const Part &part,
                              std::array<int, 2> hereAndToBuy) const;
    [[nodiscard]] bool isEvenlySold(std::size_t build, const Part &part, int most) const;
    [[nodiscard]] std::int64_t leastEach(std::size_t build, const Scarce &scarce) const;
    [[nodiscard]] std::size_t placeOf(Criterion criterion, std::size_t build) const;
    [[nodiscard]] Values bottle(std::size_t build) const;
    [[nodiscard]] std::int64_t fallsTo(std::size_t build) const;

    const ByDateRequest &m_request;
    std::vector<std::vector<Criterion>> m_orders; ///< By build.
    std::vector<std::unique_ptr<SharedTakings>>
        m_byItself; ///< By build: with all that it could take.
    std::vector<Scarce> m_scarce;
    std::map<const Part *, std::size_t> m_places;       ///< In m_scarce.
    std::vector<std::vector<std::int64_t>> m_leastEach; ///< By place and build: what one costs.
    std::vector<std::vector<bool>> m_isEven;            ///< The same: each costs as much to buy.
    std::vector<std::vector<std::vector<Takes>>> m_takes;
    /// By build: by how much ways that are not given may be cheaper than they are alone.
    std::vector<std::pair<Values, std::int64_t>> m_beyond;
    /// By build, place, here and to buy: what was reckoned once.
    mutable std::map<std::array<std::size_t, 4>, WayRank> m_sums;
};

} // namespace flarestock
