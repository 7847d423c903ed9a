// SPDX-License-Identifier: MIT
//
// Journal writer: appends movements inside a transaction that somebody else holds: judged by the
// ledger's rules on the balances that they touch, chained, balances kept.

#pragma once

#include "model/journal/ledger.h"
#include "model/storage/shop_file.h"
#include "model/storage/shop_rows.h"

namespace flarestock {

class JournalWriter {
public:
    /// Throws StorageFailure where the file has no replica to write as.
    explicit JournalWriter(ShopConnection &connection);

    /// One movement. Throws StorageFailure: refused, or its id stands there for something else.
    [[nodiscard]] Appended append(Movement movement);
    /// Writes the head of the chain; once, behind the last append().
    void finish();

private:
    [[nodiscard]] std::optional<Movement> standing(const MovementId &id) const;
    void learn(const Movement &movement);
    void keep(const BalanceKey &key);
    [[noreturn]] void refuse(const Movement &movement, Refusal refusal) const;

    ShopConnection &m_connection;
    Ledger m_ledger; ///< Only what the movements touch.
    std::int64_t m_replica = 0;
    QByteArray m_replicaId;
    std::int64_t m_movements = 0;
    std::int64_t m_lamport = 0;
    QByteArray m_head;
};

/// The places as the file has them, nearest first. Throws StorageFailure.
[[nodiscard]] std::vector<Place> placesIn(const ShopConnection &connection);

} // namespace flarestock
