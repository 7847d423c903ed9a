// SPDX-License-Identifier: MIT
//
// Carry asked: the numbers of `flarestock carry` as they are typed, read and checked.

#pragma once

#include "app/trailer/carry_line.h"
#include "app/trailer/certainty.h"

namespace flarestock {

/// As typed; empty where nothing was.
struct CarryNumbers {
    std::string rate;
    std::string failures;
    std::string inEvents;
    std::string model;
    std::string per;
    std::string events;
    std::string delivery;
    std::string runs;
    std::string hours;
    std::string cars;
    std::string each;
    std::string lasts;
    std::string used;
    std::string crash;
    std::string sets;
    std::string confidence = "95%";
};

/// "0.35", or a fraction: "1/10000". Problem: neither, below zero.
[[nodiscard]] Result<Rational> rateAsked(const std::string &typed, const std::string &option);
/// Zero or more. Problem: it is none.
[[nodiscard]] Result<Decimal> amountAsked(const std::string &typed, const std::string &option);
/// Whole, `least` or more. Problem: it is none.
[[nodiscard]] Result<std::int64_t> countAsked(const std::string &typed, const std::string &option,
                                              std::int64_t least);
[[nodiscard]] Result<RunningIn> runningAsked(const CarryNumbers &typed);
[[nodiscard]] Result<std::optional<SpareDemand::Form>> formAsked(const std::string &typed);

/// What is to come of each piece: events × cars × pieces each, and of runs or hours as many each.
/// `each`: so many of it in a car. Problem: a number that is none, or none where one is wanted.
[[nodiscard]] Result<ComingRunning> comingAsked(const CarryNumbers &typed, RunningIn per,
                                                std::int64_t each);
/// Of numbers alone. Problem: one that is none; too few or too many of them.
[[nodiscard]] Result<CarryLine> lineOfNumbers(const CarryNumbers &typed);

} // namespace flarestock
