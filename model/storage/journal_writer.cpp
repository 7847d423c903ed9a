// SPDX-License-Identifier: MIT

#include "model/storage/journal_writer.h"

#include "model/storage/journal_reader.h"
#include "model/storage/order_judgement.h"
#include "model/storage/shop_sql.h"

#include <tuple>
#include <utility>

namespace flarestock {

namespace {

/// Whether two attempts under one id mean the same: clock and words may have gone on, and the value
/// is the attempt's own only where it comes into the shop from there.
bool sameAction(const Movement &a, const Movement &b, bool withValue)
{
    if (withValue && a.value != b.value)
        return false;
    return std::tie(a.part, a.quantity, a.from, a.to, a.lot, a.condition, a.reverses, a.newLot,
                    a.newCondition) == std::tie(b.part, b.quantity, b.from, b.to, b.lot,
                                                b.condition, b.reverses, b.newLot, b.newCondition);
}

/// The same for records: what was expected of a count is not the counter's.
bool sameRecord(Record a, Record b)
{
    a.fields.erase("expected");
    b.fields.erase("expected");
    return std::tie(a.kind, a.subject, a.fields) == std::tie(b.kind, b.subject, b.fields);
}

[[noreturn]] void throwOtherUnder(const char *what, const MovementId &id)
{
    throw StorageFailure{{std::string(what) + id.text(),
                          "stands in the journal already and says something else",
                          "Give this one an id of its own."}};
}

} // namespace

JournalWriter::JournalWriter(ShopConnection &connection, Promised promised)
    : m_connection(connection), m_promised(promised),
      m_ledger(placesIn(connection), costingIn(connection)), m_end(connection.chainEnd())
{
}

std::optional<Movement> JournalWriter::standing(const MovementId &id) const
{
    std::optional<Movement> found;
    m_connection.runAgain(sql::SelectMovement, {idBytes(id)},
                          [&](const QSqlQuery &row) { found = journalRow(row).movement; });
    return found;
}

void JournalWriter::learn(const std::string &part)
{
    if (part.empty() || !m_learnt.insert(part).second)
        return;
    m_connection.runAgain(sql::SelectBalancesOfPart, {text(part)},
                          [this](const QSqlQuery &row) { carryBalance(QueryRow(row), m_ledger); });
    if (m_ledger.costing() == Costing::FirstInFirstOut)
        learnLayers(part);
    m_connection.runAgain(sql::SelectClaimsOfPart, {text(part)},
                          [this](const QSqlQuery &row) { carryClaim(QueryRow(row), m_ledger); });
}

void JournalWriter::learnLayers(const std::string &part)
{
    m_connection.runAgain(sql::SelectLayersOfPart, {text(part)},
                          [this](const QSqlQuery &row) { carryLayer(QueryRow(row), m_ledger); });
    m_connection.runAgain(sql::CountMovementsOfPart, {text(part)}, [&](const QSqlQuery &row) {
        m_ledger.countOn(part, row.value(0).toLongLong());
    });
}

void JournalWriter::learnReversed(const MovementId &reversed)
{
    if (m_ledger.knows(reversed))
        return; // Of this very action.
    if (const auto past = standing(reversed))
        m_ledger.know(*past, m_connection.one(sql::SelectReversal, {idBytes(reversed)}).isValid(),
                      movedBefore(*past));
}

/// Which layers a movement took along stands nowhere: the part's history says it.
Layers JournalWriter::movedBefore(const Movement &past)
{
    if (m_ledger.costing() != Costing::FirstInFirstOut)
        return {};
    const auto [at, isNew] = m_histories.try_emplace(
        past.part, std::vector<Place>(m_ledger.places().begin(), m_ledger.places().end()),
        Costing::FirstInFirstOut);
    Ledger &history = at->second;
    if (isNew)
        m_connection.runAgain(sql::SelectMovementsOfPart, {text(past.part)},
                              [&history](const QSqlQuery &row) {
                                  const auto movement = journalRow(row).movement;
                                  if (const auto refusal = history.take(movement))
                                      refuse(movement, *refusal);
                              });
    return history.movedBy(past.id);
}

void JournalWriter::write(const BalanceKey &key) const
{
    const auto balance = m_ledger.balance(key);
    auto values = keyValues(key);
    if (balance.isNothing()) {
        m_connection.runAgain(sql::DropBalance, values);
        return;
    }
    values.emplace_back(isStock(m_ledger.place(key.place)->kind) ? 1 : 0);
    values.emplace_back(number(balance.quantity));
    values.emplace_back(number(balance.value));
    m_connection.runAgain(sql::PutBalance, values);
}

void JournalWriter::writeLayers(const BalanceKey &key, const Layers &before) const
{
    const Layers &now = m_ledger.layersAt(key);
    for (const auto &[rank, layer] : before) {
        if (!now.contains(rank))
            m_connection.runAgain(sql::DropLayer, layerKeyValues(key, rank));
    }
    for (const auto &[rank, layer] : now) {
        const auto was = before.find(rank);
        if (was == before.end() || !(was->second == layer))
            m_connection.runAgain(sql::PutLayer, layerValues(key, rank, layer));
    }
}

void JournalWriter::write(const ClaimKey &key) const
{
    const auto claim = m_ledger.claim(key);
    if (claim.isNothing())
        m_connection.runAgain(sql::DropClaim, {text(key.part), text(key.build)});
    else
        m_connection.runAgain(sql::PutClaim, {text(key.part), text(key.build),
                                              number(claim.promised), number(claim.issued)});
}

void JournalWriter::refuse(const Movement &movement, Refusal refusal)
{
    throw StorageFailure{
        {"movement of " + movement.part + " from " + movement.from + " to " + movement.to,
         std::string(text(refusal)),
         "Look at the stock of " + movement.part + " and correct the movement."}};
}

void JournalWriter::throwIfPromised(const Movement &movement) const
{
    if (m_promised == Promised::MayGo)
        return;
    std::string builds;
    const Claims &claims = m_ledger.claims();
    for (auto at = claims.lower_bound(ClaimKey{movement.part, {}});
         at != claims.end() && at->first.part == movement.part; ++at) {
        if (at->first.build != movement.document && at->second.outstanding() > 0)
            builds += (builds.empty() ? "" : ", ") + at->first.build;
    }
    if (builds.empty() ||
        m_ledger.takesPromised(movement, barsIn(m_connection, movement.part)) == 0)
        return;
    throw StorageFailure{
        {"movement of " + movement.part + " from " + movement.from + " to " + movement.to,
         "takes what is promised to " + builds,
         "Let go of the promise first, or say that it may be taken all the same."}};
}

void JournalWriter::chain(ChainPlace &place, const std::vector<std::uint8_t> &bytes)
{
    place.replica = m_end.replica;
    place.sequence = ++m_end.entries;
    place.lamport = m_end.lamport = m_connection.nextLamport(m_end.lamport);
    place.hash = chainHash(place, bytes, m_end.head, m_end.id);
    m_end.head = place.hash;
}

Balance JournalWriter::balance(const BalanceKey &key)
{
    learn(key.part);
    return m_ledger.balance(key);
}

const WhatIsAway &JournalWriter::away()
{
    if (!m_away)
        m_away = WhatIsAway::in(m_connection);
    return *m_away;
}

void JournalWriter::touchWhatIsAway()
{
    m_away = WhatIsAway();
}

const Ledger &JournalWriter::knowing(const std::string &part)
{
    learn(part);
    return m_ledger;
}

Appended JournalWriter::append(Movement movement)
{
    if (const auto before = standing(movement.id)) {
        const Place *from = m_ledger.place(movement.from);
        if (!sameAction(*before, movement, from && bringsValue(from->kind)))
            throwOtherUnder("movement ", movement.id);
        return {movement.id, true};
    }
    learn(movement.part);
    if (movement.reverses)
        learnReversed(*movement.reverses);
    throwIfAway(movement);
    if (m_ledger.place(movement.from) != nullptr && (movement.quantity > 0 || movement.reverses))
        movement.value = m_ledger.valueOf(movement);
    const auto bench = m_ledger.benchValue();
    if (const auto refusal = m_ledger.refusal(movement))
        refuse(movement, *refusal);
    throwIfPromised(movement);
    for (const BalanceKey &key : {source(movement), target(movement)})
        m_balances.try_emplace(key, m_ledger.layersAt(key));
    if (const auto refusal = m_ledger.apply(movement))
        refuse(movement, *refusal);
    m_benchChange += m_ledger.benchValue() - bench;
    JournalRow row{{}, movement};
    chain(row, canonicalBytes(movement));
    m_connection.runAgain(sql::InsertMovement, valuesOf(row));
    if (const auto issued = issuedBy(movement))
        m_claims.insert(issued->claim);
    return {movement.id, false};
}

void JournalWriter::applyPromise(const Record &record)
{
    const auto promise = Promise::read(record);
    if (!promise)
        throw StorageFailure{promise.error()};
    learn(promise->part);
    const auto refuse = [&promise](std::string why) {
        throw StorageFailure{
            {"promise of " + promise->part + " to " + promise->build, std::move(why),
             "Look at the stock of " + promise->part + ", and at what is promised of it."}};
    };
    const auto refusal = m_ledger.refusal(*promise);
    if (refusal)
        refuse(std::string(text(*refusal)));
    const Bars bars = barsIn(m_connection, promise->part);
    if (auto with = away().keepsFrom(*promise, m_ledger, bars); !with.empty())
        refuse("asks for what is not here: the rest is " + with);
    if (!m_ledger.canBeKept(*promise, bars))
        refuse("asks for more than it may use: the rest is another car's, or past its day by then");
    static_cast<void>(m_ledger.apply(*promise));
    m_claims.insert(ClaimKey{promise->part, promise->build});
}

Appended JournalWriter::append(const Record &record)
{
    std::optional<Record> before;
    m_connection.runAgain(sql::SelectRecord, {idBytes(record.id)},
                          [&](const QSqlQuery &row) { before = recordRow(row).record; });
    if (before) {
        if (!sameRecord(*before, record))
            throwOtherUnder("record ", record.id);
        return {record.id, true};
    }
    throwIfAway(record);
    if (record.kind == RecordKind::Promise)
        applyPromise(record);
    else
        throwIfNotBought(m_connection, record);
    RecordRow row{{}, record};
    chain(row, canonicalBytes(record));
    m_connection.runAgain(sql::InsertRecord, valuesOf(row));
    return {record.id, false};
}

void JournalWriter::finish()
{
    if (m_benchChange != 0)
        throw StorageFailure{{"the action", "leaves value at the bench",
                              "What comes off the bench has to be worth what went onto it."}};
    for (const auto &[key, layersBefore] : m_balances) {
        write(key);
        writeLayers(key, layersBefore);
    }
    for (const ClaimKey &key : m_claims)
        write(key);
    m_connection.runAgain(sql::UpdateReplica, {number(m_end.entries), number(m_end.lamport),
                                               m_end.head, number(m_end.replica)});
}

} // namespace flarestock
