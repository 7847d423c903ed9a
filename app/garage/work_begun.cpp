// SPDX-License-Identifier: MIT

#include "app/garage/work_begun.h"

namespace flarestock {

namespace {

/// A day that may be left out.
Result<std::string> dayOrNone(const std::string &typed, const char *option)
{
    if (!typed.empty() && !isDay(typed))
        return problem(typed, std::string("is no day for ") + option,
                       "Write for example 2026-12-12.");
    return typed;
}

} // namespace

Result<Decimal> hoursAsked(const std::string &typed)
{
    if (typed.empty())
        return Decimal(0);
    const auto hours = Decimal::parse(typed);
    if (!hours || hours->sign() < 0)
        return problem(typed, "is no number of hours", "Write for example 2.5.");
    return *hours;
}

Result<Begun> begunAtCar(Work work, const WorkWords &asked, const Garage &garage, const By &by)
{
    Begun begun;
    const auto car = carAsked(asked.car, garage.workshop->ledger);
    if (!car)
        return tl::unexpected(car.error());
    const auto day = dayAsked(asked.day, by.at);
    if (!day)
        return tl::unexpected(day.error());
    begun.car = *car;
    begun.life = &garage.life((*car)->id);
    begun.serviced.car = (*car)->id;
    begun.serviced.work = work;
    begun.serviced.day = *day;
    begun.serviced.note = by.why;
    begun.serviced.who = by.who;
    begun.serviced.at = by.at;
    return begun;
}

Result<Begun> begunAt(Work work, const WorkWords &asked, const Garage &garage, const By &by)
{
    auto begun = begunAtCar(work, asked, garage, by);
    if (!begun)
        return begun;
    if (begun->life->fitted.empty())
        return problem(begun->car->id, "has nothing in it that the shop knows of",
                       "Issue a build to it, or say what is in it: flarestock service " +
                           begun->car->id + " fit PART.");
    const auto piece = positionAsked(asked.position, garage, *begun->life);
    if (!piece)
        return tl::unexpected(piece.error());
    begun->piece = *piece;
    begun->plan = garage.workshop->build((*piece)->build);
    begun->serviced.position = (*piece)->position;
    begun->serviced.build = (*piece)->build;
    begun->serviced.piece = (*piece)->piece;
    begun->serviced.quantity = (*piece)->quantity;
    if (begun->serviced.day < (*piece)->since)
        return problem(begun->serviced.day,
                       "is before " + (*piece)->position + " was fitted, on " + (*piece)->since,
                       "Give a later day.");
    return begun;
}

Result<void> readFacts(const WorkWords &asked, Serviced &serviced)
{
    const auto made = dayOrNone(asked.made, "--made");
    if (!made)
        return tl::unexpected(made.error());
    const auto useBy = dayOrNone(asked.useBy, "--use-by");
    if (!useBy)
        return tl::unexpected(useBy.error());
    const auto hours = hoursAsked(asked.hadHours);
    if (!hours)
        return tl::unexpected(hours.error());
    if (asked.washed < 0 || asked.hadRuns < 0)
        return problem("a number of washes or runs", "is below zero", "Leave it out, or say 0.");
    serviced.made = *made;
    serviced.useBy = *useBy;
    serviced.washed = asked.washed;
    serviced.hadRuns = asked.hadRuns;
    serviced.hadHours = *hours;
    return {};
}

void addKnownDays(Serviced &serviced, const Workshop &workshop)
{
    if (const auto hose = workshop.notes.hoses.find(serviced.piece.part);
        hose != workshop.notes.hoses.end()) {
        if (serviced.made.empty())
            serviced.made = hose->second.madeOn;
        if (serviced.useBy.empty())
            serviced.useBy = hose->second.useBy;
    }
    const auto lot = workshop.notes.lots.find(serviced.piece);
    if (lot == workshop.notes.lots.end() || !serviced.useBy.empty())
        return;
    for (const std::string &day : {lot->second.useBy, lot->second.certified}) {
        if (!day.empty() && (serviced.useBy.empty() || day < serviced.useBy))
            serviced.useBy = day;
    }
}

} // namespace flarestock
