// SPDX-License-Identifier: MIT
//
// Decision: what somebody has decided where a copy that was brought back and the shop disagreed.
// And an entry of the copy that cannot stand as it is, because what it takes back was taken back
// here as well, or because its id is known here: it is kept as a record with its words, so that its
// chain stays whole, and moves nothing by itself.

#pragma once

#include "model/journal/record.h"

namespace flarestock {

struct Decision {
    MovementId id;
    std::string about; ///< What disagreed, by its name: "count BK-A at A1".
    std::string what;  ///< The sentence that was shown.
    std::string word;  ///< What was decided: "shop".
    std::string trip;  ///< The copy's.
    std::string who;
    std::string why;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
};

/// An entry as it was written; `bytes` are its canonical ones, over which its hash is.
struct KeptEntry {
    MovementId original;
    std::string what; ///< For people: "movement of 2 of BK-A from A1 to used-up".
    std::vector<std::uint8_t> bytes;
    std::string who;
    std::int64_t at = 0;

    /// Under an id of its own. The same entry gives the same record.
    [[nodiscard]] Record asRecord(const MovementId &id) const;
};
/// The bytes that a record keeps; nothing where it keeps none, which is what others do.
[[nodiscard]] std::optional<std::vector<std::uint8_t>> keptBytes(const Record &record);

} // namespace flarestock
