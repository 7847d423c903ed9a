// SPDX-License-Identifier: MIT
//
// Carry line: how many spares of one thing to carry, with the sum behind it.
//
//   carryByRate({Rational("0.35"_dec)}, {{"6"_dec, "events"}}, 0.95)   // 5: 97.96 %

#pragma once

#include "model/exact/rational.h"
#include "model/spares/carry/spare_demand.h"
#include "model/spares/carry/spending.h"
#include "model/spares/carry/wearing_out.h"

#include <optional>
#include <string>
#include <vector>

namespace flarestock {

/// Running that is to come, of every piece that is fitted, and how it was reckoned.
struct ComingRunning {
    Decimal amount;  ///< Zero or more.
    std::string sum; ///< "6 events × 2 cars"; empty where it is the amount alone.
};

struct CarryLine {
    std::string part; ///< Empty where only numbers were given.
    Spending spending = Spending::Chance;
    RunningIn per = RunningIn::Events;
    std::int64_t carry = 0;
    double certainty = 0;
    std::optional<double> covered;     ///< By chance, or by a crash whose rate is known.
    std::optional<SpareDemand> demand; ///< Of pieces; of crashes where those are what comes.
    std::optional<SpareDemand> other;  ///< The other form, where there is a history.
    std::int64_t perUse = 1;           ///< Pieces that one crash takes.
    std::string mean;                  ///< Exact where it is a decimal: "2.1".
    std::string sum;                   ///< "0.35 per event × 6 events = 2.1"
    std::string why;                   ///< Why this form.
    DuePieces due;                     ///< Of what wears out.
    Decimal coming;                    ///< Running to come, in `per`.
    std::optional<Decimal> uses;       ///< The history, where it counts.
    std::optional<Decimal> seen;
};

/// Problem: a mean beyond SpareDemand::MeanMost.
[[nodiscard]] Result<CarryLine> carryByRate(const Rational &rate, RunningIn per,
                                            const ComingRunning &coming, double certainty);
/// `form`: nothing chooses by how thin it is. seen > 0 (asserted).
struct UseHistory {
    Decimal uses; ///< Pieces.
    Decimal seen; ///< Running of every piece that was fitted.
    std::optional<SpareDemand::Form> form = std::nullopt;
};
[[nodiscard]] Result<CarryLine> carryByHistory(const UseHistory &history, RunningIn per,
                                               const ComingRunning &coming, double certainty);
[[nodiscard]] CarryLine carryByWear(const WearingOut &wear, RunningIn per, const std::string &sum);
/// A crash takes `pieces` at once. With a rate (crashes per event) as many sets as cover it;
/// without one `sets` are a judgement, which nothing covers.
struct CrashSets {
    std::int64_t pieces = 1;
    std::optional<Rational> rate = std::nullopt;
    std::int64_t sets = 1;
};
[[nodiscard]] Result<CarryLine> carryByCrash(const CrashSets &crash, const ComingRunning &coming,
                                             double certainty);

/// A probability in so many decimals as tell it from 1, at least six: "0.985203". "1" only where it
/// is that.
[[nodiscard]] std::string probabilityText(double probability);
/// "98.5 %"; of nearly all "99.998 %".
[[nodiscard]] std::string percentText(double probability);

} // namespace flarestock
