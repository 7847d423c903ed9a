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

#include "model/joints/preference.h"
#include "model/parts/catalogue.h"
#include "model/ports/mating.h"

#include <compare>

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

/// A ring, washer, sealant or clamp that a link needs, as a part where the catalogue has it. They
/// stand in the order of the links, one for each link and need; sealant stands once for the whole
/// way, because one bottle does all its threads. What a piece's `fitting` lists (the sleeve of a
/// tube nut, the washer of a bulkhead) is not here: the bill takes it from the piece.
struct WayAid {
    Need need;
    const Part *part = nullptr; ///< nullptr: nothing in the catalogue answers the need.
};

struct Way {
    std::vector<Piece> pieces; ///< Empty where the two ports mate directly.
    std::vector<Link> links;   ///< One more than pieces.
    std::vector<WayAid> aids;
    int toBuy = 0;      ///< Pieces and aids that the shelf does not have.
    Decimal cost;       ///< Carried cost of what is here plus best offer of the rest, for each part
                        ///< rounded half-even to 6 decimals. Pieces without a price count nothing.
    bool priced = true; ///< False where some piece or aid has no price.

    [[nodiscard]] Verdict verdict() const noexcept; ///< The worst of the links.
    [[nodiscard]] int cautions() const noexcept;    ///< Links that fit with a caution.
    /// What its aids are needed for and nothing in the catalogue answers: not closed without it.
    [[nodiscard]] std::vector<Need> unanswered() const;
    [[nodiscard]] std::string key() const; ///< Part numbers joined by " + "; "direct".
};

/// What a preference looks at, one after the other; of each the less is to be preferred:
///
///   shelf:   unanswered, narrow, toBuy, pieces, cautions, unpriced, costMicro
///   joints:  unanswered, narrow, pieces, toBuy, cautions, unpriced, costMicro
///   money:   unanswered, narrow, unpriced, costMicro, cautions, toBuy, pieces
///
/// So whatever the preference, needs that nothing in the catalogue answers come before it, then
/// ports that would throttle the line; and of two ways that are alike in what the preference is
/// about, the one with fewer cautions is taken. Ties by Way::key().
struct WayRank {
    int unanswered = 0; ///< So many needs as Way::unanswered() gives.
    int toBuy = 0;
    int pieces = 0;
    int cautions = 0; ///< Links that fit with a caution.
    int unpriced = 0; ///< Pieces and aids to buy that nobody sells.
    std::int64_t costMicro = 0;
    int narrow = 0; ///< Ports of its pieces that are smaller than both ends of the joint.

    friend bool operator==(const WayRank &, const WayRank &) = default;
};
/// less: `a` is to be preferred.
[[nodiscard]] std::strong_ordering compare(const WayRank &a, const WayRank &b,
                                           Preference preference) noexcept;

} // namespace flarestock
