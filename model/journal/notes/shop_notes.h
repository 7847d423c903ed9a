// SPDX-License-Identifier: MIT
//
// Shop notes: the fold of the records: what is known of lots and how the builds stand. The newest
// word on a matter counts.

#pragma once

#include "model/journal/notes/build_log.h"
#include "model/journal/notes/lot_facts.h"

namespace flarestock {

struct BuildStanding {
    std::vector<LeakTest> tests; ///< Oldest first.
    std::optional<BuildDone> done;
    [[nodiscard]] bool isDone() const noexcept { return done && !done->open; }
};

struct ShopNotes {
    LotBook lots;
    std::map<std::string, BuildStanding, std::less<>> builds;

    /// In the order of the fold. Problem: a record that is not what its kind says.
    [[nodiscard]] static Result<ShopNotes> of(const std::vector<Record> &records);
    [[nodiscard]] const BuildStanding &build(std::string_view id) const;
};

} // namespace flarestock
