// SPDX-License-Identifier: MIT
//
// BigPath: the unlimited half of Whole. Each function takes numbers of either storage and gives the
// small storage back where the result fits (never under FLARESTOCK_BIG_ONLY). Private to whole.cpp.

#pragma once

#include "model/exact/whole.h"

namespace flarestock {

struct BigPath {
    [[nodiscard]] static Whole ofUnsigned(std::uint64_t number);
    [[nodiscard]] static Whole ofDigits(std::string_view digits);
    [[nodiscard]] static Whole powerOfTen(std::int32_t exponent);
    [[nodiscard]] static Whole sum(const Whole &, const Whole &);
    [[nodiscard]] static Whole difference(const Whole &, const Whole &);
    [[nodiscard]] static Whole product(const Whole &, const Whole &);
    [[nodiscard]] static Whole::Division division(const Whole &dividend, const Whole &divisor);
    [[nodiscard]] static Whole greatestCommonDivisor(const Whole &, const Whole &);
    [[nodiscard]] static int compare(const Whole &, const Whole &); ///< Negative, 0 or positive.
    [[nodiscard]] static int sign(const Whole &) noexcept;
    [[nodiscard]] static bool isEven(const Whole &);
    [[nodiscard]] static std::optional<std::int64_t> toInt64(const Whole &);
    [[nodiscard]] static std::string text(const Whole &);

private:
    struct Storage;
};

} // namespace flarestock
