// SPDX-License-Identifier: MIT
//
// Bounds: what an entered figure may be, and the Problem where it is not that. One wording for all
// calculations of this folder.
//
//   if (auto wrong = firstImpossible({{"flow", flowM3S, Allowed::NothingOrMore}}))
//       return tl::unexpected<Problem>(*std::move(wrong));

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace flarestock {

enum class Allowed : std::uint8_t { MoreThanNothing, NothingOrMore, AnyNumber };

struct Figure {
    std::string_view name; ///< "bore": the words of the person who enters it.
    double value = 0;
    Allowed allowed = Allowed::MoreThanNothing;
};

/// The first figure that cannot be: below its bound, or not finite. Nothing where all can be.
[[nodiscard]] std::optional<Problem> firstImpossible(std::initializer_list<Figure> figures);

/// A figure that was measured or is valid only between two others.
struct ValidRange {
    std::string_view name; ///< "temperature"
    std::string_view unit; ///< "°C"
    double low = 0;
    double high = 0;
};

/// Problem where value is not a number within the range, ends included; nothing is ever read
/// beyond what a table, a curve or a formula is good for. thing is whose figure it is.
[[nodiscard]] std::optional<Problem> beyond(const ValidRange &range, double value,
                                            std::string_view thing);

/// "1.25", "20000": six figures at most, in the C locale.
[[nodiscard]] std::string shortNumber(double number);

} // namespace flarestock
