// SPDX-License-Identifier: MIT

#include "app/garage/work_begun.h"
#include "app/workshop/clock.h"

namespace flarestock {

Result<Outing> ran(const OutingWords &asked, const Workshop &workshop, const By &by)
{
    const auto car = carAsked(asked.car, workshop.ledger);
    if (!car)
        return tl::unexpected(car.error());
    if (asked.event.empty())
        return problem("an outing", "does not say where", "Name the event: --event ID.");
    const auto day = dayAsked(asked.day, by.at);
    if (!day)
        return tl::unexpected(day.error());
    const auto hours = hoursAsked(asked.hours);
    if (!hours)
        return tl::unexpected(hours.error());
    if (asked.runs < 0)
        return problem(std::to_string(asked.runs) + " runs", "is below zero", "Say how many.");
    if (asked.runs == 0 && hours->isZero())
        return problem("an outing", "says neither runs nor hours",
                       "Say how far the car ran: --runs 6 --hours 2.5.");
    Outing outing;
    outing.id = by.action.value_or(freshId());
    outing.car = (*car)->id;
    outing.event = asked.event;
    outing.day = *day;
    outing.runs = asked.runs;
    outing.hours = *hours;
    outing.note = by.why;
    outing.who = by.who;
    outing.at = by.at;
    return outing;
}

} // namespace flarestock
