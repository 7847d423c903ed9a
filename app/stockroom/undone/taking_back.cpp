// SPDX-License-Identifier: MIT

#include "app/stockroom/undone/taking_back.h"

#include "app/stockroom/byhand/seeing.h"
#include "app/stockroom/handing_out.h"
#include "app/stockroom/undone/made_up_for.h"
#include "app/workshop/clock.h"
#include "model/buying/order_steps.h"
#include "model/journal/notes/build_log.h"
#include "model/servicing/outing.h"
#include "model/servicing/serviced.h"

#include <algorithm>

namespace flarestock {

namespace {

/// The order as it stood before that step. Problem: it has gone on since.
Result<std::optional<Record>> orderBefore(const Record &past, const BuyingBook &buying)
{
    const BookedOrder *standing = buying.order(past.subject);
    if (!standing)
        return problem("order " + past.subject, "does not stand in this shop",
                       "Look it up: flarestock order list.");
    const auto back = stepBack(*standing, past.id);
    if (!back)
        return tl::unexpected(back.error());
    return std::optional(back->asRecord());
}

/// The claim as it stood before that step; one that was only raised is given up. Nothing of a step
/// that pieces moved with: it does not count any more once they have gone back. Problem: the claim
/// has gone on since.
Result<std::optional<Record>> claimBefore(const Record &past, const ClaimBook &claims)
{
    const auto step = SupplierClaim::read(past);
    if (!step)
        return tl::unexpected(step.error());
    if (!step->action.empty())
        return std::optional<Record>();
    const auto standing = claims.find(step->claim.text());
    if (!standing)
        return tl::unexpected(standing.error());
    auto back = stepBack(**standing, step->id);
    if (!back)
        return tl::unexpected(back.error());
    return std::optional(back->asRecord());
}

/// The record that undoes one; nothing where it is of a kind that stays.
Result<std::optional<Record>> opposite(const Record &past, const Bought &bought,
                                       const ShopFile &file)
{
    if (past.kind == RecordKind::Keeping || past.kind == RecordKind::Level)
        return wordBefore(past, file);
    if (past.kind == RecordKind::Order)
        return orderBefore(past, bought.orders);
    if (past.kind == RecordKind::SupplierClaim)
        return claimBefore(past, bought.claims);
    if (past.kind == RecordKind::Promise) {
        auto promise = Promise::read(past);
        if (!promise)
            return tl::unexpected(promise.error());
        promise->quantity = -promise->quantity;
        return std::optional(promise->asRecord());
    }
    if (past.kind == RecordKind::Outing || past.kind == RecordKind::Servicing)
        return std::optional(takingBack(past));
    if (past.kind == RecordKind::Done) {
        auto done = BuildDone::read(past);
        if (!done)
            return tl::unexpected(done.error());
        if (done->changed) // Its pieces are touched a second time: no test of before holds.
            return std::optional<Record>();
        done->open = !done->open;
        return std::optional(done->asRecord());
    }
    return std::optional<Record>();
}

/// What undoes the records, the last first, as further entries of the action `id` behind `n`
/// others.
Result<std::vector<Record>> recordsBack(const std::vector<Record> &past,
                                        const std::pair<const Workshop *, const ShopFile *> &shop,
                                        const By &by, std::uint64_t n)
{
    std::vector<Record> back;
    for (auto at = past.rbegin(); at != past.rend(); ++at) {
        auto record = opposite(*at, shop.first->bought, *shop.second);
        if (!record)
            return tl::unexpected(record.error());
        if (!*record)
            continue;
        (*record)->id = idWithin(*by.action, n++);
        (*record)->who = by.who;
        (*record)->at = by.at;
        back.push_back(std::move(**record));
    }
    return back;
}

/// The records of the action `first` behind `n` movements: their ids count on from theirs.
Result<std::vector<Record>> recordsBehind(const MovementId &first, std::size_t n,
                                          const ShopFile &file)
{
    std::vector<Record> records;
    while (true) {
        auto record = file.recordOf(idWithin(first, n + records.size()));
        if (!record)
            return tl::unexpected(record.error());
        if (!*record)
            return records;
        records.push_back(std::move(**record));
    }
}

/// Where a copy was brought and it was decided what followed what, a servicing is said again with
/// other movements: neither goes back alone.
Result<void> mayGoBack(const std::vector<Record> &records, const ShopFile &file)
{
    const bool isWork = std::any_of(records.begin(), records.end(), [](const Record &one) {
        return one.kind == RecordKind::Servicing;
    });
    const auto all = isWork ? file.records() : Result<std::vector<Record>>();
    if (!all)
        return tl::unexpected(all.error());
    const auto decided = decidedWhenBrought(*all);
    for (const Record &one : records) {
        if (decided.contains(one.id.text()))
            return problem(one.field("position"),
                           "was decided on when a copy was brought, and stays",
                           "Say what is there now: take it out, or fit it.");
    }
    return {};
}

/// What the reversals of an action would take along, as its part's whole history has it.
Result<std::int64_t> givenBack(const std::string &part, const std::vector<Movement> &reversals,
                               const ShopFile &file, const Ledger &shop)
{
    const auto ofPart = file.movements(part);
    if (!ofPart)
        return tl::unexpected(ofPart.error());
    Ledger history({shop.places().begin(), shop.places().end()}, shop.costing());
    for (const Movement &one : *ofPart)
        static_cast<void>(history.take(one)); // The file holds none that would be refused.
    std::int64_t sum = 0;
    for (Movement reversal : reversals) {
        if (reversal.part != part)
            continue;
        reversal.value = history.valueOf(reversal);
        sum += reversal.value;
        static_cast<void>(history.apply(reversal)); // The writer says what is wrong with it.
    }
    return sum;
}

/// A supplier gets back what he brought, to the last millionth. Where the pieces go with another
/// value, because others left before or something was charged late, the rest is a difference.
Result<void> evenOut(Action &action, const std::vector<Movement> &past, const ShopFile &file,
                     const Ledger &shop)
{
    const auto difference = placeOfKind(PlaceKind::Difference, shop);
    std::map<std::pair<std::string, std::string>, std::int64_t> brought; // By part and supplier.
    std::map<std::pair<std::string, std::string>, std::vector<Movement>> back;
    for (const Movement &reversal : action.movements) {
        const Place *to = shop.place(reversal.to);
        const Place *from = shop.place(reversal.from);
        const auto one = std::find_if(past.begin(), past.end(), [&](const Movement &was) {
            return was.id == reversal.reverses;
        });
        if (reversal.quantity <= 0 || one == past.end() || !to || !from ||
            to->kind != PlaceKind::Supplier || !isStock(from->kind))
            continue;
        brought[{reversal.part, to->id}] += one->value;
        back[{reversal.part, to->id}].push_back(reversal);
    }
    const Movement first = action.movements.front();
    for (const auto &[key, value] : brought) {
        const auto &[part, supplier] = key;
        const auto given = givenBack(part, back[key], file, shop);
        if (!given)
            return tl::unexpected(given.error());
        if (*given == value)
            continue;
        if (!difference)
            return tl::unexpected(difference.error());
        const bool tooMuch = *given > value;
        Movement rest = movementOf({part, tooMuch ? supplier : (*difference)->id, {}, {}}, 0,
                                   tooMuch ? (*difference)->id : supplier, Deed::Receive);
        rest.value = tooMuch ? *given - value : value - *given;
        rest.document = back[key].front().document;
        rest.id = idWithin(first.id, action.movements.size());
        rest.action = first.id;
        rest.who = first.who;
        rest.why = first.why;
        rest.at = first.at;
        action.movements.push_back(std::move(rest));
    }
    return {};
}

Result<Action> recordsTakenBack(const std::vector<Record> &records, const ShopFile &file,
                                const Workshop &workshop, const By &by)
{
    By signedBy = by;
    signedBy.action = by.action.value_or(freshId());
    auto back = recordsBack(records, {&workshop, &file}, signedBy, 0);
    if (!back)
        return tl::unexpected(back.error());
    if (back->empty())
        return problem("that", "was written down and stays", "Write down a newer one.");
    return Action{std::move(*back), {}};
}

} // namespace

Result<Action> movementTakenBack(const MovementId &id, const ShopFile &file,
                                 const Workshop &workshop, const By &by)
{
    const auto past = file.movementsOfAction(id);
    if (!past)
        return tl::unexpected(past.error());
    if (past->empty()) {
        const auto records = recordsBehind(id, 0, file);
        if (!records)
            return tl::unexpected(records.error());
        if (records->empty())
            return problem(id.text(), "was not done in this shop",
                           "Look it up: flarestock history.");
        return recordsTakenBack(*records, file, workshop, by);
    }
    const auto behind =
        recordsBehind(past->front().action.value_or(past->front().id), past->size(), file);
    if (!behind)
        return tl::unexpected(behind.error());
    if (const auto may = mayGoBack(*behind, file); !may)
        return tl::unexpected(may.error());
    if (const auto may = nothingMadeUpFor(*past, file, workshop.ledger); !may)
        return tl::unexpected(may.error());
    std::set<MovementId> reversed;
    for (const Movement &one : *past) {
        if (workshop.ledger.isTakenBack(one.id))
            reversed.insert(one.id);
    }
    By signedBy = by;
    signedBy.action = by.action.value_or(freshId());
    auto action = takenBack(*past, reversed, signedBy);
    if (!action)
        return action;
    if (const auto even = evenOut(*action, *past, file, workshop.ledger); !even)
        return tl::unexpected(even.error());
    action->promised = Promised::MayGo; // What was a mistake was never there to be promised.
    if (reversed.empty()) {
        // Of a promise only when its piece is back: then it asks for nothing that is not there.
        auto back = recordsBack(*behind, {&workshop, &file}, signedBy, action->movements.size());
        if (!back)
            return tl::unexpected(back.error());
        action->afterwards = std::move(*back);
    }
    openAgain(*action, workshop, signedBy);
    return action;
}

Result<Action> actionTakenBack(const Action &done, const ShopFile &file, const Workshop &workshop,
                               const By &by)
{
    if (!done.movements.empty())
        return movementTakenBack(done.movements.front().id, file, workshop, by);
    return recordsTakenBack(done.records, file, workshop, by);
}

} // namespace flarestock
