// SPDX-License-Identifier: MIT
//
// Cutting: whole lengths off the pieces that a hose or tubing lies in. None is joined from two; the
// longest is cut first, each from the shortest piece that still holds it, and each cut costs its
// kerf, unless it uses the piece up to its end. Bill, findings, promises and the saw go by this.
//
//   CutPieces pieces(stock, Unit::Inch);
//   if (!pieces.cut(Decimal(60)))
//       …order a coil

#pragma once

#include "model/parts/free_stock.h"

#include <cstdint>

namespace flarestock {

/// 1/16 in, in lengths of 125 nm: what a cut-off wheel takes away (common practice, no source).
inline constexpr std::int64_t UsualKerf = 203'200 / 16;

class CutPieces {
public:
    /// Nothing to cut from.
    CutPieces() = default;
    /// What of the stock is free; `unit` is a length, and that of every length said to it.
    CutPieces(const FreeStock &stock, Unit unit);

    /// Whether one piece still holds this length.
    [[nodiscard]] bool holds(const Decimal &length) const;
    /// Cuts it: what was cut for this build before goes first. False, and nothing cut, where no
    /// piece holds it.
    bool cut(const Decimal &length);

private:
    Decimal m_kerf;
    Decimal m_cutBefore;
    std::vector<Decimal> m_shortestFirst;
};

/// How much of `cuts` (one unit, in any order) the stock gives; whole cuts only.
[[nodiscard]] Decimal cuttable(std::vector<Quantity> cuts, const FreeStock &stock);

} // namespace flarestock
