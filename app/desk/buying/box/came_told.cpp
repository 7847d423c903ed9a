// SPDX-License-Identifier: MIT

#include "app/desk/buying/box/came_told.h"

#include "app/buyer/costing/cost_history.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/owed/owed_told.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

struct Came {
    std::vector<Receipt> receipts;
    std::vector<SupplierClaim> claims;
};

Came cameBy(const Action &action)
{
    Came came;
    for (const auto *records : {&action.records, &action.afterwards}) {
        for (const Record &record : *records) {
            if (const auto receipt = Receipt::read(record))
                came.receipts.push_back(*receipt);
            else if (const auto claim = SupplierClaim::read(record))
                came.claims.push_back(*claim);
        }
    }
    return came;
}

QString moneyOf(std::int64_t micro, const Workshop &shop)
{
    return saidMoney(
        {Decimal::scaled(micro, 6).rescaled(2, Rounding::HalfEven), shop.settings.currency});
}

QString saidEach(const Decimal &each, const Workshop &shop)
{
    const Currency &currency = shop.settings.currency;
    return QString(saidPrice(each.rescaled(4, Rounding::HalfEven), currency) + u' ' +
                   said(currency.code()));
}

/// What one of it has cost this time and the time before; empty where nothing is known of it.
QString saidBefore(const std::vector<CostStep> &steps, const Part &part, const Workshop &shop)
{
    if (steps.empty())
        return {};
    const Decimal now = steps.back().landedEach(part);
    const QString each = BuyingWords::tr("%1 landed each").arg(saidEach(now, shop));
    for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
        if (step->order == steps.back().order && step->day == steps.back().day)
            continue;
        const Decimal before = step->landedEach(part);
        return BuyingWords::tr("%1; the time before it was %2").arg(each, saidEach(before, shop));
    }
    return BuyingWords::tr("%1; the first time that we bought it").arg(each);
}

} // namespace

QStringList cameCells()
{
    return {QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("flagged")};
}

std::vector<Row>
cameRows(const Wrote &wrote,
         const std::function<Result<std::vector<Movement>>(const std::string &)> &history,
         Units units)
{
    std::vector<Row> rows;
    const Workshop &shop = *wrote.shop.workshop;
    const Came came = cameBy(wrote.action);
    int at = 0;
    for (const SupplierClaim &claim : came.claims) {
        const Part *part = shop.part(claim.part);
        const QString much =
            part ? saidAmount(Quantity::ofSmallest(claim.quantity, part->unit), units) : QString();
        const QString fault =
            claim.boxOf.empty()
                ? saidFault(claim.fault)
                : BuyingWords::tr("%1 of %2").arg(saidFault(claim.fault), said(claim.boxOf));
        rows.push_back(
            {QStringLiteral("claim|%1").arg(at++),
             {BuyingWords::tr("Claim %1: %2 of %3").arg(said(claim.number), much, said(claim.part)),
              fault, true}});
    }
    for (const Receipt &receipt : came.receipts) {
        const Part *part = shop.part(receipt.part);
        if (part == nullptr)
            continue;
        QStringList detail{BuyingWords::tr("carries %1").arg(moneyOf(receipt.value, shop))};
        if (!receipt.lot.empty())
            detail.prepend(said(receipt.lot));
        const auto movements = history ? history(receipt.part) : std::vector<Movement>();
        if (movements && !movements->empty()) {
            const auto steps = costHistory(*part, *movements, shop.bought, shop);
            if (const QString before = saidBefore(steps, *part, shop); !before.isEmpty())
                detail.append(before);
        }
        rows.push_back(
            {QStringLiteral("came|%1").arg(at++),
             {BuyingWords::tr("%1 of %2")
                  .arg(saidAmount(Quantity::ofSmallest(receipt.quantity, part->unit), units),
                       said(receipt.part)),
              detail.join(QStringLiteral(", ")), false}});
    }
    return rows;
}

bool isOfOrder(const Action &action, const std::string &order)
{
    const auto [receipts, claims] = cameBy(action);
    const auto isIts = [&order](const auto &one) { return one.order == order; };
    return std::any_of(receipts.begin(), receipts.end(), isIts) ||
           std::any_of(claims.begin(), claims.end(), isIts);
}

QString saidCame(const Wrote &wrote)
{
    const Came came = cameBy(wrote.action);
    const std::string order = came.receipts.empty()
                                  ? came.claims.empty() ? std::string() : came.claims.front().order
                                  : came.receipts.front().order;
    std::set<std::string> parts; // What is damaged of a line is no line of its own.
    for (const Receipt &one : came.receipts)
        parts.insert(one.part);
    const auto lines = static_cast<int>(parts.size());
    const auto claims = static_cast<int>(came.claims.size());
    const QString what =
        lines == 1 ? BuyingWords::tr("1 line came") : BuyingWords::tr("%1 lines came").arg(lines);
    const QString owed = claims == 0   ? BuyingWords::tr("nothing is claimed")
                         : claims == 1 ? BuyingWords::tr("1 claim")
                                       : BuyingWords::tr("%1 claims").arg(claims);
    return BuyingWords::tr("Received of order %1: %2, %3.").arg(said(order), what, owed);
}

} // namespace flarestock
