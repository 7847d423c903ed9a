// SPDX-License-Identifier: MIT

#include "model/storage/journal_writer.h"

#include "model/storage/shop_sql.h"

#include <tuple>

namespace flarestock {

namespace {

QVariantList keyValues(const BalanceKey &key)
{
    return {text(key.part), text(key.place), text(key.lot), text(std::string(text(key.condition)))};
}

/// Whether two attempts under one id mean the same: clock and words may have gone on, and the value
/// is the attempt's own only where it comes into the shop from there.
bool sameAction(const Movement &a, const Movement &b, bool withValue)
{
    if (withValue && a.value != b.value)
        return false;
    return std::tie(a.part, a.quantity, a.from, a.to, a.lot, a.condition, a.reverses) ==
           std::tie(b.part, b.quantity, b.from, b.to, b.lot, b.condition, b.reverses);
}

} // namespace

std::vector<Place> placesIn(const ShopConnection &connection)
{
    std::vector<Place> places;
    auto query = connection.run(sql::SelectPlaces);
    while (query.next()) {
        const auto kind = parsePlaceKind(query.value(3).toString().toStdString());
        if (!kind)
            throw StorageFailure{{connection.path().string(), "has a place of an unknown kind",
                                  "Do not write to it: restore the newest backup."}};
        places.push_back({query.value(1).toString().toStdString(),
                          query.value(2).toString().toStdString(), *kind});
    }
    return places;
}

JournalWriter::JournalWriter(ShopConnection &connection)
    : m_connection(connection), m_ledger(placesIn(connection))
{
    auto query = connection.run(sql::SelectReplicas);
    if (!query.next())
        throw StorageFailure{{connection.path().string(), "is a shop file that was never finished",
                              "Make it again, or use a backup."}};
    m_replica = query.value(0).toLongLong();
    m_replicaId = query.value(1).toByteArray();
    m_movements = query.value(2).toLongLong();
    m_lamport = query.value(3).toLongLong();
    m_head = query.value(4).toByteArray();
}

std::optional<Movement> JournalWriter::standing(const MovementId &id) const
{
    auto query = m_connection.run(sql::SelectMovement, {idBytes(id)});
    if (!query.next())
        return {};
    return journalRow(query).movement;
}

void JournalWriter::learn(const Movement &movement)
{
    for (const auto &key : {source(movement), target(movement)}) {
        auto query = m_connection.run(sql::SelectBalance, keyValues(key));
        if (query.next())
            m_ledger.carryOver(key, {query.value(0).toLongLong(), query.value(1).toLongLong()});
    }
    if (!movement.reverses)
        return;
    if (const auto past = standing(*movement.reverses)) {
        const bool reversed =
            m_connection.one(sql::SelectReversal, {idBytes(*movement.reverses)}).isValid();
        m_ledger.know(*past, reversed);
    }
}

void JournalWriter::keep(const BalanceKey &key)
{
    const auto balance = m_ledger.balance(key);
    auto values = keyValues(key);
    if (balance.isNothing()) {
        m_connection.run(sql::DropBalance, values);
        return;
    }
    values << (isStock(m_ledger.place(key.place)->kind) ? 1 : 0)
           << QVariant::fromValue<qlonglong>(balance.quantity)
           << QVariant::fromValue<qlonglong>(balance.value);
    m_connection.run(sql::PutBalance, values);
}

void JournalWriter::refuse(const Movement &movement, Refusal refusal) const
{
    throw StorageFailure{
        {"movement of " + movement.part + " from " + movement.from + " to " + movement.to,
         std::string(text(refusal)),
         "Look at the stock of " + movement.part + " and correct the movement."}};
}

Appended JournalWriter::append(Movement movement)
{
    if (const auto before = standing(movement.id)) {
        const Place *from = m_ledger.place(movement.from);
        if (!sameAction(*before, movement, from && bringsValue(from->kind)))
            throw StorageFailure{{"movement " + movement.id.text(),
                                  "stands in the journal already and says something else",
                                  "Give this one an id of its own."}};
        return {movement.id, true};
    }
    learn(movement);
    if (m_ledger.place(movement.from) != nullptr && movement.quantity > 0)
        movement.value = m_ledger.valueOf(movement);
    if (const auto refusal = m_ledger.apply(movement))
        refuse(movement, *refusal);
    JournalRow row{m_replica, ++m_movements, ++m_lamport, {}, movement};
    row.hash = chainHash(row, m_head, m_replicaId);
    m_head = row.hash;
    m_connection.run(sql::InsertMovement, valuesOf(row));
    keep(source(movement));
    keep(target(movement));
    return {movement.id, false};
}

void JournalWriter::finish()
{
    m_connection.run(sql::UpdateReplica, {QVariant::fromValue<qlonglong>(m_movements),
                                          QVariant::fromValue<qlonglong>(m_lamport), m_head,
                                          QVariant::fromValue<qlonglong>(m_replica)});
}

} // namespace flarestock
