// SPDX-License-Identifier: MIT

#include "app/trailer/carry_line.h"

#include <array>
#include <cassert>
#include <charconv>

namespace flarestock {

namespace {

std::string fixedText(double number, int decimals)
{
    std::array<char, 400> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number,
                                   std::chars_format::fixed, decimals);
    return {digits.data(), end.ptr};
}

/// Exact where it ends within twelve decimals, else the nearest in as many.
std::string numberText(const Rational &number)
{
    const auto exact = number.exactDecimal(12);
    return (exact ? *exact : number.toDecimal(12, Rounding::HalfEven)).stripped().text();
}

std::string manyText(const Decimal &amount, std::string_view noun)
{
    return amount.text() + " " + std::string(noun) + (amount == Decimal(1) ? "" : "s");
}

Result<double> meanOf(const Rational &mean)
{
    const double number = mean.toDecimal(15, Rounding::HalfEven).approximate();
    if (number <= SpareDemand::MeanMost)
        return number;
    return problem("a mean of " + numberText(mean), "is more than anybody carries spares for",
                   "Look at the rate, and at how much is to come.");
}

std::string comingText(const ComingRunning &coming, RunningIn per)
{
    return coming.sum.empty() ? manyText(coming.amount, text(per)) : coming.sum;
}

void choose(CarryLine &line, const SpareDemand &demand)
{
    line.demand = demand;
    const std::int64_t uses = demand.fewest(line.certainty);
    line.carry = uses * line.perUse;
    line.covered = demand.covered(uses);
}

} // namespace

Result<CarryLine> carryByRate(const Rational &rate, RunningIn per, const ComingRunning &coming,
                              double certainty)
{
    const Rational mean = rate.times(coming.amount);
    const auto number = meanOf(mean);
    if (!number)
        return tl::unexpected(number.error());
    CarryLine line;
    line.per = per;
    line.certainty = certainty;
    line.coming = coming.amount;
    line.mean = numberText(mean);
    line.sum = numberText(rate) + " per " + std::string(text(per)) + " × " +
               comingText(coming, per) + " = " + line.mean;
    line.why = "the rate is given";
    choose(line, SpareDemand::poisson(*number));
    return line;
}

Result<CarryLine> carryByHistory(const UseHistory &history, RunningIn per,
                                 const ComingRunning &coming, double certainty)
{
    assert(history.seen.sign() > 0);
    const UsesSeen seen{history.uses.approximate(), history.seen.approximate(),
                        coming.amount.approximate()};
    const Rational plain = Rational(history.uses, history.seen).times(coming.amount);
    const Rational withPrior =
        Rational(history.uses + Decimal(1), history.seen).times(coming.amount);
    if (const auto number = meanOf(withPrior); !number)
        return tl::unexpected(number.error());
    const auto poisson =
        SpareDemand::poisson(plain.toDecimal(15, Rounding::HalfEven).approximate());
    const auto predictive = SpareDemand::predictive(seen);
    const bool isPredictive = history.form.value_or(isThin(seen) ? SpareDemand::Form::Predictive
                                                                 : SpareDemand::Form::Poisson) ==
                              SpareDemand::Form::Predictive;
    CarryLine line;
    line.per = per;
    line.certainty = certainty;
    line.coming = coming.amount;
    line.uses = history.uses;
    line.seen = history.seen;
    line.mean = numberText(isPredictive ? withPrior : plain);
    line.other = isPredictive ? poisson : predictive;
    const std::string uses =
        manyText(history.uses, "use") + " in " + manyText(history.seen, text(per));
    const std::string enough = numberText(Rational(Decimal(static_cast<int>(UsesEnough))));
    line.sum = isPredictive
                   ? "(" + history.uses.text() + " + 1) / " + manyText(history.seen, text(per)) +
                         " × " + comingText(coming, per) + " = " + line.mean
                   : uses + " × " + comingText(coming, per) + " = " + line.mean;
    line.why = history.form   ? "it is asked for"
               : isPredictive ? uses + " are fewer than " + enough +
                                    " and do not tell the rate well; before them every rate is "
                                    "taken to be as likely (flat prior), and what comes is "
                                    "negative binomial"
                              : uses + " tell the rate";
    choose(line, isPredictive ? predictive : poisson);
    return line;
}

CarryLine carryByWear(const WearingOut &wear, RunningIn per, const std::string &sum)
{
    CarryLine line;
    line.spending = Spending::Wear;
    line.per = per;
    line.coming = wear.coming;
    line.due = replacementsDue(wear);
    line.carry = line.due.during;
    std::string used;
    for (const Decimal &one : wear.used)
        used += (used.empty() ? "" : ", ") + one.stripped().text();
    line.sum = manyText(Decimal(static_cast<std::int64_t>(wear.used.size())), "piece") +
               " that lasts " + manyText(wear.lasts, text(per)) + ", run so far " + used + ", + " +
               (sum.empty() ? manyText(wear.coming, text(per)) : sum);
    line.why = "what wears out is counted by its interval, not by chance";
    return line;
}

Result<CarryLine> carryByCrash(const CrashSets &crash, const ComingRunning &coming,
                               double certainty)
{
    CarryLine line;
    if (crash.rate) {
        auto byRate = carryByRate(*crash.rate, RunningIn::Events, coming, certainty);
        if (!byRate)
            return byRate;
        line = std::move(*byRate);
        line.perUse = crash.pieces;
        choose(line, SpareDemand(*line.demand));
        line.why = "a crash takes several at once: sets are carried for so many crashes";
    } else {
        line.certainty = certainty;
        line.perUse = crash.pieces;
        line.carry = crash.pieces * crash.sets;
        line.coming = coming.amount;
        line.why = "nobody knows how often a car is crashed: so many sets are a judgement";
    }
    line.spending = Spending::Crash;
    line.sum += (line.sum.empty() ? "" : "; ") + std::to_string(line.carry / crash.pieces) + " × " +
                std::to_string(crash.pieces) + " a crash";
    return line;
}

std::string probabilityText(double probability)
{
    if (probability >= 1)
        return "1";
    std::string said;
    for (int decimals = 6; decimals <= 17; ++decimals) {
        said = fixedText(probability, decimals);
        if (said.front() == '0')
            return said;
    }
    return said;
}

std::string percentText(double probability)
{
    const double percent = 100 * probability;
    for (int decimals = 1; decimals <= 12; ++decimals) {
        std::string said = fixedText(percent, decimals);
        if (probability >= 1 || !said.starts_with("100"))
            return (probability >= 1 ? std::string("100") : said) + " %";
    }
    return "100 %";
}

} // namespace flarestock
