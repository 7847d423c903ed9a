// SPDX-License-Identifier: MIT

#include "app/command/trailer/carry_asked.h"

#include "app/stockroom/asked.h"
#include "model/exact/case_fold.h"

namespace flarestock {

namespace {

/// More of anything nobody means.
constexpr std::int64_t CountMost = 1'000'000;

std::string countedText(const Decimal &amount, const std::string &noun)
{
    return amount.text() + " " + noun + (amount == Decimal(1) ? "" : "s");
}

Result<Decimal> eventsAsked(const CarryNumbers &typed)
{
    const bool isWhole = typed.per.empty() || typed.per.starts_with("event");
    if (typed.events.empty() && !isWhole)
        return Decimal(1);
    if (typed.events.empty())
        return problem("flarestock carry", "does not know for how many events",
                       "Say --events 6, or name a shop with --shop.");
    auto events = amountAsked(typed.events, "--events");
    if (!events || typed.delivery.empty())
        return events;
    const auto until = amountAsked(typed.delivery, "--delivery");
    if (!until)
        return until;
    return *until < *events ? *until : *events;
}

Result<std::vector<Decimal>> usedAsked(const CarryNumbers &typed, std::int64_t pieces)
{
    std::vector<Decimal> used;
    std::string_view rest = typed.used;
    while (!rest.empty()) {
        const auto comma = std::min(rest.find(','), rest.size());
        const auto one = amountAsked(std::string(trimmed(rest.substr(0, comma))), "--used");
        if (!one)
            return tl::unexpected(one.error());
        used.push_back(*one);
        rest.remove_prefix(std::min(comma + 1, rest.size()));
    }
    if (static_cast<std::int64_t>(used.size()) > pieces)
        return problem("--used " + typed.used,
                       "names more than the " + std::to_string(pieces) + " that are fitted",
                       "Say how many there are with --cars and --each.");
    used.resize(static_cast<std::size_t>(pieces)); // What nobody says is new.
    return used;
}

Result<CarryLine> wearOfNumbers(const CarryNumbers &typed, RunningIn per)
{
    const auto lasts = amountAsked(typed.lasts, "--lasts");
    if (!lasts)
        return tl::unexpected(lasts.error());
    if (lasts->isZero())
        return problem("--lasts 0", "is no interval", "Write after how much it is replaced.");
    const auto cars = countAsked(typed.cars.empty() ? "1" : typed.cars, "--cars", 1);
    if (!cars)
        return tl::unexpected(cars.error());
    const auto each = countAsked(typed.each.empty() ? "1" : typed.each, "--each", 1);
    if (!each)
        return tl::unexpected(each.error());
    if (*cars * *each > CountMost)
        return problem("--cars × --each", "is more than a million", "Look at the two.");
    auto used = usedAsked(typed, *cars * *each);
    if (!used)
        return tl::unexpected(used.error());
    CarryNumbers ofOne = typed;
    ofOne.cars.clear();
    const auto coming = comingAsked(ofOne, per, 1);
    if (!coming)
        return tl::unexpected(coming.error());
    return carryByWear({std::move(*used), *lasts, coming->amount}, per, coming->sum);
}

Result<CarryLine> crashOfNumbers(const CarryNumbers &typed, double certainty)
{
    CrashSets crash;
    const auto pieces = countAsked(typed.crash, "--crash", 1);
    if (!pieces)
        return tl::unexpected(pieces.error());
    crash.pieces = *pieces;
    if (typed.rate.empty() == typed.sets.empty())
        return problem("--crash " + typed.crash,
                       "says what a crash takes, and not for how many to carry",
                       "Say how often a car is crashed, --rate 0.1 --events 6, or how many sets, "
                       "--sets 1.");
    if (!typed.sets.empty()) {
        const auto sets = countAsked(typed.sets, "--sets", 0);
        if (!sets)
            return tl::unexpected(sets.error());
        crash.sets = *sets;
        return carryByCrash(crash, {}, certainty);
    }
    const auto rate = rateAsked(typed.rate, "--rate");
    if (!rate)
        return tl::unexpected(rate.error());
    crash.rate = *rate;
    const auto coming = comingAsked(typed, RunningIn::Events, 1);
    if (!coming)
        return tl::unexpected(coming.error());
    return carryByCrash(crash, *coming, certainty);
}

Result<CarryLine> historyOfNumbers(const CarryNumbers &typed, RunningIn per,
                                   const ComingRunning &coming, double certainty)
{
    const auto uses = countAsked(typed.failures, "--failures", 0);
    if (!uses)
        return tl::unexpected(uses.error());
    if (typed.inEvents.empty())
        return problem("--failures " + typed.failures, "does not say in how much",
                       "Add --in-events 10 (of runs or hours: so many of those).");
    const auto seen = amountAsked(typed.inEvents, "--in-events");
    if (!seen)
        return tl::unexpected(seen.error());
    if (seen->isZero())
        return problem("--in-events 0", "is no history", "Say --rate instead.");
    const auto form = formAsked(typed.model);
    if (!form)
        return tl::unexpected(form.error());
    return carryByHistory({*uses, *seen, *form}, per, coming, certainty);
}

} // namespace

Result<Rational> rateAsked(const std::string &typed, const std::string &option)
{
    const auto stroke = typed.find('/');
    const auto above = Decimal::parse(trimmed(std::string_view(typed).substr(0, stroke)));
    const auto below = stroke == std::string::npos
                           ? Result<Decimal>(Decimal(1))
                           : Decimal::parse(trimmed(std::string_view(typed).substr(stroke + 1)));
    if (!above || !below || below->sign() <= 0)
        return problem(option + " " + typed, "is no rate", "Write 0.35, or a fraction: 1/10000.");
    if (above->sign() < 0)
        return problem(option + " " + typed, "is below zero: nothing is used less than never",
                       "Write zero or more.");
    return Rational(*above, *below);
}

Result<Decimal> amountAsked(const std::string &typed, const std::string &option)
{
    auto amount = Decimal::parse(trimmed(typed));
    if (!amount)
        return tl::unexpected(wrongIn(option, amount.error()));
    if (amount->sign() < 0 || *amount > Decimal(CountMost) * Decimal(1000))
        return problem(option + " " + typed, "is below zero, or more than anybody means",
                       "Write a number of zero or more.");
    return amount->stripped();
}

Result<std::int64_t> countAsked(const std::string &typed, const std::string &option,
                                std::int64_t least)
{
    const auto amount = Decimal::parse(trimmed(typed));
    const auto whole = amount ? amount->stripped().toInt64() : std::nullopt;
    if (!whole || *whole < least || *whole > CountMost)
        return problem(option + " " + typed,
                       "is no whole number from " + std::to_string(least) + " to a million",
                       "Correct the number.");
    return *whole;
}

Result<RunningIn> runningAsked(const CarryNumbers &typed)
{
    if (typed.per.empty())
        return RunningIn::Events;
    const auto per = parseRunningIn(typed.per);
    if (!per)
        return problem("--per " + typed.per, "is nothing that is counted",
                       "Write event, run or hour.");
    return *per;
}

Result<std::optional<SpareDemand::Form>> formAsked(const std::string &typed)
{
    if (typed.empty())
        return std::optional<SpareDemand::Form>();
    for (const auto form : {SpareDemand::Form::Poisson, SpareDemand::Form::Predictive})
        if (sameFolded(typed, text(form)))
            return std::optional(form);
    return problem("--model " + typed, "is none", "Write poisson or predictive.");
}

Result<ComingRunning> comingAsked(const CarryNumbers &typed, RunningIn per, std::int64_t each)
{
    ComingRunning coming;
    const auto events = eventsAsked(typed);
    if (!events)
        return tl::unexpected(events.error());
    coming.amount = *events;
    coming.sum = countedText(*events, "event");
    if (per != RunningIn::Events) {
        const bool isRuns = per == RunningIn::Runs;
        const std::string &much = isRuns ? typed.runs : typed.hours;
        if (much.empty())
            return problem("--per " + typed.per,
                           std::string("wants to know how many ") + (isRuns ? "runs" : "hours"),
                           std::string("Say how far each car runs at an event: ") +
                               (isRuns ? "--runs 6." : "--hours 2.5."));
        const auto amount = amountAsked(much, isRuns ? "--runs" : "--hours");
        if (!amount)
            return tl::unexpected(amount.error());
        coming.amount = coming.amount * *amount;
        coming.sum += " × " + countedText(*amount, isRuns ? "run" : "hour");
    }
    const auto cars = countAsked(typed.cars.empty() ? "1" : typed.cars, "--cars", 0);
    if (!cars)
        return tl::unexpected(cars.error());
    if (!typed.cars.empty()) {
        coming.amount = coming.amount * Decimal(*cars);
        coming.sum += " × " + countedText(*cars, "car");
    }
    if (each != 1) {
        coming.amount = coming.amount * Decimal(each);
        coming.sum += " × " + std::to_string(each) + " each";
    }
    coming.amount = coming.amount.stripped();
    return coming;
}

Result<CarryLine> lineOfNumbers(const CarryNumbers &typed)
{
    const auto certainty = certaintyAsked(typed.confidence, "--confidence");
    if (!certainty)
        return tl::unexpected(certainty.error());
    const auto per = runningAsked(typed);
    if (!per)
        return tl::unexpected(per.error());
    if (!typed.crash.empty())
        return crashOfNumbers(typed, *certainty);
    if (!typed.lasts.empty())
        return wearOfNumbers(typed, *per);
    if (typed.rate.empty() == typed.failures.empty())
        return problem("flarestock carry",
                       typed.rate.empty() ? "does not know how often something is used"
                                          : "takes --rate or --failures, and not both",
                       "Say --rate 0.35, or --failures 1 --in-events 10, or name a shop with "
                       "--shop.");
    const auto each = countAsked(typed.each.empty() ? "1" : typed.each, "--each", 1);
    if (!each)
        return tl::unexpected(each.error());
    const auto coming = comingAsked(typed, *per, *each);
    if (!coming)
        return tl::unexpected(coming.error());
    if (!typed.failures.empty())
        return historyOfNumbers(typed, *per, *coming, *certainty);
    const auto rate = rateAsked(typed.rate, "--rate");
    if (!rate)
        return tl::unexpected(rate.error());
    return carryByRate(*rate, *per, *coming, *certainty);
}

} // namespace flarestock
