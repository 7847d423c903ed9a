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

/// Of what a receipt brought that lies here, what is not to be used.
void leaveDamaged(std::vector<HereAt> &here)
{
    std::erase_if(here,
                  [](const HereAt &at) { return at.key.condition != PieceCondition::NotToBeUsed; });
}

/// By what each receipt of a part brought that is damaged and lies here, with its value.
Result<std::vector<Decimal>> damagedOf(const std::vector<Receipt> &receipts, const Books &books)
{
    auto here = stillHere(receipts, books.file, books.workshop);
    if (!here)
        return tl::unexpected(here.error());
    std::vector<Decimal> weights;
    for (std::size_t i = 0; i < receipts.size(); ++i) {
        leaveDamaged((*here)[i]);
        Decimal damaged;
        for (const HereAt &at : (*here)[i])
            damaged += Decimal(at.quantity);
        weights.push_back(damaged * Decimal(std::max<std::int64_t>(1, receipts[i].value)));
    }
    return weights;
}

/// What each receipt bears, and what of it goes where.
class Split {
public:
    Split(const Books &books, bool onlyDamaged)
        : m_file(books.file), m_workshop(books.workshop), m_onlyDamaged(onlyDamaged)
    {
    }

    Result<void> add(const std::vector<Receipt> &bearers, const std::vector<std::int64_t> &values)
    {
        for (std::size_t from = 0; from < bearers.size();) {
            std::size_t to = from;
            while (to < bearers.size() && bearers[to].part == bearers[from].part)
                ++to;
            const std::vector<Receipt> ofPart(bearers.begin() + static_cast<std::ptrdiff_t>(from),
                                              bearers.begin() + static_cast<std::ptrdiff_t>(to));
            auto here = stillHere(ofPart, m_file, m_workshop);
            if (!here)
                return tl::unexpected(here.error());
            if (m_onlyDamaged)
                std::for_each(here->begin(), here->end(), leaveDamaged);
            for (std::size_t i = 0; i < ofPart.size(); ++i)
                add(ofPart[i], values[from + i], (*here)[i]);
            from = to;
        }
        return {};
    }

    std::vector<LateShare> shares;
    ValueChanges stock;
    std::map<std::string, std::int64_t> differences; ///< By part.

private:
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

    const ShopFile &m_file;
    const Workshop &m_workshop;
    bool m_onlyDamaged;
};

} // namespace

Result<bool> liesDamaged(const std::string &order, const std::string &part, const Books &books)
{
    const auto bearers = bearersOf({order, {}, 0, {}, part, {}, true, {}, {}}, books.bought);
    if (!bearers)
        return false; // Nothing of it has come.
    const auto damaged = damagedOf(*bearers, books);
    if (!damaged)
        return tl::unexpected(damaged.error());
    return std::any_of(damaged->begin(), damaged->end(),
                       [](const Decimal &one) { return one.sign() > 0; });
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
    const auto weights =
        asked.onlyDamaged ? damagedOf(*bearers, books) : weightsOf(asked, *bearers, workshop);
    if (!weights)
        return tl::unexpected(weights.error());
    Split split(books, asked.onlyDamaged);
    if (auto added = split.add(*bearers, sharedOut(asked.amount, *weights)); !added)
        return tl::unexpected(added.error());
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
