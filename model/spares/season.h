// SPDX-License-Identifier: MIT
//
// Season: the events that the shop goes to, as its season.csv says them: which days, which cars,
// and how far each car is expected to run.
//
//   season.event("quarry-hill")->firstDay   // "2027-03-20"

#pragma once

#include "model/exact/decimal.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

struct Event {
    std::string id;                ///< "quarry-hill"; unique in the season, compared folded.
    std::string title;             ///< "Quarry hill-climb"
    std::string firstDay;          ///< "2027-03-20"
    std::string lastDay;           ///< Not before the first.
    std::vector<std::string> cars; ///< Ids of their places, each once; at least one.
    std::optional<Decimal> runs;   ///< Of each car, expected; zero or more.
    std::optional<Decimal> hours;  ///< Of each car, expected; zero or more.

    [[nodiscard]] bool takes(std::string_view car) const noexcept; ///< Case folded.
};

class Season {
public:
    Season() = default;
    explicit Season(std::vector<Event> events);
    /// By first day, then as they were given.
    [[nodiscard]] const std::vector<Event> &events() const noexcept { return m_events; }
    [[nodiscard]] const Event *event(std::string_view id) const noexcept; ///< Case folded.
    /// Those that are not over on a day, the next first.
    [[nodiscard]] std::vector<const Event *> from(std::string_view day) const;
    /// The first that a car goes to and that is not over on a day; nullptr where there is none.
    [[nodiscard]] const Event *next(std::string_view car, std::string_view day) const noexcept;

private:
    std::vector<Event> m_events;
};

} // namespace flarestock
