// SPDX-License-Identifier: MIT
//
// How the journal's writer takes in entries of another chain, and keeps its hands off what is with
// a copy.

#include "model/storage/journal_writer.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

namespace {

[[noreturn]] void refuseAway(const std::string &what, const std::string &with)
{
    throw StorageFailure{{what, "is " + with,
                          "Wait until it is brought back, or release the place: then the shop uses "
                          "it all the same."}};
}

} // namespace

void JournalWriter::throwIfAway(const Movement &movement)
{
    if (movement.quantity == 0)
        return; // No piece is touched.
    for (const std::string &place : {movement.from, movement.to}) {
        if (const auto with = away().whoHas(place); !with.empty())
            refuseAway("what lies at " + place, with);
    }
}

void JournalWriter::throwIfAway(const Record &record)
{
    if (record.kind != RecordKind::Count)
        return;
    if (const auto with = away().whoHas(record.field("place")); !with.empty())
        refuseAway("what lies at " + record.field("place"), with);
}

std::int64_t JournalWriter::takeIn(JournalRow row)
{
    const Movement &movement = row.movement;
    learn(movement.part);
    if (movement.reverses)
        learnReversed(*movement.reverses);
    const auto bench = m_ledger.benchValue();
    for (const BalanceKey &key : {source(movement), target(movement)})
        m_balances.try_emplace(key, m_ledger.layersAt(key));
    if (const auto refusal = m_ledger.take(movement))
        refuse(movement, *refusal);
    m_benchChange += m_ledger.benchValue() - bench;
    row.lamport = m_end.lamport = m_connection.nextLamport(m_end.lamport);
    m_connection.runAgain(sql::InsertMovement, valuesOf(row));
    if (const auto issued = issuedBy(movement))
        m_claims.insert(issued->claim);
    return row.lamport;
}

std::int64_t JournalWriter::takeIn(RecordRow row)
{
    if (row.record.kind == RecordKind::Promise) {
        const auto promise = Promise::read(row.record);
        if (!promise)
            throw StorageFailure{promise.error()};
        learn(promise->part);
        if (const auto refusal = m_ledger.take(*promise))
            throw StorageFailure{{"promise of " + promise->part + " to " + promise->build,
                                  std::string(text(*refusal)),
                                  "Run flarestock verify on the copy."}};
        m_claims.insert(ClaimKey{promise->part, promise->build});
    }
    row.lamport = m_end.lamport = m_connection.nextLamport(m_end.lamport);
    m_connection.runAgain(sql::InsertRecord, valuesOf(row));
    return row.lamport;
}

} // namespace flarestock
