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

#include <algorithm>
#include <cstdint>

namespace flarestock {

/// 1/16 in, in lengths of 125 nm: what a cut-off wheel takes away (common practice, no source).
inline constexpr std::int64_t UsualKerf = 203'200 / 16;

/// What of a piece is left behind a cut; nothing where the kerf takes the rest.
template <class Length>
[[nodiscard]] Length leftBehind(const Length &piece, const Length &length, const Length &kerf)
{
    return std::max(Length(), piece - length - kerf);
}

class CutPieces {
public:
    /// Nothing to cut from.
    CutPieces() = default;
    /// What of the stock is free; `unit` is a length, and that of every length said to it.
    CutPieces(const FreeStock &stock, Unit unit);
    /// These pieces, and what a cut costs, in one unit.
    CutPieces(const std::vector<Decimal> &pieces, Decimal kerf);

    /// Whether one piece still holds this length.
    [[nodiscard]] bool holds(const Decimal &length) const;
    /// Cuts it: what was cut for this build before goes first. False, and nothing cut, where no
    /// piece holds it.
    bool cut(const Decimal &length);
    /// Cuts it off a piece that lies there, and says which, counted from 0 in the order in which
    /// they were given; of pieces that are as short the first. Nothing where no piece holds it.
    std::optional<std::size_t> cutOff(const Decimal &length);
    [[nodiscard]] Decimal longest() const; ///< Zero where there is none.

private:
    struct Piece {
        Decimal left;
        std::size_t index = 0;
        friend auto operator<=>(const Piece &, const Piece &) = default;
    };
    void add(Decimal length);

    Decimal m_kerf;
    Decimal m_cutBefore;
    std::vector<Piece> m_shortestFirst;
};

/// How much of `cuts` (one unit, in any order) the stock gives; whole cuts only.
[[nodiscard]] Decimal cuttable(std::vector<Quantity> cuts, const FreeStock &stock);

} // namespace flarestock
