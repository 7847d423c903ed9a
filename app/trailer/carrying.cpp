// SPDX-License-Identifier: MIT

#include "app/trailer/carrying.h"

#include "model/buying/plan/days.h"

#include <algorithm>

namespace flarestock {

namespace {

class Reckoning {
public:
    Reckoning(const Part &part, const Workshop &workshop, const SpareBook &book,
              const CarryWanted &wanted)
        : m_part(part), m_workshop(workshop), m_book(book), m_wanted(wanted),
          m_spending(book.spending(part.number)),
          m_running(part, {workshop, m_spending, book.outings, wanted.each, wanted.per})
    {
    }

    Result<PartCarry> done()
    {
        PartCarry carry;
        carry.part = &m_part;
        carry.events = m_wanted.events;
        if (carry.events.empty())
            untilDelivery(carry);
        if (carry.events.empty())
            return problem(m_part.number, "goes to no event that comes",
                           "Write the events into season.csv, or reckon it from numbers alone.");
        for (const auto &[car, count] : m_running.fitted())
            carry.fitted += (carry.fitted.empty() ? "" : ", ") + car + ": " + std::to_string(count);
        auto line = lineFor(carry);
        if (!line)
            return tl::unexpected(line.error());
        carry.line = std::move(*line);
        carry.line.part = m_part.number;
        return carry;
    }

private:
    /// The events that begin before what is ordered today can be here; at least the next one.
    void untilDelivery(PartCarry &carry) const
    {
        const Offer *offer = m_workshop.catalogue.bestOffer(m_part, Decimal(1));
        const int lead = offer ? offer->leadDays : 0;
        const std::string here = dayAfter(m_wanted.today, lead);
        for (const Event *event : m_workshop.season.from(m_wanted.today))
            if (m_running.goesTo(*event) && (carry.events.empty() || event->firstDay < here))
                carry.events.push_back(event);
        carry.until = offer
                          ? "what " + offer->supplier + " is asked for today can be here on " + here
                          : "nobody sells it: for the next event";
    }

    /// What is to come; where it is ordered anew at once, the most that falls between two
    /// deliveries.
    Result<ComingRunning> coming(PartCarry &carry) const
    {
        ComingRunning most;
        std::vector<const Event *> lasting;
        for (std::size_t last = 0; last < carry.events.size(); ++last) {
            if (!m_wanted.deliveryDays && last + 1 < carry.events.size())
                continue;
            Decimal sum;
            std::vector<const Event *> window;
            for (std::size_t i = 0; i <= last; ++i) {
                const Event &event = *carry.events[i];
                if (m_wanted.deliveryDays && i < last &&
                    dayAfter(event.lastDay, *m_wanted.deliveryDays) <= carry.events[last]->firstDay)
                    continue; // What was used there has come again.
                const auto running = m_running.allAt(event);
                if (!running)
                    return problem("event " + event.id,
                                   "says nothing of " + std::string(text(m_running.per())) + "s",
                                   "Write them into season.csv, or count by events.");
                sum += *running;
                window.push_back(&event);
            }
            if (lasting.empty() || sum > most.amount) {
                most.amount = sum;
                lasting = std::move(window);
            }
        }
        carry.events = std::move(lasting);
        most.amount = most.amount.stripped();
        most.sum =
            most.amount.text() + " " + std::string(text(m_running.per())) +
            (most.amount == Decimal(1) ? " of a fitted piece at " : "s of a fitted piece at ") +
            std::to_string(carry.events.size()) + (carry.events.size() == 1 ? " event" : " events");
        return most;
    }

    [[nodiscard]] LookedUpIn lookedUpIn() const
    {
        return {m_workshop, m_book, m_running, m_wanted.today};
    }

    /// By count, each car by its own running.
    [[nodiscard]] CarryLine wearing(const PartCarry &carry, const ComingRunning &sum) const
    {
        CarryLine line;
        const auto ran = runSoFar(m_part, lookedUpIn());
        std::size_t piece = 0;
        for (const auto &[car, count] : m_running.fitted()) {
            WearingOut wear{{}, *m_spending->lasts, 0};
            for (const Event *event : carry.events)
                if (event->takes(car))
                    wear.coming += m_running.ranAt(*event, car).value_or(0);
            for (std::int64_t i = 0; i < count; ++i)
                wear.used.push_back(ran[piece++]);
            const CarryLine ofCar = carryByWear(wear, m_running.per(), {});
            line.carry += ofCar.carry;
            line.due.during += ofCar.due.during;
            line.due.after += ofCar.due.after;
            line.sum += (line.sum.empty() ? "" : "; ") + car + ": " + ofCar.sum;
            line.why = ofCar.why;
        }
        line.spending = Spending::Wear;
        line.per = m_running.per();
        line.coming = sum.amount;
        return line;
    }

    Result<CarryLine> lineFor(PartCarry &carry) const
    {
        const auto sum = coming(carry);
        if (!sum)
            return tl::unexpected(sum.error());
        if (m_spending && m_spending->by == Spending::Wear)
            return wearing(carry, *sum);
        if (m_spending && m_spending->by == Spending::Crash) {
            CrashSets crash{m_spending->perCrash, std::nullopt, m_spending->sets};
            if (m_spending->rate)
                crash.rate = Rational(*m_spending->rate);
            return carryByCrash(crash, *sum, m_wanted.certainty);
        }
        SeenUses seen = seenUses(m_part, lookedUpIn());
        carry.seenAt = std::move(seen.events);
        seen.history.form = m_wanted.form;
        if (seen.history.seen.sign() > 0)
            return carryByHistory(seen.history, m_running.per(), *sum, m_wanted.certainty);
        if (m_spending && m_spending->rate)
            return carryByRate(Rational(*m_spending->rate), m_running.per(), *sum,
                               m_wanted.certainty);
        return problem(m_part.number, "was at no event that the shop knows of",
                       "Write what was used at past events into used.csv, a rate into spares.csv, "
                       "or reckon it from numbers alone.");
    }

    const Part &m_part;
    const Workshop &m_workshop;
    const SpareBook &m_book;
    const CarryWanted &m_wanted;
    const PartSpending *m_spending;
    PartRunning m_running;
};

} // namespace

Result<PartCarry> carryOf(const Part &part, const Workshop &workshop, const SpareBook &book,
                          const CarryWanted &wanted)
{
    return Reckoning(part, workshop, book, wanted).done();
}

} // namespace flarestock
