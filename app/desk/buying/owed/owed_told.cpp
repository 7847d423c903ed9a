// SPDX-License-Identifier: MIT

#include "app/desk/buying/owed/owed_told.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "app/workshop/made_up.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isPast(const SupplierClaim &claim, const std::string &today)
{
    return claim.state == ClaimState::Promised && claim.day < today;
}

QString moneyOf(std::int64_t micro, const Workshop &shop)
{
    return saidMoney(
        {Decimal::scaled(micro, 6).rescaled(2, Rounding::HalfEven), shop.settings.currency});
}

QString saidState(const SupplierClaim &claim, const Workshop &shop, const std::string &today)
{
    switch (claim.state) {
    case ClaimState::Raised:
        return BuyingWords::tr("raised, no day yet");
    case ClaimState::Promised:
        return isPast(claim, today)
                   ? BuyingWords::tr("! was promised by %1").arg(saidDayOf(claim.day, today))
                   : BuyingWords::tr("promised by %1").arg(saidDayOf(claim.day, today));
    case ClaimState::PieceCame:
        return BuyingWords::tr("the piece came");
    case ClaimState::Credited:
        return BuyingWords::tr("%1 paid back").arg(moneyOf(claim.credit, shop));
    case ClaimState::GivenUp:
        break;
    }
    return BuyingWords::tr("dropped");
}

QString saidAmountOf(std::int64_t quantity, const SupplierClaim &claim, const Workshop &shop,
                     Units units)
{
    const Part *part = shop.part(claim.part);
    return part ? saidAmount(Quantity::ofSmallest(quantity, part->unit), units)
                : QString::number(quantity);
}

Row claimRow(const ClaimStanding &claim, const Workshop &shop, const std::string &today,
             Units units)
{
    const SupplierClaim &now = claim.now;
    const Part *part = shop.part(now.part);
    const bool isOpen = !now.isSettled();
    const QString title =
        BuyingWords::tr("%1 of %2")
            .arg(saidAmountOf(isOpen ? claim.owed() : now.quantity, now, shop, units),
                 said(now.part));
    const QString supplier = saidSupplier(now.supplier, shop.catalogue);
    QString fault = saidFault(now.fault);
    if (!now.boxOf.empty())
        fault = BuyingWords::tr("%1 of %2").arg(fault, said(now.boxOf));
    const QString state = saidState(now, shop, today);
    const int mark = !isOpen                             ? Standing::Made
                     : isPast(now, today)                ? Standing::Caution
                     : now.state == ClaimState::Promised ? Standing::Needs
                                                         : Standing::Short;
    return {said(now.number),
            {said(now.number), title, said(part ? part->description : std::string()), supplier,
             fault, state, isOpen ? BuyingWords::tr("open") : BuyingWords::tr("settled"), mark,
             BuyingWords::tr("claim %1: %2, %3, %4, %5")
                 .arg(said(now.number), title, fault, supplier, state)}};
}

} // namespace

QString saidFault(ClaimFault fault)
{
    switch (fault) {
    case ClaimFault::Missing:
        return BuyingWords::tr("missing in the box");
    case ClaimFault::WrongPart:
        return BuyingWords::tr("another part came");
    case ClaimFault::Damaged:
        return BuyingWords::tr("came damaged");
    case ClaimFault::ShortDelivery:
        break;
    }
    return BuyingWords::tr("on the paper, not in the box");
}

QStringList claimListCells()
{
    return {QStringLiteral("number"),   QStringLiteral("owed"),  QStringLiteral("what"),
            QStringLiteral("supplier"), QStringLiteral("fault"), QStringLiteral("stands"),
            QStringLiteral("section"),  QStringLiteral("mark"),  QStringLiteral("says")};
}

const ClaimStanding *claimOf(const QString &number, const Workshop &shop)
{
    const auto found = shop.bought.claims.find(number.toStdString());
    return found ? *found : nullptr;
}

std::vector<Row> claimListRows(const Workshop &shop, const std::string &today, Units units)
{
    std::vector<Row> rows;
    std::set<std::string> told; // Two seats may have given one number in the same moment.
    for (const bool settled : {false, true})
        for (const ClaimStanding &claim : shop.bought.claims.claims)
            if (claim.now.isSettled() == settled && told.insert(claim.now.number).second)
                rows.push_back(claimRow(claim, shop, today, units));
    return rows;
}

QStringList claimFactCells()
{
    return {QStringLiteral("title"), QStringLiteral("detail"), QStringLiteral("flagged")};
}

std::vector<Row> claimFactRows(const ClaimStanding &claim, const Workshop &shop,
                               const std::string &today)
{
    std::vector<Row> facts;
    const SupplierClaim &now = claim.now;
    if (!now.order.empty())
        facts.push_back(
            {QStringLiteral("order"), {BuyingWords::tr("of order"), said(now.order), false}});
    if (!now.boxOf.empty())
        facts.push_back(
            {QStringLiteral("box"),
             {BuyingWords::tr("of the box of"),
              said(now.boxLot.empty() ? now.boxOf : now.boxOf + ", " + now.boxLot), false}});
    if (!now.note.empty())
        facts.push_back({QStringLiteral("note"), {BuyingWords::tr("note"), said(now.note), false}});
    int at = 0;
    for (const SupplierClaim &step : claim.steps) {
        const QString day = saidDayOf(dayOf(step.at), today);
        facts.push_back(
            {QStringLiteral("step|%1").arg(at++),
             {saidState(step, shop, today),
              step.who.empty() ? day : BuyingWords::tr("%1, %2").arg(day, said(step.who)), false}});
    }
    return facts;
}

} // namespace flarestock
