// SPDX-License-Identifier: MIT

#include "model/netting/lying.h"

#include "model/parts/cutting.h"

#include <algorithm>

namespace flarestock {

namespace {

/// What may be used of a part, by whereabouts.
struct Pieces {
    std::optional<Quantity> got;
    std::vector<Quantity> here;
    std::vector<Quantity> onTheWay;
};

bool isHere(PlaceKind kind)
{
    return isStock(kind) && kind != PlaceKind::Drawer;
}

Pieces piecesOf(const BillLine &line, const Ledger &ledger, const Ledger::For &whom)
{
    const Part &part = *line.part;
    Pieces pieces;
    const std::int64_t issued = ledger.claim({part.number, std::string(whom.build)}).issued;
    if (issued > 0)
        pieces.got = Quantity::ofSmallest(issued, part.unit);
    const auto promised = ledger.promisedAt(part, whom.bars ? *whom.bars : Bars(), whom.build);
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        const Place *place = ledger.place(key.place);
        const bool barred = whom.barred && whom.barred->contains({key.part, key.lot});
        // A tool comes back: one that is promised to another build counts, as it does in the bill.
        if (!place || (line.consumed && (barred || !isFree(key.condition))))
            continue;
        const auto taken = promised.find(key);
        const bool others = line.consumed && taken != promised.end();
        const std::int64_t free = held.quantity - (others ? taken->second : 0);
        if (free <= 0)
            continue;
        if (isHere(place->kind))
            pieces.here.push_back(Quantity::ofSmallest(free, part.unit));
        else if (place->kind == PlaceKind::InTransit)
            pieces.onTheWay.push_back(Quantity::ofSmallest(free, part.unit));
    }
    return pieces;
}

Decimal sum(const std::vector<Quantity> &quantities)
{
    Decimal all;
    for (const Quantity &one : quantities)
        all += one.amount;
    return all;
}

/// What the build has got and these pieces give to the line, as price() reckons it.
Decimal given(const BillLine &line, const std::optional<Quantity> &got,
              const std::vector<Quantity> &pieces)
{
    if (line.cuts.empty())
        return sum(pieces) + (got ? got->amount : Decimal());
    FreeStock stock;
    stock.pieces = pieces;
    stock.cutBefore = got;
    return cuttable(line.cuts, stock);
}

} // namespace

Lying lyingOf(const PricedLine &priced, const Ledger &ledger, const Ledger::For &whom)
{
    const BillLine &line = *priced.line;
    const Pieces pieces = piecesOf(line, ledger, whom);
    const Decimal none;
    Lying lying;
    lying.got = std::clamp(given(line, pieces.got, {}), none, priced.free);
    const Decimal inShop = given(line, pieces.got, pieces.here) - lying.got;
    lying.here = std::clamp(inShop, none, priced.free - lying.got);
    lying.inTrailer = priced.free - lying.got - lying.here;
    if (priced.shortBy.sign() <= 0)
        return lying;
    // A cut of what is on its way may be any of the lengths that are still missing.
    lying.onTheWay = std::clamp(given(line, {}, pieces.onTheWay), none, priced.shortBy);
    return lying;
}

} // namespace flarestock
