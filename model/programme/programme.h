// SPDX-License-Identifier: MIT
//
// Programme: whole numbers to be chosen, so that sums of them stay within their limits and one aim
// after the other is as low as it can be: the second only as low as the lowest first lets it.
//
//   Programme programme;
//   const auto hoses = programme.number(0, 6);
//   const auto tees = programme.number(0, 9);
//   programme.keep({{hoses, 6}, {tees, 4}}, NoLimit::Below, 24);
//   programme.aim({{hoses, -5}, {tees, -4}}); // as many as can be
//   programme.solve(std::chrono::seconds(5)).values;
//
// A library searches with floating point; nothing that it finds is believed before whole numbers
// have shown that it holds. What it calls the lowest, or impossible, is called proven here on its
// word: its limits have only small factors (digits.h), in which its tolerances mean nothing, and an
// aim with large ones is asked a second time whether anything is lower.

#pragma once

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace flarestock {

/// Whole numbers beyond this are not all to be had in floating point.
inline constexpr std::int64_t SumMost = std::int64_t{1} << 53;

/// For a sum that is limited on one side only.
struct NoLimit {
    static constexpr std::int64_t Below = -SumMost;
    static constexpr std::int64_t Above = SumMost;
};

struct Term {
    std::size_t number = 0; ///< As number() gave it.
    std::int64_t times = 0;
};
/// A number may stand in it several times.
using LinearSum = std::vector<Term>;

struct Solution {
    enum class Outcome : std::uint8_t {
        Found,      ///< The values keep every limit.
        Impossible, ///< No values do, as the library says.
        Nothing,    ///< None were found in the time.
        Beyond,     ///< A sum could come beyond SumMost: nothing was tried.
    };
    Outcome outcome = Outcome::Nothing;
    std::vector<std::int64_t> values; ///< By number.
    std::vector<std::int64_t> aims;   ///< What each comes to.
    /// So many of the first aims cannot come lower while those before them stay as they are.
    std::size_t proven = 0;
    /// The aim behind those comes to at least this; nothing where all are proven.
    std::optional<std::int64_t> bound;

    [[nodiscard]] bool isProven() const noexcept
    {
        return outcome == Outcome::Found && proven == aims.size();
    }
};

class Programme {
public:
    struct Range {
        std::int64_t least = 0;
        std::int64_t most = 0;
    };
    struct Limit {
        LinearSum sum;
        Range range;
    };

    /// A further number, from `least` to `most` (asserted to be no less).
    std::size_t number(std::int64_t least, std::int64_t most);
    /// The sum is from `least` to `most`.
    void keep(LinearSum sum, std::int64_t least, std::int64_t most);
    /// A further aim, behind those said before.
    void aim(LinearSum sum);
    /// Values that are known, so that what is found is no worse. Passed over where they keep not
    /// every limit.
    void startWith(std::vector<std::int64_t> values);

    /// Ends after about this time, whatever there is to choose. The answer depends on the machine
    /// only where the time runs out.
    [[nodiscard]] Solution solve(std::chrono::milliseconds within) const;

    /// Whether such values keep every limit, exactly.
    [[nodiscard]] bool holds(const std::vector<std::int64_t> &values) const;
    [[nodiscard]] std::size_t size() const noexcept { return m_numbers.size(); }

private:
    [[nodiscard]] bool isBeyond() const;
    [[nodiscard]] bool isBetter(const std::vector<std::int64_t> &values,
                                const std::vector<std::int64_t> &than) const;
    class Solving;

    std::vector<Range> m_numbers;
    std::vector<Limit> m_limits;
    std::vector<LinearSum> m_aims;
    std::vector<std::int64_t> m_start;
};

} // namespace flarestock
