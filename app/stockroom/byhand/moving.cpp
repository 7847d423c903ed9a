// SPDX-License-Identifier: MIT

#include "app/stockroom/byhand/moving.h"

#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

/// What it is from then on, and until when it is lent.
Result<void> addWhatChanges(const MoveWords &asked, const StockAsked &stock, Movement &movement)
{
    const Place &from = *stock.from;
    const Place &to = *stock.to;
    if (!asked.now.empty()) {
        const auto now = parsePieceCondition(asked.now);
        if (!now)
            return tl::unexpected(now.error());
        if (*now != movement.condition)
            movement.newCondition = *now;
        movement.deed = movement.from == movement.to ? Deed::Judge : movement.deed;
    }
    const bool isAway = to.kind == PlaceKind::Borrower || to.kind == PlaceKind::Repair ||
                        from.kind == PlaceKind::Borrower ||
                        (from.kind == PlaceKind::Car && to.kind == PlaceKind::Car);
    if (!asked.until.empty() && !isAway)
        return problem(to.id, "is nobody whom something is lent to, and no repairer",
                       "Leave out --until, or name a place of the kind borrower or repair.");
    movement.until = asked.until;
    if (to.kind == PlaceKind::Borrower)
        movement.deed = Deed::Lend;
    return {};
}

} // namespace

Result<Movement> moved(const MoveWords &asked, const Workshop &workshop, std::int64_t at,
                       const std::optional<Movement> &before)
{
    if (!asked.until.empty() && !isDay(asked.until))
        return problem("--until " + asked.until, "is no day", "Write it as 2026-12-01.");
    if (!asked.until.empty() && !before && asked.until < dayOf(at))
        return problem("--until " + asked.until, "is past, so that it would be overdue at once",
                       "Write the day by which it is to be back.");
    const auto stock = stockAsked({asked.part, asked.quantity, asked.from, asked.to}, workshop);
    if (!stock)
        return tl::unexpected(stock.error());
    PiecesAsked pieces{stock->from->id, asked.lot, asked.condition};
    if (before && pieces.lot.empty())
        pieces.lot = before->lot;
    if (before && pieces.condition.empty())
        pieces.condition = text(before->condition);
    const auto key = piecesAsked(pieces, workshop.ledger, *stock->part);
    if (!key)
        return tl::unexpected(key.error());
    Movement movement = movementOf(*key, stock->quantity, stock->to->id, Deed::Move);
    if (const auto changes = addWhatChanges(asked, *stock, movement); !changes)
        return tl::unexpected(changes.error());
    return movement;
}

Result<Movement> scrapped(const MoveWords &asked, const Workshop &workshop)
{
    const auto scrap = placeOfKind(PlaceKind::Scrap, workshop.ledger);
    if (!scrap)
        return tl::unexpected(scrap.error());
    const auto stock = stockAsked({asked.part, asked.quantity, asked.from, (*scrap)->id}, workshop);
    if (!stock)
        return tl::unexpected(stock.error());
    const auto key =
        piecesAsked({stock->from->id, asked.lot, asked.condition}, workshop.ledger, *stock->part);
    if (!key)
        return tl::unexpected(key.error());
    return movementOf(*key, stock->quantity, stock->to->id, Deed::Scrap);
}

} // namespace flarestock
