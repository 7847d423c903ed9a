// SPDX-License-Identifier: MIT

#include "app/buyer/needs.h"

#include "app/buyer/by_date/other_ways.h"
#include "app/buyer/by_date/taken_in_order.h"
#include "app/buyer/coming_in_time.h"
#include "app/buyer/due_work.h"
#include "app/buyer/might_cover.h"
#include "app/buyer/on_its_way.h"
#include "app/stockroom/asked.h"
#include "app/stockroom/filling_up.h"

#include <algorithm>

namespace flarestock {

namespace {

Result<void> checkedBuild(const std::string &id, const Workshop &workshop)
{
    const auto plan = buildAsked(id, workshop);
    if (!plan)
        return tl::unexpected(plan.error());
    if (workshop.notes.build((*plan)->id).isDone())
        return problem((*plan)->id, "is done, and wants nothing more",
                       "Name a build that is not, or none for all.");
    return {};
}

Result<void> checkedDay(const std::string &day, const std::string &option)
{
    if (isDay(day))
        return {};
    return problem(option, '"' + day + "\" is no day", "Write for example 2026-12-12.");
}

/// Whether it is wanted by the day that was asked for; what has no day is wanted some day.
bool isAskedFor(const std::string &day, const NeedsAsked &asked)
{
    return asked.by.empty() || (!day.empty() && day <= asked.by);
}

class Gathering {
public:
    Gathering(const Workshop &workshop, const NeedsAsked &asked)
        : m_workshop(workshop), m_asked(asked), m_builds(buildsByDate(workshop, asked.moved)),
          m_bars(barsThen())
    {
    }

    Result<ShopNeeds> done()
    {
        std::erase_if(m_builds,
                      [this](const BuildPlan &plan) { return !isAskedFor(plan.by, m_asked); });
        auto taken = TakenInOrder::of(m_workshop, m_bars, m_builds, m_asked.known);
        if (!taken)
            return tl::unexpected(taken.error());
        m_needs.taken = *taken;
        const TakingByDate &taking = *m_needs.taken->by.taking;
        m_needs.lines = m_needs.taken->lines(m_builds);
        m_needs.together = m_needs.taken->by.together;
        if (m_asked.otherWays)
            m_needs.together.otherWays = otherWays(m_workshop, taking, m_asked.builds);
        Shelf left = taking.ledger().shelf(m_workshop.catalogue, {{}, nullptr, &m_bars});
        addDueWork();
        takeForWork(m_needs.lines, left);
        addPlaces(left);
        if (auto met = meetByOrders(m_needs.lines, m_workshop, m_asked); !met)
            return tl::unexpected(met.error());
        for (NeedLine &line : m_needs.lines)
            addInstead(line, left);
        m_needs.levels = lowLevels(m_workshop.notes);
        if (!m_asked.builds.empty()) {
            m_needs.levels.clear();
            std::erase_if(m_needs.lines, [this](const NeedLine &line) {
                return std::find(m_asked.builds.begin(), m_asked.builds.end(), line.whom) ==
                       m_asked.builds.end();
            });
        }
        m_needs.notes = mightCover(m_needs.lines, m_workshop, left);
        return std::move(m_needs);
    }

private:
    [[nodiscard]] Bars barsThen() const
    {
        std::vector<Due> due;
        for (const BuildPlan &plan : m_workshop.builds)
            due.push_back({plan.id, plan.car, plan.by});
        for (Due &one : due)
            if (const auto moved = m_asked.moved.find(one.build); moved != m_asked.moved.end())
                one.day = moved->second;
        return barsOf(m_workshop.notes.lots, due);
    }

    /// Behind those that are wanted as early.
    void addDueWork()
    {
        for (NeedLine &line : wantedForWork(m_asked.due)) {
            if (!isAskedFor(line.day, m_asked))
                continue;
            const auto later = std::find_if(m_needs.lines.begin(), m_needs.lines.end(),
                                            [&line](const NeedLine &other) {
                                                return std::pair(line.day.empty(), line.day) <
                                                       std::pair(other.day.empty(), other.day);
                                            });
            m_needs.lines.insert(later, std::move(line));
        }
    }

    /// What lies below its minimum once builds and cars have taken theirs.
    void addPlaces(const Shelf &left)
    {
        FreeAt free;
        for (const auto &[number, stock] : left)
            for (const FreeStock::AtPlace &at : stock.places)
                free[{number, at.place}] = at.free.smallest().value_or(0);
        for (const FillLine &fill : belowMinimum(m_workshop, std::move(free))) {
            if (!m_workshop.catalogue.find(fill.part->number))
                continue; // A made-up hose is bought of nobody.
            NeedLine line;
            line.part = fill.part;
            line.whom = fill.keeping.place;
            line.isPlace = true;
            const auto amount = [&fill](std::int64_t smallest) {
                return Quantity::ofSmallest(smallest, fill.part->unit).amount;
            };
            line.need = amount(fill.keeping.most - fill.has);
            line.shortBy = amount(fill.toBuy);
            line.free = line.need - line.shortBy;
            m_needs.lines.push_back(std::move(line));
        }
    }

    static void addInstead(NeedLine &line, const Shelf &left)
    {
        if (line.shortBy.sign() <= 0)
            return;
        for (const std::string &other : line.part->substitutes) {
            const auto stock = left.find(other);
            if (stock != left.end() && stock->second.free.amount >= line.shortBy)
                line.instead.push_back(other);
        }
    }

    const Workshop &m_workshop;
    const NeedsAsked &m_asked;
    std::vector<BuildPlan> m_builds;
    Bars m_bars;
    ShopNeeds m_needs;
};

} // namespace

std::vector<BuildPlan> buildsByDate(const Workshop &workshop, const MovedBuilds &moved)
{
    std::vector<BuildPlan> open;
    for (const BuildPlan &plan : workshop.builds) {
        if (workshop.notes.build(plan.id).isDone())
            continue;
        open.push_back(plan);
        if (const auto to = moved.find(plan.id); to != moved.end())
            open.back().by = to->second;
    }
    std::stable_sort(open.begin(), open.end(), [](const BuildPlan &a, const BuildPlan &b) {
        return std::pair(a.by.empty(), a.by) < std::pair(b.by.empty(), b.by);
    });
    return open;
}

Result<ShopNeeds> needsOf(const Workshop &workshop, const NeedsAsked &asked)
{
    for (const std::string &build : asked.builds)
        if (auto checked = checkedBuild(build, workshop); !checked)
            return tl::unexpected(checked.error());
    for (const auto &[build, day] : asked.moved) {
        if (auto checked = checkedBuild(build, workshop); !checked)
            return tl::unexpected(checked.error());
        if (auto checked = checkedDay(day, "--move " + build); !checked)
            return tl::unexpected(checked.error());
    }
    if (!asked.by.empty())
        if (auto checked = checkedDay(asked.by, "--by"); !checked)
            return tl::unexpected(checked.error());
    NeedsAsked all = asked;
    for (OnOrder &coming : onItsWay(workshop))
        all.onOrder.push_back(std::move(coming));
    return Gathering(workshop, all).done();
}

std::vector<Shortage> shortagesIn(const ShopNeeds &needs)
{
    std::vector<Shortage> shortages;
    for (const NeedLine &line : needs.lines) {
        if (line.shortBy.sign() <= 0)
            continue;
        auto same = std::find_if(shortages.begin(), shortages.end(), [&line](const Shortage &one) {
            return one.part == line.part->number && one.day == line.day;
        });
        if (same == shortages.end()) {
            shortages.push_back({line.part->number, {}, line.day, {}, line.instead});
            same = shortages.end() - 1;
        }
        same->quantity += line.shortBy;
        same->wanted.push_back({line.whom, line.shortBy});
    }
    return shortages;
}

Result<std::vector<Shortage>> shortagesOf(const Workshop &workshop, const NeedsAsked &asked)
{
    const auto needs = needsOf(workshop, asked);
    if (!needs)
        return tl::unexpected(needs.error());
    return shortagesIn(*needs);
}

} // namespace flarestock
