// SPDX-License-Identifier: MIT
//
// Own entries: what the shop writes itself while a copy is brought: settlements, decisions, the
// trip. Their ids count on from that of the bringing.

#pragma once

#include "model/storage/journal_writer.h"

namespace flarestock {

/// What a movement says that makes up for what both sides took from one place.
inline constexpr std::string_view BothSidesTook = "both sides took it";

struct OwnEntries {
    MovementId first;
    std::string who;
    std::string why;
    std::int64_t at = 0;
    std::uint64_t count = 0;

    [[nodiscard]] MovementId nextId();
    /// A movement with id, who, why and when.
    [[nodiscard]] Movement movement(const BalanceKey &from, std::int64_t quantity,
                                    const std::string &to, std::string says);
};

/// The first place of a kind. Throws StorageFailure where the shop has none.
[[nodiscard]] std::string placeOf(PlaceKind kind, const Ledger &ledger);
/// "BK-A@A1", with "/lot" and the condition where it has them: for a name.
[[nodiscard]] std::string spelt(const BalanceKey &key);

} // namespace flarestock
