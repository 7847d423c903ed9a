// SPDX-License-Identifier: MIT
//
// Way: one manner of closing a joint, from one port to another through pieces of the catalogue.
//
// Pieces stand in the order in which the fluid's path meets them from `from` to `to`; a piece goes
// in by one of its ports and out by another. Between two neighbours lies a Link with its mating;
// the rings, washers and sealant that the links need are parts too (`aids`).
//
//   ORB -8 female | AD-810 (ORB -8 male, AN -10 male) | HE-10S (AN -10 swivel, HOSE PTFE-S -10) |
//   HOSE …

#pragma once

#include "model/parts/catalogue.h"
#include "model/ports/mating.h"

namespace flarestock {

/// A piece of a way: which part, and the names of the ports by which the path enters and leaves it.
struct Piece {
    const Part *part = nullptr;
    std::string in;
    std::string out;
};

/// Two ports of neighbours that meet, with what happens there (aids counted as present).
struct Link {
    Port a;
    Port b;
    Mating mating;
};

/// A ring, washer or sealant that a link needs, as a part where the catalogue has it.
struct WayAid {
    Need need;
    const Part *part = nullptr; ///< nullptr: nothing in the catalogue answers the need.
};

struct Way {
    std::vector<Piece> pieces; ///< Empty where the two ports mate directly.
    std::vector<Link> links;   ///< One more than pieces.
    std::vector<WayAid> aids;
    int toBuy = 0;      ///< Pieces and aids that the shelf does not have.
    Decimal cost;       ///< Carried cost of what is here plus best offer of the rest; exact
                        ///< to 6 decimals. Pieces without any price count nothing.
    bool priced = true; ///< False where some piece has no price.

    [[nodiscard]] Verdict verdict() const noexcept; ///< The worst of the links.
    [[nodiscard]] std::string key() const;          ///< Part numbers joined by " + "; "direct".
};

} // namespace flarestock
