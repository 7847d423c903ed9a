// SPDX-License-Identifier: MIT

#include "app/buyer/receiving/credit_asked.h"

#include "app/buyer/receiving/receiving.h"
#include "model/buying/late_cost.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What is paid back in the shop's currency, or in that of the order at its rate: "77.44 EUR".
Result<std::int64_t> amountAsked(const Settling &settling)
{
    const std::string &typed = settling.asked.credit;
    const auto cut = typed.find_last_of(" 0123456789");
    const BookedOrder *order = settling.books.bought.orders.order(settling.claim.now.order);
    if (!order || cut == std::string::npos || cut + 1 == typed.size())
        return valueAsked(typed, "--credit");
    const std::string_view code = std::string_view(typed).substr(cut + 1);
    const Currency &ours = settling.books.workshop.settings.currency;
    const Currency &his = order->now().currency;
    auto amount = valueAsked(std::string(trimmed(typed.substr(0, cut + 1))), "--credit");
    if (!amount || sameFolded(code, ours.code()))
        return amount;
    if (!sameFolded(code, his.code()))
        return problem("--credit " + typed,
                       "is neither in the shop's currency nor in that of the order: " +
                           std::string(his.code()),
                       "Write the amount in one of them.");
    const auto micros =
        (Decimal(*amount) * order->now().rate).rescaled(0, Rounding::HalfEven).toInt64();
    if (!micros)
        return problem("--credit " + typed, "is more than can be written",
                       "Look at the figure again.");
    return *micros;
}

/// What was claimed has cost so much: 10^-6 of the shop's currency, with its share of freight and
/// the like; of what lay in a box what it lay in. Nothing where no order says.
Result<std::optional<std::int64_t>> costOfClaimed(const Settling &settling)
{
    const SupplierClaim &claim = settling.claim.now;
    const BookedOrder *order = settling.books.bought.orders.order(settling.claim.now.order);
    const Part *part = settling.books.workshop.part(claim.boxOf.empty() ? claim.part : claim.boxOf);
    if (!order || !part)
        return std::optional<std::int64_t>();
    const auto values = valuesOfLines(order->now());
    if (!values)
        return tl::unexpected(values.error());
    std::optional<std::int64_t> most;
    const auto &lines = order->now().lines;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto ordered = Quantity{lines[i].quantity, part->unit}.smallest();
        if (lines[i].part != part->number || !ordered || *ordered <= 0)
            continue;
        const std::int64_t count =
            std::min(claim.boxOf.empty() ? settling.claim.owed() : *ordered, *ordered);
        most = std::max(most.value_or(0), stockPart((*values)[i], count, *ordered));
    }
    return most;
}

} // namespace

Result<std::int64_t> creditAsked(const Settling &settling)
{
    auto credit = amountAsked(settling);
    if (!credit)
        return credit;
    const auto most = costOfClaimed(settling);
    if (!most)
        return tl::unexpected(most.error());
    if (!*most || *credit <= **most)
        return credit;
    return problem("--credit " + settling.asked.credit,
                   "is more than what is claimed has cost: " +
                       Decimal::scaled(**most, 6).stripped().text(),
                   "Look at the figure again; what is paid back besides is a credit of the order.");
}

} // namespace flarestock
