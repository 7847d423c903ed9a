// SPDX-License-Identifier: MIT

#include "app/trailer/part_running.h"

#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

PartRunning::PartRunning(const Part &part, const Known &known) : m_outings(known.outings)
{
    const PartSpending *spending = known.spending;
    const bool isCrash = spending && spending->by == Spending::Crash;
    if (!isCrash) // Crashes are counted by car and event.
        m_per = known.per ? *known.per : spending ? spending->in : RunningIn::Events;
    if (spending && !known.each)
        m_fitted = spending->fitted;
    if (m_fitted.empty() && !known.each)
        for (const auto &[key, held] : known.workshop.ledger.balancesOf(part.number)) {
            const Place *place = known.workshop.ledger.place(key.place);
            if (place && place->kind == PlaceKind::Car && held.quantity > 0)
                m_fitted[key.place] += held.quantity;
        }
    if (m_fitted.empty())
        for (const Event &event : known.workshop.season.events())
            for (const std::string &car : event.cars)
                m_fitted[car] = known.each.value_or(1);
    if (isCrash)
        for (auto &[car, count] : m_fitted)
            count = 1;
}

bool PartRunning::goesTo(const Event &event) const
{
    return std::any_of(m_fitted.begin(), m_fitted.end(),
                       [&event](const auto &fitted) { return event.takes(fitted.first); });
}

std::optional<Decimal> PartRunning::ranAt(const Event &event, const std::string &car) const
{
    if (m_per == RunningIn::Events)
        return Decimal(1);
    const bool isRuns = m_per == RunningIn::Runs;
    std::optional<Decimal> ran = isRuns ? event.runs : event.hours;
    for (const Record &outing : m_outings)
        if (sameFolded(outing.subject, car) && sameFolded(outing.field("event"), event.id))
            if (const auto said = Decimal::parse(outing.field(isRuns ? "runs" : "hours")))
                ran = *said;
    return ran;
}

std::optional<Decimal> PartRunning::allAt(const Event &event) const
{
    Decimal sum;
    for (const auto &[car, count] : m_fitted) {
        if (!event.takes(car))
            continue;
        const auto ran = ranAt(event, car);
        if (!ran)
            return std::nullopt;
        sum += *ran * Decimal(count);
    }
    return sum;
}

} // namespace flarestock
