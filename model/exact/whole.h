// SPDX-License-Identifier: MIT
//
// Whole: a whole number of unlimited size, the coefficient inside a Decimal.
//
// Small numbers live in a checked 64-bit integer; what overflows spills to an unlimited one that
// only whole_big.cpp knows, so that nobody else pays for its headers. The build option
// FLARESTOCK_BIG_ONLY sends all arithmetic down the unlimited path, so that tests can run both.
//
//   Whole(std::int64_t{3}) * Whole::powerOfTen(20)    // 300000000000000000000
//
// The rest of the model counts in Decimal or in plain integers; Whole is for model/exact.

#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace flarestock {

class Whole {
public:
    Whole() noexcept = default; ///< Zero.
    explicit Whole(std::int64_t number) noexcept : m_small(number) {}
    explicit Whole(std::uint64_t number);
    Whole(const Whole &);
    Whole(Whole &&) noexcept = default;
    Whole &operator=(const Whole &);
    Whole &operator=(Whole &&) noexcept = default;
    ~Whole() = default;

    /// Decimal digits only, at least one (asserted); leading zeros mean nothing.
    [[nodiscard]] static Whole ofDigits(std::string_view digits);
    /// 10 to the power of `exponent`, which is 0 or more (asserted).
    [[nodiscard]] static Whole powerOfTen(std::int32_t exponent);

    [[nodiscard]] int sign() const noexcept; ///< -1, 0 or 1.
    [[nodiscard]] bool isEven() const;
    [[nodiscard]] std::optional<std::int64_t> toInt64() const; ///< Nothing where it does not fit.
    [[nodiscard]] std::string text() const; ///< Digits, with "-" in front of a negative one.
    [[nodiscard]] std::size_t hash() const;
    [[nodiscard]] Whole abs() const;

    friend Whole operator+(const Whole &, const Whole &);
    friend Whole operator-(const Whole &, const Whole &);
    friend Whole operator*(const Whole &, const Whole &);
    [[nodiscard]] Whole operator-() const;
    friend std::strong_ordering operator<=>(const Whole &, const Whole &);
    friend bool operator==(const Whole &left, const Whole &right)
    {
        return (left <=> right) == std::strong_ordering::equal;
    }

    struct Division;
    /// Quotient towards zero; the remainder has the sign of the dividend. Divisor not 0 (asserted).
    friend Division divideTowardsZero(const Whole &dividend, const Whole &divisor);
    /// Greatest common divisor, 0 only for two zeros; never negative.
    friend Whole greatestCommonDivisor(const Whole &, const Whole &);

private:
    struct Big;
    struct Destroy {
        void operator()(Big *big) const noexcept;
    };
    friend struct BigPath;

    std::int64_t m_small = 0;            ///< The number, where m_big is empty.
    std::unique_ptr<Big, Destroy> m_big; ///< The number, where it did not fit.
};

struct Whole::Division {
    Whole quotient;
    Whole remainder;
};

[[nodiscard]] Whole::Division divideTowardsZero(const Whole &dividend, const Whole &divisor);
[[nodiscard]] Whole greatestCommonDivisor(const Whole &, const Whole &);

} // namespace flarestock
