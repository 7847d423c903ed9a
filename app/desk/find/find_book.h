// SPDX-License-Identifier: MIT
//
// Find book: everything of a shop that can be found by words, whichever area shows it: orders,
// claims, suppliers, builds, cars, places, lots, parts. Made once from a snapshot, away from the
// window.
//
//   "-8 orb"  "10 micron"  "C4"  "2026-0007"  "coupe"  "SN 2203"

#pragma once

#include "app/desk/rows/rows.h"
#include "app/workshop/workshop.h"

namespace flarestock {

/// In the order in which they are shown.
enum class FoundKind : std::uint8_t { Order, Claim, Supplier, Build, Car, Place, Lot, Part };
/// "order", "claim" … as it stands before each, and as a key.
[[nodiscard]] QString wordOf(FoundKind kind);
[[nodiscard]] QString keyOf(FoundKind kind);
/// As areas are asked to go to it: a supplier is gone to where orders are.
[[nodiscard]] QString areaOf(FoundKind kind);

struct FindEntry {
    FoundKind kind = FoundKind::Part;
    std::string title;
    std::string detail;
    std::string target; ///< What the area goes to: a number, an id; of a lot "PART=LOT".
    std::string sought; ///< All that it is found by, folded, one blank before each word.
};

struct FindBook {
    std::shared_ptr<const Workshop> workshop;
    std::vector<FindEntry> entries; ///< By kind.

    [[nodiscard]] static std::shared_ptr<const FindBook>
    of(const std::shared_ptr<const Workshop> &workshop);
};

/// kind title detail target area; `kind` is the word, `target` what to go to, `area` as areaOf()
/// says; the key begins with keyOf() and "|".
[[nodiscard]] QStringList foundAnywhereCells();
/// At most so many of each kind that have all the words; what begins with the first word comes
/// first. Nothing for a blank text.
[[nodiscard]] std::vector<Row> foundAnywhere(const FindBook &book, const QString &typed,
                                             std::size_t mostEach);

} // namespace flarestock
