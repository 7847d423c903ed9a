// SPDX-License-Identifier: MIT
//
// Away: what is lent to somebody, what is borrowed from somebody or from another car, and what is
// out for repair; until when. It ends by a move back.

#pragma once

#include "app/workshop/workshop.h"

namespace flarestock {

enum class AwayAs : std::uint8_t { Lent, Borrowed, Repair };
[[nodiscard]] std::string_view text(AwayAs as) noexcept; ///< "lent" "borrowed" "out for repair"

struct Away {
    AwayAs as = AwayAs::Lent;
    const Part *part = nullptr;
    std::int64_t quantity = 0; ///< Smallest units.
    std::string lot;
    std::string from;       ///< Place id: where it belongs.
    std::string at;         ///< Where it is.
    std::string until;      ///< "2026-12-01"; empty where nobody has said.
    std::int64_t since = 0; ///< Milliseconds since 1970, UTC; 0 where it is not known.
    std::optional<MovementId> movement;

    [[nodiscard]] bool isOverdue(std::string_view day) const noexcept
    {
        return !until.empty() && until < day;
    }
};

/// Of all movements in the order of the fold: those that went to a borrower or a repairer and have
/// not come back, from a borrower and have not gone back, from car to car and have not gone back;
/// and pieces at a car that alone another car is for. The oldest come back first.
[[nodiscard]] std::vector<Away> awayNow(const std::vector<Movement> &movements,
                                        const Workshop &workshop);

} // namespace flarestock
