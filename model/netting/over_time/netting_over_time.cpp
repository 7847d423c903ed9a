// SPDX-License-Identifier: MIT

#include "model/netting/over_time/netting_over_time.h"

#include "model/netting/over_time/low_level.h"
#include "model/netting/over_time/pegging.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

Result<void> notBelowZero(const std::string &item, const Decimal &number, const char *name)
{
    if (number.sign() >= 0)
        return {};
    return problem("item " + item, std::string(name) + " is " + number.text() + ", below zero",
                   "Write zero or more.");
}

Result<void> checkedItem(const NettedItem &item)
{
    for (const auto &[number, name] :
         {std::pair(&item.onHand, "what is on hand"), std::pair(&item.minimum, "the minimum"),
          std::pair(&item.least, "the least order"), std::pair(&item.lot, "the lot")})
        if (auto is = notBelowZero(item.id, *number, name); !is)
            return is;
    if (item.lead < 0)
        return notBelowZero(item.id, Decimal(item.lead), "the lead time");
    for (const NettedItem::Made &made : item.madeOf)
        if (made.count.sign() <= 0)
            return problem("item " + item.id, "takes " + made.count.text() + " of " + made.of,
                           "Write more than zero.");
    return {};
}

template <class Row>
Result<void> checkedRows(const std::vector<Row> &rows, const NettedPlan &plan)
{
    for (const Row &row : rows) {
        if (!plan.item(row.item))
            return problem('"' + row.item + '"', "is no item of the plan",
                           "Add an item of that id, or mend the name.");
        if (auto is = notBelowZero(row.item, row.quantity, "a quantity"); !is)
            return is;
    }
    return {};
}

/// Up to the least order and to whole lots.
Decimal orderedFor(const Decimal &net, const NettedItem &item)
{
    Decimal least = std::max(net, item.least);
    if (item.lot.sign() <= 0)
        return least;
    return divide(least, item.lot, 0, Rounding::Ceiling) * item.lot;
}

/// Nets one item whose wants are all known.
class ItemNetting {
public:
    ItemNetting(const NettedItem &item, DayNumber first, std::vector<DueItem> due)
        : m_item(item), m_first(first), m_due(std::move(due))
    {
        std::stable_sort(m_due.begin(), m_due.end(),
                         [](const DueItem &a, const DueItem &b) { return a.day < b.day; });
    }

    void into(NettedPlan::Item &netted) const
    {
        netted.onHand = m_item.onHand;
        std::stable_sort(
            netted.wants.begin(), netted.wants.end(),
            [](const MetWant &a, const MetWant &b) { return a.want.day < b.want.day; });
        std::map<DayNumber, NettedDay> days;
        days[m_first];
        for (const MetWant &met : netted.wants)
            days[met.want.day].gross += met.want.quantity;
        for (const DueItem &due : m_due)
            days[due.day].scheduled += due.quantity;
        Decimal balance = m_item.onHand;
        for (auto &[number, day] : days) {
            day.day = number;
            const Decimal lacking = day.gross + m_item.minimum - balance - day.scheduled;
            if (lacking.sign() > 0) {
                day.net = lacking;
                day.planned = orderedFor(lacking, m_item);
                const DayNumber release = number - m_item.lead;
                netted.orders.push_back({release, number, day.planned, release < m_first});
            }
            balance += day.scheduled + day.planned - day.gross;
            day.balance = balance;
            netted.days.push_back(day);
        }
        peg(netted.wants, {m_first, m_item.onHand, m_due, netted.orders});
    }

private:
    const NettedItem &m_item;
    DayNumber m_first;
    std::vector<DueItem> m_due;
};

std::vector<DueItem> dueOf(const WantedOverTime &asked, const std::string &item)
{
    std::vector<DueItem> due;
    for (const DueItem &one : asked.due)
        if (one.item == item) {
            due.push_back(one);
            due.back().day = std::max(one.day, asked.first);
        }
    return due;
}

} // namespace

const NettedPlan::Item *NettedPlan::item(std::string_view id) const noexcept
{
    const auto found =
        std::find_if(items.begin(), items.end(), [id](const Item &item) { return item.id == id; });
    return found == items.end() ? nullptr : &*found;
}

Decimal NettedPlan::Item::balanceAt(DayNumber day) const
{
    Decimal balance = onHand;
    for (const NettedDay &netted : days) {
        if (netted.day > day)
            break;
        balance = netted.balance;
    }
    return balance;
}

Result<NettedPlan> nettedOverTime(const WantedOverTime &asked)
{
    const auto codes = lowLevelCodes(asked.items);
    if (!codes)
        return tl::unexpected(codes.error());
    NettedPlan plan;
    std::map<std::string, std::size_t> places;
    std::vector<std::size_t> order;
    for (const NettedItem &item : asked.items) {
        if (auto checked = checkedItem(item); !checked)
            return tl::unexpected(checked.error());
        places[item.id] = order.size();
        order.push_back(order.size());
        plan.items.push_back({item.id, codes->at(item.id), {}, {}, {}, {}});
    }
    if (auto checked = checkedRows(asked.wanted, plan); !checked)
        return tl::unexpected(checked.error());
    if (auto checked = checkedRows(asked.due, plan); !checked)
        return tl::unexpected(checked.error());
    const auto want = [&](WantedItem wanted, bool byItem) {
        wanted.day = std::max(wanted.day, asked.first);
        auto &wants = plan.items[places[wanted.item]].wants;
        wants.push_back({std::move(wanted), byItem, {}});
    };
    for (const WantedItem &wanted : asked.wanted)
        want(wanted, false);
    std::stable_sort(order.begin(), order.end(), [&plan](std::size_t a, std::size_t b) {
        return plan.items[a].lowLevel < plan.items[b].lowLevel;
    });
    for (const std::size_t place : order) {
        const NettedItem &item = asked.items[place];
        ItemNetting(item, asked.first, dueOf(asked, item.id)).into(plan.items[place]);
        for (const PlannedOrder &begun : plan.items[place].orders)
            for (const NettedItem::Made &made : item.madeOf)
                want({made.of, begun.release, begun.quantity * made.count, item.id}, true);
    }
    return plan;
}

} // namespace flarestock
