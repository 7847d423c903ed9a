// SPDX-License-Identifier: MIT

#include "app/buyer/costing/cost_history.h"

#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

/// What was charged late on pieces that came alike, one after the other.
class LateOnes {
public:
    LateOnes(const Bought &bought, const std::string &part) : m_bought(bought), m_part(part) {}

    /// Of the next receipt of that order, lot and quantity.
    std::int64_t next(const Receipt &receipt)
    {
        const auto number = m_seen[{receipt.order, receipt.lot, receipt.quantity}]++;
        std::int64_t sum = 0;
        for (const LateCost &cost : m_bought.lateCosts) {
            if (cost.order != receipt.order)
                continue;
            int alike = 0;
            for (const LateShare &share : cost.shares) {
                if (share.part == m_part && share.lot == receipt.lot &&
                    share.quantity == receipt.quantity && alike++ == number)
                    sum += share.value;
            }
        }
        return sum;
    }

private:
    const Bought &m_bought;
    std::string m_part;
    std::map<std::tuple<std::string, std::string, std::int64_t>, int> m_seen;
};

/// The receipt that a movement came with; of several alike the next.
const Receipt *receiptOf(const Movement &movement, const Bought &bought,
                         std::set<const Receipt *> &used)
{
    for (const auto &[number, order] : bought.orders.orders) {
        for (const Receipt &one : order.receipts) {
            if (one.action == movement.action.value_or(movement.id).text() &&
                one.part == movement.part && one.lot == movement.lot &&
                one.quantity == movement.quantity && used.insert(&one).second)
                return &one;
        }
    }
    return nullptr;
}

} // namespace

Decimal CostStep::landedEach(const Part &part) const
{
    const Decimal amount = Quantity::ofSmallest(quantity, part.unit).amount;
    return Rational(Decimal::scaled(value, 6) + Decimal::scaled(late, 6), amount)
        .toDecimal(6, Rounding::HalfEven);
}

std::vector<CostStep> costHistory(const Part &part, const std::vector<Movement> &ofPart,
                                  const Bought &bought, const Workshop &workshop)
{
    std::vector<CostStep> steps;
    std::set<const Receipt *> used;
    LateOnes late(bought, part.number);
    for (const Movement &movement : ofPart) {
        const Place *from = workshop.ledger.place(movement.from);
        if (movement.quantity <= 0 || movement.reverses || !from ||
            from->kind != PlaceKind::Supplier || workshop.ledger.isTakenBack(movement.id))
            continue;
        CostStep step;
        step.day = dayOf(movement.at);
        step.supplier = from->id;
        step.quantity = movement.quantity;
        step.value = movement.value;
        step.lot = movement.lot;
        if (const Receipt *receipt = receiptOf(movement, bought, used)) {
            const Order &order = bought.orders.order(receipt->order)->now();
            step.order = order.number;
            step.supplier = order.supplier;
            step.rate = order.rate;
            if (const OrderLine *line = order.line(part.number); line && !receipt->inPlace)
                step.priceEach = Money{line->priceEach, order.currency};
            step.late = receipt->wrongPart ? 0 : late.next(*receipt);
        }
        steps.push_back(std::move(step));
    }
    return steps;
}

} // namespace flarestock
