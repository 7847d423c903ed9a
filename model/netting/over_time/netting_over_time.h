// SPDX-License-Identifier: MIT
//
// Netting over time: what must be received when so that nothing that is wanted lacks, and when that
// must be ordered. Level by level, for every day:
//
//   net(t) = max(0, gross(t) + minimum - balance(t-1) - scheduled(t))
//   planned(t) = net(t) up to the least order and to whole lots; ordered at t - lead
//
// What an item is made of is wanted on the day when it is ordered (begun). A day before the first
// is past due: it is said, and what it takes is wanted on the first day. (Convention of the
// textbooks of operations management; those that net otherwise say so.)

#pragma once

#include "model/exact/problem.h"
#include "model/netting/over_time/wanted_over_time.h"

namespace flarestock {

/// A day on which something happens to an item, or the first.
struct NettedDay {
    DayNumber day = 0;
    Decimal gross;
    Decimal scheduled;
    Decimal net;
    Decimal planned; ///< Received, not less than net.
    Decimal balance; ///< At its end.
};

/// An order that is to be given.
struct PlannedOrder {
    DayNumber release = 0;
    DayNumber receipt = 0;
    Decimal quantity;
    bool isPastDue = false; ///< Its release lies before the first day.
};

/// Where something that is wanted comes from. What is there and on its way goes first, the earliest
/// want before the later, those of one day in the order of their list: builds before parents.
struct Peg {
    enum class From : std::uint8_t { OnHand, Scheduled, Planned };
    From from = From::OnHand;
    Decimal quantity;
    DayNumber day = 0;     ///< When it comes; the first day for what is on hand.
    std::string order;     ///< Of what is scheduled.
    DayNumber orderBy = 0; ///< Of what is planned: its release.
};

struct MetWant {
    WantedItem want;                       ///< Whom: of what another item takes, that item.
    bool byItem = false;                   ///< It is for another item of the plan.
    std::vector<Peg> pegs;                 ///< Their sum is the quantity.
    [[nodiscard]] Decimal covered() const; ///< By what is on hand or scheduled.
    [[nodiscard]] Decimal shortBy() const; ///< By what has to be ordered.
    /// The earliest day by which something has to be ordered for it; nothing where nothing is
    /// short.
    [[nodiscard]] std::optional<DayNumber> orderBy() const;
};

struct NettedPlan {
    struct Item {
        std::string id;
        int lowLevel = 0;
        std::vector<NettedDay> days;
        std::vector<PlannedOrder> orders;
        std::vector<MetWant> wants; ///< By day.
        /// At the end of any day.
        [[nodiscard]] Decimal balanceAt(DayNumber day) const;
        Decimal onHand;
    };
    std::vector<Item> items; ///< As they were given.
    [[nodiscard]] const Item *item(std::string_view id) const noexcept;
};

/// Problem: as lowLevelCodes(); a want or receipt of an unknown item; a number below zero.
[[nodiscard]] Result<NettedPlan> nettedOverTime(const WantedOverTime &asked);

} // namespace flarestock
