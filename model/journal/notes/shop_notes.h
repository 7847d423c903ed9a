// SPDX-License-Identifier: MIT
//
// Shop notes: the fold of the records: what is known of lots and how the builds stand. The newest
// word on a matter counts.

#pragma once

#include "model/journal/notes/build_log.h"
#include "model/journal/notes/keeping.h"
#include "model/journal/notes/level_seen.h"
#include "model/journal/notes/lot_facts.h"
#include "model/journal/notes/made_hose.h"
#include "model/journal/notes/opened_box.h"

namespace flarestock {

struct BuildStanding {
    std::vector<LeakTest> tests; ///< Oldest first.
    std::size_t outdated = 0;    ///< So many of them were made before its pieces changed last.
    std::optional<BuildDone> done;
    std::vector<Instead> instead; ///< Oldest first.
    /// Those that say something of it as it is now.
    [[nodiscard]] std::vector<LeakTest> testsNow() const;
    [[nodiscard]] bool isDone() const noexcept { return done && !done->open; }
};

/// A part at a place.
using PartAt = std::pair<std::string, std::string>;

struct ShopNotes {
    LotBook lots;
    std::map<std::string, BuildStanding, std::less<>> builds;
    std::map<PartAt, LevelSeen> levels;
    std::map<PartAt, Keeping> keepings;                 ///< None with a maximum of zero.
    std::map<std::string, MadeHose, std::less<>> hoses; ///< By tag.
    std::vector<OpenedBox> opened;                      ///< Oldest first.

    /// In the order of the fold; what was written down of an action that was taken back does not
    /// count. `ledger` is the fold of the movements. Problem: a record that is not what its kind
    /// says.
    [[nodiscard]] static Result<ShopNotes> of(const std::vector<Record> &records,
                                              const Ledger &ledger);
    [[nodiscard]] const BuildStanding &build(std::string_view id) const;
};

} // namespace flarestock
