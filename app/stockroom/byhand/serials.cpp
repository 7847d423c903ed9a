// SPDX-License-Identifier: MIT

#include "app/stockroom/byhand/serials.h"

#include "model/exact/case_fold.h"

namespace flarestock {

namespace {

/// Where a piece can come in from again only after it has gone out in the book.
bool isHere(PlaceKind kind)
{
    return isStock(kind) || kind == PlaceKind::Car || kind == PlaceKind::Borrower ||
           kind == PlaceKind::Repair;
}

} // namespace

bool isKeptBySerial(const Part &part) noexcept
{
    return part.kind == Kind::Pump;
}

Result<void> onePiece(const Part &part, const std::string &name, std::int64_t quantity,
                      const Ledger &ledger)
{
    if (!isKeptBySerial(part) || name.empty())
        return {};
    const std::string piece = part.number + ", serial " + name;
    if (quantity > 1)
        return problem(piece, "is one piece, and more than one would bear it",
                       "Take in each piece with the serial that it bears.");
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        const Place *place = ledger.place(key.place);
        if (held.quantity > 0 && place && isHere(place->kind) && sameFolded(key.lot, name))
            return problem(piece, "is at " + place->id + " by the book, and a serial is one piece",
                           "Read the serial on the piece once more. If it does not lie at " +
                               place->id + " any more, count there first.");
    }
    return {};
}

} // namespace flarestock
