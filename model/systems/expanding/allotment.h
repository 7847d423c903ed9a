// SPDX-License-Identifier: MIT
//
// Allotment: what is left on the shelf while a build is being put together, so that no piece is
// counted on twice. Each station, joint and line takes what it uses; the next sees the rest.

#pragma once

#include "model/joints/way.h"
#include "model/parts/catalogue.h"
#include "model/parts/cutting.h"

#include <unordered_map>

namespace flarestock {

class Allotment {
public:
    /// Both outlive it; no shelf is an empty one.
    Allotment(const Catalogue &catalogue, const Shelf *shelf);

    /// In the part's unit; never negative, also where more was taken than there is.
    [[nodiscard]] Decimal left(const Part &part);
    void take(const Part &part, const Decimal &count);

    /// Whether one free piece still holds this length (in the part's unit).
    [[nodiscard]] bool holds(const Part &part, const Decimal &length);
    /// Cuts it from a piece that holds it; from none where none does.
    void cut(const Part &part, const Decimal &length);

    /// The pieces and aids of a way; a bottle of sealant is taken once.
    void take(const Way &way);

    /// What so much of it costs: carried where it is here, else by the best offer. To 6 decimals,
    /// half-even: for comparing, never for a bill. Nothing where it has no price.
    [[nodiscard]] std::optional<Decimal> cost(const Part &part, const Decimal &count, bool here);

    [[nodiscard]] const FreeStock *stock(const Part &part);
    [[nodiscard]] const Catalogue &catalogue() const noexcept { return m_catalogue; }

private:
    struct Entry {
        const FreeStock *stock = nullptr;
        Decimal taken;
        CutPieces pieces; ///< Of what is cut.
    };
    Entry &entry(const Part &part);

    const Catalogue &m_catalogue;
    const Shelf *m_shelf;
    std::unordered_map<const Part *, Entry> m_entries;
};

/// How many a joint takes of an aid. Of sealant one bottle does for the whole build.
[[nodiscard]] Decimal countOf(const WayAid &aid);

} // namespace flarestock
