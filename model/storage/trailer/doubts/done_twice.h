// SPDX-License-Identifier: MIT
//
// Done twice: a work at a position of a car that both sides have written down, and how one side's
// is undone where it was one and the same.

#pragma once

#include "model/servicing/serviced.h"
#include "model/storage/trailer/doubts/doubts.h"

namespace flarestock {

struct OneWork {
    Serviced done;
    Record record;
    bool byShop = false;
};
using Seat = std::pair<std::string, std::string>; ///< Car and position.
using WorksBySeat = std::map<Seat, std::vector<OneWork>>;

/// What stands of such works on one side. Throws StorageFailure: a record is not what it says.
[[nodiscard]] WorksBySeat worksBySeat(const std::vector<NewsEntry> &news, bool byShop,
                                      const std::function<bool(Work)> &isMeant);

/// The works of both sides, and what is done with them. All throw StorageFailure.
class DoneTwice {
public:
    DoneTwice(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into)
        : m_sides(sides), m_entries(entries), m_into(into)
    {
    }
    /// Those of its action, in their order.
    [[nodiscard]] std::vector<Movement> movementsOf(const OneWork &one) const;
    void giveBack(const Movement &past);
    void takeBack(const OneWork &one);
    /// It was the other side's work; the last first.
    void holdsNot(const std::vector<OneWork> &works);

protected:
    const BothSides &m_sides;
    EntriesBrought &m_entries;
    const EntriesBrought::Into &m_into;
};

} // namespace flarestock
