// SPDX-License-Identifier: MIT

#include "model/buying/plan/purchase_plan.h"

#include "model/buying/plan/days.h"
#include "model/buying/plan/plan_choice.h"
#include "model/buying/totals.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

/// What is chosen, as it is said.
class Planning {
public:
    Planning(const Wishes &wishes, const Chosen &chosen) : m_wishes(wishes), m_chosen(chosen) {}

    PurchasePlan plan()
    {
        PurchasePlan plan;
        plan.unplaced = m_wishes.unplaced;
        for (const std::size_t part : m_chosen.unplaced)
            for (const Shortage *shortage : m_wishes.parts[part].shortages)
                plan.unplaced.push_back(
                    {*shortage, "nobody sends so little: all that is short with its suppliers is "
                                "below their minimum orders"});
        addOrders(plan);
        addParts(plan);
        addFigures(plan);
        return plan;
    }

private:
    [[nodiscard]] const std::string &today() const { return m_wishes.task().today; }

    void addOrders(PurchasePlan &plan) const
    {
        for (std::size_t parcel = 0; parcel < m_wishes.parcels.size(); ++parcel) {
            ProposedOrder order{m_wishes.parcels[parcel].supplier,
                                m_wishes.parcels[parcel].currency,
                                m_wishes.parcels[parcel].rate,
                                {},
                                {},
                                {},
                                {},
                                {},
                                {},
                                {},
                                {}};
            for (const Chosen::Line &line : m_chosen.lines)
                if (offerOf(line).parcel == parcel)
                    order.lines.push_back(lineOf(line));
            if (order.lines.empty())
                continue;
            addMoney(order, m_wishes.parcels[parcel]);
            for (const PlannedLine &line : order.lines)
                order.hereBy = std::max(order.hereBy, line.hereBy);
            plan.orders.push_back(std::move(order));
        }
        std::sort(plan.orders.begin(), plan.orders.end(),
                  [](const ProposedOrder &a, const ProposedOrder &b) {
                      return std::pair(a.supplier->id, a.currency.code()) <
                             std::pair(b.supplier->id, b.currency.code());
                  });
    }

    [[nodiscard]] const OfferChoices &offerOf(const Chosen::Line &line) const
    {
        return m_wishes.parts[line.part].offers[line.offer];
    }

    [[nodiscard]] PlannedLine lineOf(const Chosen::Line &line) const
    {
        const OfferChoices &from = offerOf(line);
        const auto digits = m_wishes.parcels[from.parcel].currency.minorDigits();
        const LineChoice &choice = from.choices[line.choice];
        PlannedLine made{from.offer,
                         choice.quantity,
                         from.offer->priceEach(choice.quantity),
                         Decimal::scaled(choice.goods, digits),
                         dayAfter(today(), from.days),
                         {},
                         {}};
        const LineChoice &least = leastOf(line);
        made.least = least.quantity;
        made.leastCost = Decimal::scaled(least.goods, digits);
        return made;
    }

    /// The least of the offer that covers the need with what the part's other lines bring.
    [[nodiscard]] const LineChoice &leastOf(const Chosen::Line &line) const
    {
        const PartWish &wish = m_wishes.parts[line.part];
        std::int64_t rest = wish.units();
        for (const Chosen::Line &other : m_chosen.lines)
            if (other.part == line.part && other.offer != line.offer)
                rest -= wish.offers[other.offer].choices[other.choice].units;
        const auto &choices = offerOf(line).choices;
        const auto least = std::find_if(
            choices.begin(), choices.begin() + static_cast<std::ptrdiff_t>(line.choice),
            [rest](const LineChoice &one) { return one.units >= rest; });
        return *least;
    }

    /// As it will stand on paper.
    void addMoney(ProposedOrder &order, const Parcel &parcel) const
    {
        Order paper{{},
                    {},
                    {},
                    order.currency,
                    OrderState::Draft,
                    {},
                    {},
                    {},
                    order.supplier->tax,
                    order.rate,
                    {},
                    {},
                    {},
                    {},
                    0};
        std::int64_t goods = 0;
        for (const PlannedLine &line : order.lines) {
            paper.lines.push_back({line.offer->part, line.offer->supplierNumber, "", line.quantity,
                                   line.offer->pack, line.priceEach});
            goods += minorUnits(line.cost, order.currency);
        }
        paper.freight = Decimal::scaled(parcel.step(goods).cost, order.currency.minorDigits());
        const Amounts all = totalsOf(paper).all;
        order.goods = all.goods;
        order.freight = all.freight;
        order.tax = all.tax;
        order.total = all.total();
        std::int64_t worth = m_wishes.inShops(all.freight, parcel);
        for (const PlannedLine &line : order.lines)
            worth += m_wishes.inShops(line.cost, parcel);
        if (!order.supplier->tax.recovered)
            worth += m_wishes.inShops(all.tax, parcel);
        order.worth = Decimal::scaled(worth, m_wishes.task().rates.shops().minorDigits());
    }

    /// Each need in the order of its day takes what comes first.
    void addParts(PurchasePlan &plan) const
    {
        std::map<std::size_t, std::vector<Chosen::Line>> byPart;
        for (const Chosen::Line &line : m_chosen.lines)
            byPart[line.part].push_back(line);
        for (auto &[part, lines] : byPart)
            addPart(plan, m_wishes.parts[part], lines);
        std::sort(plan.parts.begin(), plan.parts.end(),
                  [](const PlannedPart &a, const PlannedPart &b) { return a.part < b.part; });
    }

    void addPart(PurchasePlan &plan, const PartWish &wish, std::vector<Chosen::Line> lines) const
    {
        const auto fromOf = [&](const Chosen::Line &line) -> const OfferChoices & {
            return wish.offers[line.offer];
        };
        std::stable_sort(lines.begin(), lines.end(),
                         [&](const Chosen::Line &a, const Chosen::Line &b) {
                             return fromOf(a).days < fromOf(b).days;
                         });
        PlannedPart made{wish.part, Decimal::scaled(wish.units(), wish.scale), {}, {}, {}};
        std::int64_t bought = 0;
        for (const Chosen::Line &line : lines)
            bought += fromOf(line).choices[line.choice].units;
        made.bought = Decimal::scaled(bought, wish.scale);
        made.leftOver = made.bought - made.shortBy;
        Decimal wanted;
        auto line = lines.begin();
        Decimal come = fromOf(*line).choices[line->choice].quantity;
        for (const Shortage *shortage : wish.shortages) {
            const Decimal before = wanted;
            wanted = wanted + shortage->quantity;
            for (bool isFirst = true;; isFirst = false) {
                if (come > before || !isFirst)
                    serve(plan, *line, *shortage);
                if (come >= wanted || line + 1 == lines.end())
                    break;
                ++line;
                come = come + fromOf(*line).choices[line->choice].quantity;
            }
            const std::string here = dayAfter(today(), fromOf(*line).days);
            if (!shortage->day.empty() && here > shortage->day)
                made.late.push_back({shortage->day, shortage->quantity, here});
        }
        plan.parts.push_back(std::move(made));
    }

    /// A line serves a need: so its order has to go out by then.
    void serve(PurchasePlan &plan, const Chosen::Line &line, const Shortage &shortage) const
    {
        if (shortage.day.empty())
            return;
        const OfferChoices &from = offerOf(line);
        const std::string by = dayAfter(shortage.day, -from.days);
        for (ProposedOrder &order : plan.orders)
            if (order.supplier->id == from.offer->supplier &&
                order.currency == from.offer->currency &&
                (order.orderBy.empty() || by < order.orderBy))
                order.orderBy = by;
    }

    void addFigures(PurchasePlan &plan) const
    {
        const auto digits = m_wishes.task().rates.shops().minorDigits();
        Decimal worth = Decimal::scaled(0, digits);
        for (const ProposedOrder &order : plan.orders) {
            worth = worth + order.worth;
            plan.figures.hereBy = std::max(plan.figures.hereBy, order.hereBy);
        }
        plan.figures.worth = worth;
        plan.figures.parcels = plan.orders.size();
        plan.figures.isWhole = plan.unplaced.empty();
        addProof(plan.figures);
    }

    /// Where tax is reckoned by item, freight's is shared among the lines and may round otherwise
    /// than in one sum: by less than a unit a line.
    void addProof(PlanFigures &figures) const
    {
        const auto digits = m_wishes.task().rates.shops().minorDigits();
        const std::int64_t is = minorUnits(figures.worth, m_wishes.task().rates.shops());
        std::int64_t least = m_chosen.least.value_or(m_chosen.isProven ? is : 0);
        if (m_chosen.isProven && isRoundedOtherwise())
            least -= static_cast<std::int64_t>(m_chosen.lines.size()) + 1;
        if (!m_wishes.hasAll)
            least = std::min(least, leastByPrice());
        figures.isProven = m_chosen.isProven && least >= is;
        if (!figures.isProven)
            figures.least = Decimal::scaled(std::max<std::int64_t>(0, least), digits);
    }

    [[nodiscard]] bool isRoundedOtherwise() const
    {
        return std::any_of(m_wishes.parcels.begin(), m_wishes.parcels.end(),
                           [](const Parcel &parcel) {
                               const TaxRule &tax = parcel.supplier->tax;
                               return !tax.recovered && tax.by == TaxRule::By::Item &&
                                      tax.percent.sign() > 0 && parcel.steps.back().from > 0;
                           });
    }

    /// No unit costs less than at its lowest price; without freight.
    [[nodiscard]] std::int64_t leastByPrice() const
    {
        Decimal sum;
        for (std::size_t part = 0; part < m_wishes.parts.size(); ++part) {
            const PartWish &wish = m_wishes.parts[part];
            std::optional<Decimal> lowest;
            for (const OfferChoices &from : wish.offers)
                for (const LineChoice &one : from.choices) {
                    const Decimal each =
                        divide(Decimal(one.worth), Decimal(one.units), 6, Rounding::Floor);
                    lowest = lowest ? std::min(*lowest, each) : each;
                }
            sum = sum + lowest.value_or(0) * Decimal(wish.units());
        }
        return sum.rescaled(0, Rounding::Ceiling).toInt64().value_or(0);
    }

    const Wishes &m_wishes;
    const Chosen &m_chosen;
};

} // namespace

PurchasePlan planPurchases(const PlanTask &task)
{
    Wishes wishes(task);
    if (task.first == PlanAim::Earliest)
        wishes.keepEarliest();
    Chosen chosen = PlanChoice(wishes).chosen(task.first, task.within);
    if (!chosen.isFound)
        for (const PartWish &wish : wishes.parts)
            for (const Shortage *shortage : wish.shortages)
                wishes.unplaced.push_back({*shortage, "no choice was found in the time"});
    if (task.first == PlanAim::Earliest && !chosen.unplaced.empty()) {
        Wishes all(task); // The earliest alone send nothing so small.
        const Chosen instead = PlanChoice(all).chosen(task.first, task.within);
        if (instead.isFound && instead.unplaced.size() < chosen.unplaced.size())
            return Planning(all, instead).plan();
    }
    auto plan = Planning(wishes, chosen).plan();
    plan.first = task.first;
    return plan;
}

} // namespace flarestock
