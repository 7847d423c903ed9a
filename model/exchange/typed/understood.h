// SPDX-License-Identifier: MIT
//
// Understood: what a row probably means whose cells are not right: a comma for a point, a word that
// is one letter off, a port in somebody's shorthand; what cannot be guessed and is not needed is
// left out. It is an offer to whoever is asked, never taken without being said.
//
//   understoodPort("JIC 8 fem swvl");   // "JIC -8 female swivel"

#pragma once

#include "model/exchange/typed/typed_row.h"

namespace flarestock {

struct Understood {
    struct Change {
        std::string heading;
        std::string was;
        std::string is; ///< Empty: left out.
    };
    RowCells cells; ///< Without a fault.
    std::vector<Change> changes;

    /// Whether something that stands in the row comes to nothing: a cell, or one item of its list.
    [[nodiscard]] bool leavesOut() const;
};

/// Nothing where nobody can tell: a cell that is needed says nothing that can be guessed.
[[nodiscard]] std::optional<Understood> understood(SheetKind kind, const RowCells &cells,
                                                   const RowKnows &knows);

/// The one port whose words begin like those that were typed, or hold their letters in their order;
/// empty where there is none, or several.
[[nodiscard]] std::string understoodPort(std::string_view typed);

} // namespace flarestock
