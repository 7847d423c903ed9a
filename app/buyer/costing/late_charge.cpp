// SPDX-License-Identifier: MIT

#include "app/buyer/costing/late_charge.h"

#include "app/buyer/costing/still_here.h"
#include "app/buyer/costing/value_moves.h"
#include "app/buyer/receiving/receiving.h"
#include "model/buying/landed_cost.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What of an order bears it.
Result<std::vector<Receipt>> bearersOf(const LateWords &asked, const Bought &bought)
{
    const BookedOrder *order = bought.orders.order(asked.order);
    if (!order)
        return problem(asked.order, "is no order of this shop",
                       "Look them up: flarestock order list.");
    std::vector<Receipt> bearers;
    for (const Receipt &receipt : order->receipts) {
        if (receipt.wrongPart || (!asked.onlyPart.empty() && receipt.part != asked.onlyPart) ||
            (!asked.onlyLot.empty() && receipt.lot != asked.onlyLot))
            continue;
        bearers.push_back(receipt);
    }
    if (bearers.empty())
        return problem("order " + asked.order, "has nothing yet that could bear it",
                       "Receive what came of it first.");
    // By part, so that each part is looked for once; the shares go by this order too.
    std::stable_sort(bearers.begin(), bearers.end(),
                     [](const Receipt &a, const Receipt &b) { return a.part < b.part; });
    return bearers;
}

Result<std::vector<Decimal>> weightsOf(const LateWords &asked, const std::vector<Receipt> &bearers,
                                       const Workshop &workshop)
{
    std::vector<Decimal> weights;
    for (const Receipt &bearer : bearers) {
        if (asked.weights.empty()) {
            weights.emplace_back(bearer.value);
            continue;
        }
        const auto weight = asked.weights.find(bearer.part);
        const Part *part = workshop.part(bearer.part);
        if (weight == asked.weights.end() || !part)
            return problem(bearer.part, "has no weight",
                           "Say the weight of one: --weight " + bearer.part + "=0.35.");
        weights.push_back(weight->second *
                          Quantity::ofSmallest(bearer.quantity, part->unit).amount);
    }
    return weights;
}

/// Where what each of them brought lies, or of that only what is not to be used; the bearers of a
/// part stand together.
Result<std::vector<std::vector<HereAt>>> hereOf(const std::vector<Receipt> &bearers,
                                                const Books &books, bool onlyDamaged)
{
    std::vector<std::vector<HereAt>> here;
    here.reserve(bearers.size());
    for (auto from = bearers.begin(); from != bearers.end();) {
        const auto to = std::find_if(from, bearers.end(),
                                     [&](const Receipt &one) { return one.part != from->part; });
        auto ofPart = stillHere({from, to}, books.file, books.workshop);
        if (!ofPart)
            return tl::unexpected(ofPart.error());
        std::move(ofPart->begin(), ofPart->end(), std::back_inserter(here));
        from = to;
    }
    if (onlyDamaged) {
        for (std::vector<HereAt> &of : here)
            std::erase_if(of, [](const HereAt &at) {
                return at.key.condition != PieceCondition::NotToBeUsed;
            });
    }
    return here;
}

/// By what each receipt brought that is damaged and lies here, with its value.
std::vector<Decimal> damagedWeights(const std::vector<Receipt> &bearers,
                                    const std::vector<std::vector<HereAt>> &here)
{
    std::vector<Decimal> weights;
    weights.reserve(bearers.size());
    for (std::size_t i = 0; i < bearers.size(); ++i) {
        Decimal damaged;
        for (const HereAt &at : here[i])
            damaged += Decimal(at.quantity);
        weights.push_back(damaged * Decimal(std::max<std::int64_t>(1, bearers[i].value)));
    }
    return weights;
}

/// What each receipt bears, and what of it goes where.
class Split {
public:
    Split(const Workshop &workshop, bool onlyDamaged)
        : m_workshop(workshop), m_onlyDamaged(onlyDamaged)
    {
    }

    void add(const Receipt &receipt, std::int64_t value, const std::vector<HereAt> &here)
    {
        LateShare share{receipt.part, receipt.lot, receipt.quantity, 0, value, 0};
        std::vector<Decimal> weights;
        for (const HereAt &at : here) {
            share.here += at.quantity;
            weights.emplace_back(at.quantity);
        }
        share.here = std::min(share.here, share.quantity);
        const std::int64_t bears = m_onlyDamaged ? share.here : share.quantity;
        if (share.here > 0) {
            const auto parts = sharedOut(stockPart(value, share.here, bears), weights);
            for (std::size_t i = 0; i < here.size(); ++i)
                share.inStock +=
                    stock.add({here[i].key, here[i].rank}, parts[i], m_workshop.ledger);
        }
        differences[receipt.part] += value - share.inStock;
        shares.push_back(share);
    }

    std::vector<LateShare> shares;
    ValueChanges stock;
    std::map<std::string, std::int64_t> differences; ///< By part.

private:
    const Workshop &m_workshop;
    bool m_onlyDamaged;
};

} // namespace

Result<bool> liesDamaged(const std::string &order, const std::string &part, const Books &books)
{
    const auto bearers = bearersOf({order, {}, 0, {}, part, {}, true, {}, {}}, books.bought);
    if (!bearers)
        return false; // Nothing of it has come.
    const auto here = hereOf(*bearers, books, true);
    if (!here)
        return tl::unexpected(here.error());
    return std::any_of(here->begin(), here->end(),
                       [](const std::vector<HereAt> &damaged) { return !damaged.empty(); });
}

Result<std::int64_t> lateAmountAsked(const std::string &typed, LateKind kind)
{
    auto amount = valueAsked(typed, "the amount");
    if (!amount)
        return amount;
    if (*amount == 0)
        return problem("the amount " + typed, "changes nothing", "Write what was charged.");
    return kind == LateKind::Credit ? -*amount : *amount;
}

Result<LateAction> chargedLate(const LateWords &asked, const Books &books, const By &by)
{
    const auto &[bought, file, workshop] = books;
    const auto bearers = bearersOf(asked, bought);
    if (!bearers)
        return tl::unexpected(bearers.error());
    const auto here = hereOf(*bearers, books, asked.onlyDamaged);
    if (!here)
        return tl::unexpected(here.error());
    const auto weights =
        asked.onlyDamaged ? damagedWeights(*bearers, *here) : weightsOf(asked, *bearers, workshop);
    if (!weights)
        return tl::unexpected(weights.error());
    Split split(workshop, asked.onlyDamaged);
    const auto values = sharedOut(asked.amount, *weights);
    for (std::size_t i = 0; i < bearers->size(); ++i)
        split.add((*bearers)[i], values[i], (*here)[i]);
    const Order &order = bought.orders.order(asked.order)->now();
    ValueMoves moves(workshop, file,
                     order.number + (asked.document.empty() ? "" : ", " + asked.document));
    auto movements = moves.of(order.supplier, split.stock, split.differences);
    if (!movements)
        return tl::unexpected(movements.error());
    LateAction made;
    made.action = numbered(std::move(*movements), by);
    made.action.promised = Promised::MayGo; // What goes over the bench comes back with it.
    LateCost &cost = made.cost;
    cost = {idWithin(*by.action, made.action.movements.size()),
            order.number,
            asked.kind,
            asked.amount,
            asked.weights.empty() ? "value" : "weight",
            std::move(split.shares),
            asked.claim,
            asked.document,
            by.action->text(),
            by.who,
            by.at};
    made.action.records.push_back(cost.asRecord());
    return made;
}

} // namespace flarestock
