// SPDX-License-Identifier: MIT
//
// Spare demand: how many pieces of something will be used over the coming events, as a law of
// chance; and so how many are to be carried that nothing lacks with a certainty.
//
//   SpareDemand::poisson(1.4136).fewest(0.95)          // 4
//   SpareDemand::predictive({1, 10, 5}).fewest(0.95)   // 3: 1 use in 10 events, 5 to come
//
// It holds for what fails one piece at a time, by chance and as often when old as when new. What
// wears out by an interval is counted (wearing_out.h), and what is broken several at once is not
// this either.

#pragma once

#include <cstdint>
#include <string_view>

namespace flarestock {

/// What was used in how much running, and how much of the same running is to come: events, runs or
/// hours, each counted for every piece that is fitted.
struct UsesSeen {
    double uses = 0;   ///< Zero or more.
    double seen = 0;   ///< More than zero.
    double coming = 0; ///< Zero or more.
};

class SpareDemand {
public:
    /// By more than this nobody carries spares; a mean above it is refused where it is typed.
    static constexpr double MeanMost = 1'000'000;

    enum class Form : std::uint8_t {
        Poisson,   ///< The rate is known.
        Predictive ///< It is only known from few uses, and so may be another.
    };
    /// `mean`: 0 to MeanMost.
    [[nodiscard]] static SpareDemand poisson(double mean);
    /// Before anything was seen every rate is taken to be as likely as every other (a flat prior);
    /// after `uses` in `seen` it is Gamma distributed, of shape uses + 1, and what comes is
    /// negative binomial: NB(uses + 1, seen / (seen + coming)). Gelman et al., Bayesian Data
    /// Analysis, 2.6 (from memory).
    [[nodiscard]] static SpareDemand predictive(const UsesSeen &history);
    /// Poisson where the history is not thin.
    [[nodiscard]] static SpareDemand of(const UsesSeen &history);

    [[nodiscard]] Form form() const noexcept { return m_form; }
    [[nodiscard]] double mean() const noexcept { return m_mean; } ///< Pieces.
    /// The probability that no more are used than are carried (below zero: 0).
    [[nodiscard]] double covered(std::int64_t carried) const;
    /// The fewest that cover at least so much; 0 < certainty < 1 (asserted). What misses it by less
    /// than a part in 10^12 covers it: binary fractions cannot tell.
    [[nodiscard]] std::int64_t fewest(double certainty) const;
    /// Another measure than covered(): of all pieces that will be wanted, the share that is there
    /// ("fill rate"); 1 where none will be.
    [[nodiscard]] double met(std::int64_t carried) const;

private:
    SpareDemand(Form form, double mean) : m_form(form), m_mean(mean) {}

    Form m_form;
    double m_mean;
    double m_shape = 0;   ///< Predictive: uses + 1.
    double m_success = 1; ///< Predictive: seen / (seen + coming).
};

/// A history with fewer uses than this is thin: one standard deviation of its rate is then more
/// than a fifth of it (1 / √25). Common practice has no fixed number; this one is ours.
inline constexpr double UsesEnough = 25;
[[nodiscard]] constexpr bool isThin(const UsesSeen &history) noexcept
{
    return history.uses < UsesEnough;
}

[[nodiscard]] std::string_view text(SpareDemand::Form form) noexcept; ///< "Poisson", "predictive"

} // namespace flarestock
