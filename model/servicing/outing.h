// SPDX-License-Identifier: MIT
//
// Outing: how far a car has run at an event: so many runs, so many hours. All that wears in it
// counts by these.

#pragma once

#include "model/exact/decimal.h"
#include "model/journal/record.h"

namespace flarestock {

struct Outing {
    MovementId id;
    std::string car;   ///< Place id.
    std::string event; ///< As the season calls it, or a name of the shop's own: "test day".
    std::string day;   ///< "2026-12-12"
    std::int64_t runs = 0;
    Decimal hours; ///< Of the engine; not below zero.
    std::string note;
    std::string who;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Outing> read(const Record &record); ///< Problem: not one.
};

/// The field that names the record which a record takes back.
inline constexpr const char *TakesBackField = "takes back";
/// The record that takes one back: the same, with that field. One that takes back such a record
/// lets the first stand again. Its id, who and when are the caller's.
[[nodiscard]] Record takingBack(const Record &past);
/// Outings and servicings that stand, in their order: without those that were taken back, and
/// without what took them back.
[[nodiscard]] std::vector<Record> standingOf(const std::vector<Record> &records);

} // namespace flarestock
