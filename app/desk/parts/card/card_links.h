// SPDX-License-Identifier: MIT
//
// Card links: what a card has to do with others: what lies in its box, what fitting it uses up,
// what can stand in for it and for what it can, its element, who uses it.

#pragma once

#include "app/desk/parts/card/where_used.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// Who names a part, the other way round than the catalogue says it: by place in the catalogue.
class NamedBy {
public:
    explicit NamedBy(const Catalogue &catalogue);
    enum class As : std::uint8_t { Substitute, Box, Element };
    [[nodiscard]] std::vector<const Part *> those(const Part &named, As as) const;

private:
    const Catalogue &m_catalogue;
    std::unordered_multimap<PartIndex, std::pair<As, PartIndex>> m_names;
};

struct LinksAsked {
    const Workshop &shop;
    const Part &part;
    const NamedBy &named;
    const WhereUsed *used = nullptr; ///< Nothing: not worked out yet.
    Units units = Units::Metric;
};

/// As cardCells(); nothing of them is taken back.
[[nodiscard]] std::vector<Row> linkRows(const LinksAsked &asked);

} // namespace flarestock
