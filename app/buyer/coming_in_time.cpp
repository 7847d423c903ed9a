// SPDX-License-Identifier: MIT

#include "app/buyer/coming_in_time.h"

#include "model/netting/over_time/calendar_day.h"
#include "model/netting/over_time/netting_over_time.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Behind every day that can be written: of who has not said when.
constexpr DayNumber SomeDay = 4'000'000;

class MeetingByOrders {
public:
    MeetingByOrders(std::vector<NeedLine> &lines, const Workshop &workshop, const NeedsAsked &asked,
                    DayNumber today)
        : m_lines(lines), m_workshop(workshop), m_asked(asked), m_today(today)
    {
    }

    Result<void> done()
    {
        std::map<std::string, std::vector<std::size_t>> byPart;
        for (std::size_t i = 0; i < m_lines.size(); ++i)
            if (m_lines[i].shortBy.sign() > 0)
                byPart[m_lines[i].part->number].push_back(i);
        for (const auto &[part, lines] : byPart)
            if (auto met = meet(part, lines); !met)
                return met;
        return {};
    }

private:
    Result<void> addOrders(const std::string &part, WantedOverTime &wanted) const
    {
        for (const OnOrder &order : m_asked.onOrder) {
            if (order.part != part || order.day.empty())
                continue;
            const auto day = dayNumber(order.day);
            if (!day)
                return problem("order " + order.order, "is due on \"" + order.day + "\", no day",
                               "Write for example 2026-12-12.");
            wanted.due.push_back({part, *day, order.quantity, order.order});
        }
        return {};
    }

    Result<void> meet(const std::string &part, const std::vector<std::size_t> &lines)
    {
        WantedOverTime wanted;
        wanted.first = m_today;
        for (const std::size_t line : lines) {
            const auto day = dayNumber(m_lines[line].day);
            wanted.wanted.push_back({part, day.value_or(SomeDay), m_lines[line].shortBy, {}});
        }
        NettedItem item;
        item.id = part;
        wanted.items.push_back(std::move(item));
        if (auto added = addOrders(part, wanted); !added)
            return added;
        const auto plan = nettedOverTime(wanted);
        if (!plan)
            return tl::unexpected(plan.error());
        const auto &wants = plan->items.front().wants; // As the lines: both go by their days.
        for (std::size_t i = 0; i < lines.size(); ++i)
            say(wants[i], m_lines[lines[i]]);
        for (const std::size_t line : lines)
            sayLate(wanted.due, lines, m_lines[line]);
        return {};
    }

    void say(const MetWant &met, NeedLine &line) const
    {
        line.shortBy = met.shortBy();
        for (const Peg &peg : met.pegs)
            if (peg.from == Peg::From::Scheduled)
                line.coming.push_back({peg.order, calendarDay(peg.day), peg.quantity});
        if (line.shortBy.sign() > 0 && !line.day.empty())
            sayOrderBy(line);
    }

    void sayOrderBy(NeedLine &line) const
    {
        const Catalogue &catalogue = m_workshop.catalogue;
        const DayNumber day = *dayNumber(line.day);
        const Offer *best =
            catalogue.bestOffer(*line.part, line.shortBy, m_workshop.settings.currency);
        if (!best)
            best = catalogue.bestOffer(*line.part, line.shortBy);
        if (!best)
            return;
        line.orderBy = calendarDay(day - best->leadDays);
        line.isPastDue = line.orderBy < m_asked.today;
        if (!line.isPastDue)
            return;
        const Offer *quickest = best;
        for (const Offer &offer : catalogue.offers(*line.part))
            if (offer.leadDays < quickest->leadDays)
                quickest = &offer;
        if (day - quickest->leadDays < m_today)
            return;
        line.quicker = quickest->supplier;
        line.quickerBy = calendarDay(day - quickest->leadDays);
    }

    /// What comes too late for a line, and no other line is met by.
    void sayLate(const std::vector<DueItem> &due, const std::vector<std::size_t> &lines,
                 NeedLine &line) const
    {
        if (line.shortBy.sign() <= 0)
            return;
        for (const DueItem &one : due) {
            Decimal left = one.quantity;
            for (const std::size_t other : lines)
                for (const NeedLine::Coming &coming : m_lines[other].coming)
                    if (coming.order == one.order)
                        left -= coming.quantity;
            if (left.sign() > 0)
                line.late.push_back({one.order, calendarDay(one.day), left});
        }
    }

    std::vector<NeedLine> &m_lines;
    const Workshop &m_workshop;
    const NeedsAsked &m_asked;
    DayNumber m_today;
};

/// The day on which it is here, ordered today of who is quickest; empty where nobody sells it.
std::string soonest(const Part &part, const Catalogue &catalogue, const std::string &today)
{
    const auto from = dayNumber(today);
    std::string first;
    for (const Offer &offer : catalogue.offers(part)) {
        const std::string day = from ? calendarDay(*from + offer.leadDays) : std::string();
        if (first.empty() || day < first)
            first = day;
    }
    return first;
}

} // namespace

Result<void> meetByOrders(std::vector<NeedLine> &lines, const Workshop &workshop,
                          const NeedsAsked &asked)
{
    const auto today = dayNumber(asked.today);
    if (!today)
        return problem('"' + asked.today + '"', "is no day", "Write for example 2026-12-12.");
    return MeetingByOrders(lines, workshop, asked, *today).done();
}

std::vector<Shortage> shortagesToOrder(ShopNeeds needs, const Catalogue &catalogue,
                                       const std::string &today)
{
    std::map<std::pair<std::string, std::string>, Decimal> left; // Of an order, and a part of it.
    for (NeedLine &line : needs.lines) {
        if (line.shortBy.sign() <= 0)
            continue;
        const std::string anew = soonest(*line.part, catalogue, today);
        for (const NeedLine::Coming &late : line.late) {
            Decimal &rest =
                left.try_emplace({late.order, line.part->number}, late.quantity).first->second;
            if (!anew.empty() && anew < late.day)
                continue;
            const Decimal borne = std::min(rest, line.shortBy);
            rest -= borne;
            line.shortBy -= borne;
        }
    }
    return shortagesIn(needs);
}

} // namespace flarestock
