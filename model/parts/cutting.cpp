// SPDX-License-Identifier: MIT

#include "model/parts/cutting.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

/// A length in `unit`; between inch and millimetre it may not end, and is then cut short below.
Decimal inUnit(const Quantity &length, Unit unit)
{
    if (length.unit == unit)
        return length.amount;
    const auto converted = length.in(unit);
    assert(converted && "pieces and cuts of one part are lengths");
    return converted->toDecimal(6, Rounding::Floor);
}

} // namespace

CutPieces::CutPieces(const FreeStock &stock, Unit unit)
    : m_kerf(Quantity::ofSmallest(UsualKerf, unit).amount),
      m_cutBefore(inUnit(stock.cutBefore.value_or(Quantity{Decimal(), unit}), unit))
{
    for (const Quantity &piece : stock.pieces)
        add(inUnit(piece, unit));
    if (stock.pieces.empty() && !stock.cutBefore && stock.free.amount.sign() > 0)
        add(inUnit(stock.free, unit));
    std::sort(m_shortestFirst.begin(), m_shortestFirst.end());
}

CutPieces::CutPieces(const std::vector<Decimal> &pieces, Decimal kerf) : m_kerf(std::move(kerf))
{
    for (const Decimal &piece : pieces)
        add(piece);
    std::sort(m_shortestFirst.begin(), m_shortestFirst.end());
}

void CutPieces::add(Decimal length)
{
    m_shortestFirst.push_back({std::move(length), m_shortestFirst.size()});
}

Decimal CutPieces::longest() const
{
    return m_shortestFirst.empty() ? Decimal() : m_shortestFirst.back().left;
}

bool CutPieces::holds(const Decimal &length) const
{
    return m_cutBefore >= length || (!m_shortestFirst.empty() && longest() >= length);
}

bool CutPieces::cut(const Decimal &length)
{
    if (m_cutBefore >= length) {
        m_cutBefore -= length;
        return true;
    }
    return cutOff(length).has_value();
}

std::optional<std::size_t> CutPieces::cutOff(const Decimal &length)
{
    const auto piece =
        std::lower_bound(m_shortestFirst.begin(), m_shortestFirst.end(), Piece{length, 0});
    if (piece == m_shortestFirst.end())
        return std::nullopt;
    const std::size_t index = piece->index;
    piece->left = leftBehind(piece->left, length, m_kerf);
    // The rest moves to its place among the shorter ones.
    std::rotate(std::lower_bound(m_shortestFirst.begin(), piece, *piece), piece, piece + 1);
    return index;
}

Decimal cuttable(std::vector<Quantity> cuts, const FreeStock &stock)
{
    if (cuts.empty())
        return {};
    const Unit unit = cuts.front().unit;
    CutPieces pieces(stock, unit);
    std::sort(cuts.begin(), cuts.end(),
              [](const Quantity &a, const Quantity &b) { return a.amount > b.amount; });
    Decimal sum;
    for (const Quantity &cut : cuts) {
        assert(cut.unit == unit && "the cuts of a line have one unit");
        if (pieces.cut(cut.amount))
            sum += cut.amount;
    }
    return sum;
}

} // namespace flarestock
