// SPDX-License-Identifier: MIT
//
// Journal writer: appends movements and records inside a transaction that somebody else holds:
// judged by the ledger's rules on the parts that they touch, chained, balances and claims kept.

#pragma once

#include "model/journal/ledger.h"
#include "model/storage/shop_file.h"
#include "model/storage/shop_rows.h"
#include "model/storage/trailer/away.h"

namespace flarestock {

class JournalWriter {
public:
    /// Throws StorageFailure where the shop has no replica to write as.
    explicit JournalWriter(ShopConnection &connection, Promised promised = Promised::Stays);

    /// One movement. Throws StorageFailure: refused, or its id stands there for something else.
    [[nodiscard]] Appended append(Movement movement);
    /// One record; a promise is judged. Throws as above.
    [[nodiscard]] Appended append(const Record &record);
    /// What the shop says of it now, this writer's entries included.
    [[nodiscard]] Balance balance(const BalanceKey &key);
    /// The ledger as far as it is known here: of that part all of it.
    [[nodiscard]] const Ledger &knowing(const std::string &part);
    /// From now on also what is with a copy of the shop.
    void touchWhatIsAway();
    /// An entry of another chain, as it was written there (trailer/entries_taken_in.cpp): it keeps
    /// id, hash and number in its chain, whose number is this shop's for it, and gets its place in
    /// the order behind all that stands. Throws StorageFailure: it cannot stand here.
    /// Returns that place.
    std::int64_t takeIn(JournalRow row);
    std::int64_t takeIn(RecordRow row);
    /// Writes what the balances and claims have become, each once, and the head of the chain; once,
    /// behind the last append(). Throws StorageFailure where value was left at the bench.
    void finish();

private:
    [[nodiscard]] std::optional<Movement> standing(const MovementId &id) const;
    void learn(const std::string &part);
    void learnLayers(const std::string &part);
    void learnReversed(const MovementId &reversed);
    [[nodiscard]] Layers movedBefore(const Movement &past);
    void write(const BalanceKey &key) const;
    void writeLayers(const BalanceKey &key, const Layers &before) const;
    void write(const ClaimKey &key) const;
    void chain(ChainPlace &place, const std::vector<std::uint8_t> &bytes);
    void applyPromise(const Record &record);
    void throwIfPromised(const Movement &movement) const;
    void throwIfAway(const Movement &movement);
    void throwIfAway(const Record &record);
    [[nodiscard]] const WhatIsAway &away();
    [[noreturn]] static void refuse(const Movement &movement, Refusal refusal);

    ShopConnection &m_connection;
    Promised m_promised;
    std::set<std::string> m_learnt;
    Ledger m_ledger; ///< Only of the parts in m_learnt.
    /// Of parts of which something is taken back, first in, first out: their whole history.
    std::map<std::string, Ledger> m_histories;
    std::map<BalanceKey, Layers> m_balances; ///< Those that have changed, with their layers before.
    std::set<ClaimKey> m_claims;
    std::int64_t m_benchChange = 0;
    ChainEnd m_end;
    std::optional<WhatIsAway> m_away; ///< Read when it is asked for.
};

} // namespace flarestock
