// SPDX-License-Identifier: MIT
//
// The fields of a claim's form, and what was filled in as an action of the journal.

#include "app/buyer/receiving/claiming.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/owed/claim_form.h"
#include "app/desk/buying/owed/owed_told.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/desk/words/typed_figures.h"

#include <array>

namespace flarestock {

namespace {

constexpr std::array Faults{ClaimFault::Missing, ClaimFault::ShortDelivery, ClaimFault::Damaged,
                            ClaimFault::WrongPart};

Row noteField()
{
    return typedField("note", BuyingWords::tr("note"), {});
}

std::vector<Row> raiseFields(const ClaimSubject &subject)
{
    QStringList suppliers;
    for (const Supplier &one : subject.workshop->catalogue.suppliers())
        suppliers.append(said(one.name.empty() ? one.id : one.name));
    QStringList faults;
    for (const ClaimFault fault : Faults)
        faults.append(saidFault(fault));
    return {
        typedField("part", BuyingWords::tr("which part"), {}, BuyingWords::tr("type or scan it")),
        figureField("quantity", BuyingWords::tr("how many, how much"), QStringLiteral("1")),
        choiceField("fault", BuyingWords::tr("what is wrong"), faults),
        typedField("order", BuyingWords::tr("of which order"), {},
                   BuyingWords::tr("2026-0007; empty: of none")),
        choiceField("supplier", BuyingWords::tr("else of whom"), suppliers),
        typedField("boxOf", BuyingWords::tr("lacked in the box of"), {},
                   BuyingWords::tr("where it lay in one")),
        noteField()};
}

std::vector<Row> cameFields(const ClaimStanding &claim, const ClaimSubject &subject)
{
    const Part *part = subject.workshop->part(claim.now.part);
    const QString owed =
        part ? saidQuantity(Quantity::ofSmallest(claim.owed(), part->unit)) : QString();
    return {figureField("came", BuyingWords::tr("how many, how much"), owed),
            typedField("to", BuyingWords::tr("to which place"), {},
                       claim.now.boxOf.empty() ? BuyingWords::tr("type or scan the bin: C4")
                                               : BuyingWords::tr("empty: into its box")),
            typedField("lot", BuyingWords::tr("its lot or serial"), {},
                       BuyingWords::tr("where it has one")),
            noteField()};
}

/// The claim as it stands now. Problem: it is not there, or has gone on since it was looked at.
Result<const ClaimStanding *> asSeen(const ClaimSubject &subject, const Workshop &now)
{
    auto claim = now.bought.claims.find(subject.number.toStdString());
    const ClaimStanding *seen = claimOf(subject.number, *subject.workshop);
    if (claim && seen && (*claim)->now.id != seen->now.id)
        return problem("claim " + subject.number.toStdString(),
                       "was changed at another seat just now",
                       "It is shown as it is now: look at it, then do it again.");
    return claim;
}

Result<ToWrite> raisedAction(const ClaimSubject &subject, const QVariantMap &values,
                             const Workshop &now, const By &by)
{
    RaiseWords words;
    words.part = wordsIn(values, "part");
    words.quantity = figuresTyped(values, "quantity");
    words.order = wordsIn(values, "order");
    words.boxOf = wordsIn(values, "boxOf");
    words.note = values.value(QStringLiteral("note")).toString().trimmed().toStdString();
    const auto fault = static_cast<std::size_t>(values.value(QStringLiteral("fault")).toInt());
    words.fault = text(Faults.at(std::min(fault, Faults.size() - 1)));
    const auto suppliers = subject.workshop->catalogue.suppliers();
    const auto at = static_cast<std::size_t>(values.value(QStringLiteral("supplier")).toInt());
    if (words.order.empty() && at < suppliers.size())
        words.supplier = suppliers[at].id;
    const auto claim = raised(words, now.bought, now, by);
    if (!claim)
        return tl::unexpected(claim.error());
    return Action{{claim->asRecord()}, {}};
}

/// In the shop's currency, or in that of the order: "what he pays back, in USD", "ordered at 5.95
/// EUR; you can write 5.95 EUR".
Row creditField(const ClaimStanding &claim, const Workshop &shop)
{
    const Currency &ours = shop.settings.currency;
    const BookedOrder *order = shop.bought.orders.order(claim.now.order);
    const OrderLine *line = order ? order->now().line(claim.now.part) : nullptr;
    QString hint;
    if (line != nullptr) {
        const Currency &his = order->now().currency;
        const QString price = saidPriceOf(line->priceEach, his, line->unit);
        hint = his == ours ? BuyingWords::tr("ordered at %1").arg(price)
                           : BuyingWords::tr("ordered at %1 %2; you can write it in %2: 12.50 %2")
                                 .arg(price, said(his.code()));
    }
    return figureField("credit", BuyingWords::tr("what he pays back, in %1").arg(said(ours.code())),
                       {}, hint);
}

SettleWords settleWords(ClaimDeed deed, const QVariantMap &values)
{
    SettleWords words;
    words.note = values.value(QStringLiteral("note")).toString().trimmed().toStdString();
    words.givenUp = deed == ClaimDeed::Drop;
    if (deed == ClaimDeed::Credit)
        words.credit = figuresTyped(values, "credit");
    if (deed != ClaimDeed::Came)
        return words;
    words.came = figuresTyped(values, "came");
    words.to = wordsIn(values, "to");
    words.lot = wordsIn(values, "lot");
    return words;
}

} // namespace

std::vector<Row> claimFields(ClaimDeed deed, const ClaimSubject &subject)
{
    const ClaimStanding *claim =
        deed == ClaimDeed::Raise ? nullptr : claimOf(subject.number, *subject.workshop);
    if (claim == nullptr)
        return raiseFields(subject);
    switch (deed) {
    case ClaimDeed::Promise:
        return {typedField("day", BuyingWords::tr("by which day"), dayAsTyped(claim->now.day),
                           dayAsTyped("2026-12-12"))};
    case ClaimDeed::Came:
        return cameFields(*claim, subject);
    case ClaimDeed::Credit:
        return {creditField(*claim, *subject.workshop), noteField()};
    case ClaimDeed::Drop:
    case ClaimDeed::Raise:
        break;
    }
    return {noteField()};
}

Pen::MadeBy claimStep(ClaimDeed deed, const ClaimSubject &subject, const QVariantMap &values)
{
    return [=](const ShopFile &file, const Workshop &now, const By &by) -> Result<ToWrite> {
        if (deed == ClaimDeed::Raise)
            return raisedAction(subject, values, now, by);
        const auto claim = asSeen(subject, now);
        if (!claim)
            return tl::unexpected(claim.error());
        if (deed == ClaimDeed::Promise) {
            const auto step = promisedBy(**claim, dayTyped(values, "day"), by);
            if (!step)
                return tl::unexpected(step.error());
            return Action{{step->asRecord()}, {}};
        }
        auto made = settled(**claim, settleWords(deed, values), {now.bought, file, now}, by);
        if (!made)
            return tl::unexpected(made.error());
        std::vector<BoxCheck> looks;
        if (made->look)
            looks.push_back(*made->look);
        return ToWrite(std::move(made->action), std::move(looks));
    };
}

} // namespace flarestock
