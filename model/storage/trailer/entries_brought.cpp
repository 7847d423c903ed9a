// SPDX-License-Identifier: MIT

#include "model/storage/trailer/entries_brought.h"

#include "model/journal/notes/count.h"
#include "model/journal/notes/decision.h"
#include "model/storage/shop_sql.h"

#include <QCryptographicHash>

namespace flarestock {

namespace {

std::string told(const Movement &movement)
{
    return "movement " + movement.id.text() + " of " + movement.part + " from " + movement.from +
           " to " + movement.to;
}

/// Of one entry always the same, so that it is kept once.
MovementId keptId(const NewsEntry &entry)
{
    const QByteArray name =
        entry.replica + QByteArray::number(static_cast<qlonglong>(entry.place.sequence));
    return idOf(QCryptographicHash::hash(name, QCryptographicHash::Sha256).left(16));
}

/// So much of a value as comes to so many of its pieces, rounded down.
std::int64_t portion(std::int64_t value, std::int64_t some, std::int64_t all)
{
    __extension__ using Wide = __int128;
    return static_cast<std::int64_t>(Wide{value} * some / all);
}

} // namespace

bool EntriesBrought::stands(const MovementId &id) const
{
    bool found = false;
    m_into.connection.runAgain(sql::SelectMovement, {idBytes(id)},
                               [&found](const QSqlQuery &) { found = true; });
    return found;
}

bool EntriesBrought::isKnown(const MovementId &id) const
{
    bool found = stands(id);
    m_into.connection.runAgain(sql::SelectRecord, {idBytes(id)},
                               [&found](const QSqlQuery &) { found = true; });
    return found;
}

std::string EntriesBrought::whyNotStanding(const NewsEntry &entry) const
{
    if (isKnown(entry.id()))
        return "bears an id that the shop has given to an entry of its own";
    if (!entry.movement)
        return {};
    const Movement &movement = *entry.movement;
    bool isTakenBack = false;
    if (movement.reverses)
        m_into.connection.runAgain(sql::SelectReversal, {idBytes(*movement.reverses)},
                                   [&](const QSqlQuery &) { isTakenBack = true; });
    if (isTakenBack)
        return "takes back what was taken back here as well";
    if (movement.reverses && !stands(*movement.reverses))
        return "takes back what does not stand here";
    if (movement.action && !stands(*movement.action))
        return "belongs to an action that does not stand here";
    return {};
}

std::int64_t EntriesBrought::keepAside(const NewsEntry &entry, std::int64_t replica)
{
    const std::string what =
        entry.movement ? told(*entry.movement)
                       : std::string(text(entry.record->kind)) + " " + entry.record->subject;
    const KeptEntry kept{entry.id(), what, entry.bytes,
                         entry.movement ? entry.movement->who : entry.record->who,
                         entry.movement ? entry.movement->at : entry.record->at};
    RecordRow row{entry.place, kept.asRecord(keptId(entry))};
    row.replica = replica;
    return m_into.writer.takeIn(std::move(row));
}

void EntriesBrought::decideOnKept(const NewsEntry &entry, const std::string &why)
{
    const std::string id = entry.id().text();
    if (!entry.movement) {
        static_cast<void>(m_into.disagreements.decide(
            {"entry:" + id,
             "the copy's " + std::string(text(entry.record->kind)) + " " + id + " " + why,
             {{"once", "the shop's stays; the copy's is kept with its words"}},
             {}}));
        return;
    }
    const auto word = m_into.disagreements.decide(
        {"entry:" + id,
         "the copy's " + told(*entry.movement) + " " + why,
         {{"once", "both mean the same: it counts once, and the copy's is kept with its words"},
          {"twice", "it was moved there besides: the shop moves it once more"}},
         {}});
    if (word != "twice")
        return;
    Movement again = *entry.movement;
    again.id = m_into.own.nextId();
    again.reverses.reset();
    again.action.reset();
    append(std::move(again));
}

std::int64_t EntriesBrought::take(const NewsEntry &entry, std::int64_t replica, bool aside)
{
    const auto why = aside ? std::string() : whyNotStanding(entry);
    if (aside || !why.empty()) {
        const auto lamport = keepAside(entry, replica);
        if (!aside)
            decideOnKept(entry, why);
        return lamport;
    }
    if (!entry.movement) {
        RecordRow row{entry.place, *entry.record};
        row.replica = replica;
        return m_into.writer.takeIn(std::move(row));
    }
    supply(*entry.movement, "the copy took");
    noteWorth(*entry.movement);
    JournalRow row{entry.place, *entry.movement};
    row.replica = replica;
    return m_into.writer.takeIn(std::move(row));
}

bool EntriesBrought::isStockPlace(const std::string &place) const
{
    const Place *there = m_into.writer.knowing({}).place(place);
    return there && isStock(there->kind);
}

void EntriesBrought::supply(const Movement &movement, const std::string &what)
{
    const BalanceKey key = source(movement);
    const std::int64_t there = m_into.writer.balance(key).quantity;
    if (movement.quantity <= there || !isStockPlace(key.place))
        return;
    const std::int64_t lacking = movement.quantity - there;
    const auto lent = m_lent.find(key);
    if (lent != m_lent.end())
        lent->second += lacking; // What the counts come to decides on it.
    else if (fetched(key, {key.part, lacking, movement.quantity}, what))
        return;
    const std::string difference = placeOf(PlaceKind::Difference, m_into.writer.knowing(key.part));
    Movement found = m_into.own.movement({key.part, difference, key.lot, key.condition}, lacking,
                                         key.place, std::string(BothSidesTook));
    found.deed = Deed::Count;
    found.value = portion(movement.value, lacking, movement.quantity);
    settle();
    static_cast<void>(m_into.writer.append(std::move(found)));
}

std::int64_t EntriesBrought::repaid(const BalanceKey &key)
{
    const auto lent = m_lent.extract(key);
    return lent.empty() ? 0 : lent.mapped();
}

void EntriesBrought::bringTo(const BalanceKey &key, std::int64_t found, const Movement &like)
{
    settle();
    const Ledger &ledger = m_into.writer.knowing(key.part);
    const Balance held = ledger.balance(key);
    const Count count{{}, key, found, held.quantity, {}, {}, 0};
    const auto counted = differenceOf(count, ledger, placeOf(PlaceKind::Difference, ledger));
    if (!counted)
        return;
    Movement difference = m_into.own.movement(source(*counted), counted->quantity, counted->to,
                                              "so much lies there by the count that counts");
    difference.deed = Deed::Count;
    difference.value = counted->value;
    if (held.quantity == 0 && like.quantity >= counted->quantity)
        difference.value = portion(like.value, counted->quantity, like.quantity);
    static_cast<void>(m_into.writer.append(std::move(difference)));
}

Balance &EntriesBrought::worth(const BalanceKey &key)
{
    return m_worth.try_emplace(key, m_into.writer.balance(key)).first->second;
}

/// By the moving average: what it takes along is what it says, where that much lies there; else its
/// share. First in, first out, the layers say it.
void EntriesBrought::noteWorth(const Movement &movement)
{
    std::int64_t value = movement.value;
    const bool fromStock = isStockPlace(movement.from);
    if (fromStock) {
        Balance &held = worth(source(movement));
        const bool fits =
            value <= held.value && (movement.quantity < held.quantity || value == held.value);
        if (!fits)
            value = movement.quantity > 0 ? shareOf(held, movement.quantity)
                                          : std::min(value, std::max<std::int64_t>(held.value, 0));
        held.quantity -= movement.quantity;
        held.value -= value;
    }
    if (!isStockPlace(movement.to))
        return;
    Balance &there = worth(target(movement));
    there.quantity += movement.quantity;
    if (there.quantity > 0) // Value that comes where nothing lies any more is a difference.
        there.value += fromStock ? value : movement.value;
}

void EntriesBrought::settle()
{
    const auto noted = std::exchange(m_worth, {});
    for (const auto &[key, balance] : noted) {
        const Ledger &ledger = m_into.writer.knowing(key.part);
        const std::int64_t should = ledger.costing() == Costing::FirstInFirstOut
                                        ? sumOf(ledger.layersAt(key)).value
                                        : balance.value;
        const std::int64_t is = ledger.balance(key).value;
        if (should == is)
            continue;
        const std::string difference = placeOf(PlaceKind::Difference, ledger);
        Movement settling =
            should > is ? m_into.own.movement({key.part, difference, key.lot, key.condition}, 0,
                                              key.place, "is worth that much here")
                        : m_into.own.movement(key, 0, difference, "is worth less here");
        settling.value = should > is ? should - is : is - should;
        settling.deed = Deed::Settle;
        static_cast<void>(m_into.writer.append(std::move(settling)));
    }
}

void EntriesBrought::append(Movement movement)
{
    settle();
    supply(movement, "what was decided takes");
    static_cast<void>(m_into.writer.append(std::move(movement)));
}

void EntriesBrought::appendUpTo(Movement movement)
{
    settle();
    const std::int64_t there = m_into.writer.balance(source(movement)).quantity;
    if (isStockPlace(movement.from) && there < movement.quantity) {
        movement.quantity = there;
        movement.reverses.reset();
    }
    if (movement.quantity > 0)
        static_cast<void>(m_into.writer.append(std::move(movement)));
}

} // namespace flarestock
