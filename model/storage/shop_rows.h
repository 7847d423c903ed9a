// SPDX-License-Identifier: MIT
//
// Shop rows: movements, places and looks into boxes to rows and back, and the sha256 seals that
// make a change from outside show.

#pragma once

#include "model/journal/canonical_bytes.h"
#include "model/storage/shop_connection.h"

#include <QByteArray>

namespace flarestock {

/// A movement as the journal holds it, with its place in the chain of its replica.
struct JournalRow {
    std::int64_t replica = 0;
    std::int64_t sequence = 0;
    std::int64_t lamport = 0;
    QByteArray hash;
    Movement movement;
};

/// Never null, so that "" binds as ''. Throws StorageFailure where it would not come back as it
/// went in: bytes that are not UTF-8, or a byte-order mark at its beginning, which SQLite drops.
[[nodiscard]] QString text(const std::string &text);
/// The text behind a byte-order mark, as spreadsheets write one.
[[nodiscard]] std::string withoutMark(const std::string &text);
[[nodiscard]] QByteArray idBytes(const MovementId &id);

/// The row that stands there. Throws StorageFailure where it cannot be one of ours.
[[nodiscard]] JournalRow journalRow(const QSqlQuery &query);
[[nodiscard]] BoxCheck boxCheckRow(const QSqlQuery &query);
[[nodiscard]] QVariantList valuesOf(const JournalRow &row);
[[nodiscard]] std::string missingText(const std::vector<std::string> &missing);
[[nodiscard]] std::vector<std::string> missingOf(const std::string &text);

/// sha256 of a record: of previous ‖ bytes where it stands in a chain.
[[nodiscard]] QByteArray sealOf(const std::vector<std::uint8_t> &bytes,
                                const QByteArray &previous = {});
[[nodiscard]] QByteArray shopSeal(const std::string &title, const std::string &currency,
                                  std::int64_t madeAt);
/// sha256(previous ‖ replica, sequence, lamport ‖ the movement's canonical bytes).
[[nodiscard]] QByteArray chainHash(const JournalRow &row, const QByteArray &previous,
                                   const QByteArray &replicaId);

} // namespace flarestock
