// SPDX-License-Identifier: MIT
//
// What is to be known of a plan besides its slips.

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/slips/slip_rows.h"
#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

QString muchOf(const Decimal &amount, const std::string &number, const SlipBook &book, Units units)
{
    const Part *part = book.workshop->part(number);
    return part ? saidMuch(amount, *part, units) : saidNumber(amount);
}

} // namespace

QStringList slipNotes(const SlipBook &book, PlanAim aim, Units units)
{
    QStringList notes;
    const PurchasePlan &plan = book.plan(aim);
    for (const PlannedPart &part : plan.parts)
        for (const PlannedPart::Late &late : part.late)
            notes.append(BuyingWords::tr("%1 of %2 come late: needed by %3, here %4.")
                             .arg(muchOf(late.quantity, part.part, book, units), said(part.part),
                                  saidDayOf(late.day, book.today),
                                  saidDayOf(late.hereBy, book.today)));
    for (const Unplaced &one : plan.unplaced)
        notes.append(BuyingWords::tr("%1 of %2 is on no slip: %3.")
                         .arg(muchOf(one.shortage.quantity, one.shortage.part, book, units),
                              said(one.shortage.part), inWords(one.why)));
    if (book.later && aim == PlanAim::Cheapest)
        notes.append(BuyingWords::tr("If all of it could wait until %1, it would cost %2 less.")
                         .arg(saidDayOf(book.later->day, book.today),
                              saidMoney({book.later->saves, book.workshop->settings.currency})));
    return notes;
}

} // namespace flarestock
