// SPDX-License-Identifier: MIT
//
// Wanted over time: items with what they are made of, what of them is there and what is on its way,
// and who wants how much of them when. A day is a whole number: a textbook's period (1, 2, 3 …), or
// a day of the calendar, counted from 1970-01-01.

#pragma once

#include "model/exact/decimal.h"

#include <string>
#include <vector>

namespace flarestock {

using DayNumber = std::int64_t;

struct NettedItem {
    struct Made {
        std::string of;
        Decimal count; ///< For one of the item; more than zero.
    };
    std::string id;
    Decimal onHand;     ///< On the first day, before anything comes or goes; not below zero.
    Decimal minimum;    ///< What is to stay at the end of every day.
    DayNumber lead = 0; ///< Days from the order to its receipt; not below zero.
    Decimal least;      ///< Of one order; zero: as much as is needed.
    Decimal lot;        ///< Orders are a multiple of it; zero: lot for lot.
    std::vector<Made> madeOf;
};

struct WantedItem {
    std::string item;
    DayNumber day = 0; ///< One before the first counts on the first.
    Decimal quantity;  ///< Not below zero.
    std::string whom;
};

/// On its way: a scheduled receipt.
struct DueItem {
    std::string item;
    DayNumber day = 0; ///< As above.
    Decimal quantity;  ///< Not below zero.
    std::string order;
};

struct WantedOverTime {
    std::vector<NettedItem> items;
    std::vector<WantedItem> wanted;
    std::vector<DueItem> due;
    DayNumber first = 1;
};

} // namespace flarestock
