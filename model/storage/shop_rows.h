// SPDX-License-Identifier: MIT
//
// Shop rows: movements, places and looks into boxes to rows and back, and the sha256 seals that
// make a change from outside show.

#pragma once

#include "model/journal/canonical_bytes.h"
#include "model/journal/ledger.h"
#include "model/storage/shop_connection.h"

#include <QByteArray>

namespace flarestock {

/// Where an entry stands: in the chain of its replica, and in the order of all.
struct ChainPlace {
    std::int64_t replica = 0;
    std::int64_t sequence = 0;
    std::int64_t lamport = 0;
    QByteArray hash;
};
/// The order in which everything is folded.
[[nodiscard]] bool isBefore(const ChainPlace &a, const ChainPlace &b);

/// A movement as the journal holds it.
struct JournalRow : ChainPlace {
    Movement movement;
};
/// A record as the journal holds it.
struct RecordRow : ChainPlace {
    Record record;
};

/// Never null, so that "" binds as ''. Throws StorageFailure where it would not come back as it
/// went in: bytes that are not UTF-8, a NUL, which PostgreSQL does not take, or a byte-order mark
/// at its beginning, which SQLite drops.
[[nodiscard]] QString text(const std::string &text);
/// The text behind a byte-order mark, as spreadsheets write one.
[[nodiscard]] std::string withoutMark(const std::string &text);
/// As the database takes it.
[[nodiscard]] QVariant number(std::int64_t number);
[[nodiscard]] QByteArray idBytes(const MovementId &id);
/// Back from a column. Throws StorageFailure where it is none.
[[nodiscard]] MovementId idOf(const QByteArray &bytes);

/// Of a row of movements or of records, whatever else it holds.
[[nodiscard]] ChainPlace chainPlace(const StoredRow &stored);
[[nodiscard]] ChainPlace chainPlace(const QSqlQuery &query);
/// The row that stands there. Throws StorageFailure where it cannot be one of ours.
[[nodiscard]] JournalRow journalRow(const StoredRow &stored);
[[nodiscard]] JournalRow journalRow(const QSqlQuery &query);
[[nodiscard]] BoxCheck boxCheckRow(const QSqlQuery &query);
[[nodiscard]] RecordRow recordRow(const QSqlQuery &query);
/// The balance, layer or claim that stands there becomes known to the ledger.
void carryBalance(const StoredRow &stored, Ledger &ledger);
BalanceKey carryLayer(const StoredRow &stored, Ledger &ledger);
void carryClaim(const StoredRow &stored, Ledger &ledger);
[[nodiscard]] Values valuesOf(const JournalRow &row);
[[nodiscard]] Values valuesOf(const RecordRow &row);
/// Of a balance, bound by part, place, lot, condition.
[[nodiscard]] Values keyValues(const BalanceKey &key);
/// The same and the rank; and what the layer is.
[[nodiscard]] Values layerKeyValues(const BalanceKey &key, std::int64_t rank);
[[nodiscard]] Values layerValues(const BalanceKey &key, std::int64_t rank, const Balance &layer);
[[nodiscard]] std::string missingText(const std::vector<std::string> &missing);
[[nodiscard]] std::vector<std::string> missingOf(const std::string &text);

/// sha256 of a record: of previous ‖ bytes where it stands in a chain.
[[nodiscard]] QByteArray sealOf(const std::vector<std::uint8_t> &bytes,
                                const QByteArray &previous = {});
/// sha256(previous ‖ replica, sequence, lamport ‖ the entry's canonical bytes).
[[nodiscard]] QByteArray chainHash(const ChainPlace &place, const std::vector<std::uint8_t> &bytes,
                                   const QByteArray &previous, const QByteArray &replicaId);

} // namespace flarestock
