// SPDX-License-Identifier: MIT

#include "app/stockroom/byhand/coming_in.h"

#include "app/stockroom/byhand/serials.h"

namespace flarestock {

namespace {

Result<Movement> movementOf(const ComingInWords &asked, const Workshop &workshop)
{
    const auto stock = stockAsked({asked.part, asked.quantity, asked.from, asked.to}, workshop);
    if (!stock)
        return tl::unexpected(stock.error());
    if (!bringsValue(stock->from->kind))
        return problem(stock->from->id, "is no supplier",
                       "Use flarestock move between your places.");
    if (stock->quantity <= 0)
        return problem("the quantity " + asked.quantity,
                       "is nothing that comes in, so that its cost would lie nowhere",
                       "Write how many or how much came.");
    const auto value = valueAsked(asked.cost, "--cost");
    if (!value)
        return tl::unexpected(value.error());
    const std::string &number = stock->part->number;
    if (isLength(stock->part->unit) && asked.lot.empty())
        return problem(number, "comes in pieces, and this one has no name",
                       "Name it: --lot COIL-17.");
    if (auto one = onePiece(*stock->part, asked.lot, stock->quantity, workshop.ledger); !one)
        return tl::unexpected(one.error());
    Movement movement =
        flarestock::movementOf({number, stock->from->id, asked.lot, PieceCondition::New},
                               stock->quantity, stock->to->id, Deed::Receive);
    movement.value = *value;
    movement.document = asked.document;
    return movement;
}

/// What was said of the lot besides; nothing where nothing was.
Result<std::optional<Record>> lotSaid(const ComingInWords &asked, const Movement &movement,
                                      const std::pair<const Workshop *, const By *> &shop)
{
    const By &by = *shop.second;
    if (asked.useBy.empty() && asked.owner.empty())
        return std::nullopt;
    if (movement.lot.empty())
        return problem(asked.part, "has a date or an owner and no lot", "Name the lot: --lot.");
    if (!asked.useBy.empty() && !isDay(asked.useBy))
        return problem(asked.useBy, "is no day", "Write it as 2027-03-31.");
    LotFacts facts;
    facts.id = idWithin(*by.action, 1);
    facts.lot = {movement.part, movement.lot};
    facts.useBy = asked.useBy;
    if (!asked.owner.empty()) {
        const auto car = placeAsked(asked.owner, shop.first->ledger);
        if (!car)
            return tl::unexpected(car.error());
        if ((*car)->kind != PlaceKind::Car)
            return problem((*car)->id, "is no car", "Name the car that alone it is for.");
        facts.owner = (*car)->id;
    }
    facts.who = by.who;
    facts.at = by.at;
    return facts.asRecord();
}

} // namespace

Result<Action> cameIn(const ComingInWords &asked, const Workshop &workshop, const By &by)
{
    const auto movement = movementOf(asked, workshop);
    if (!movement)
        return tl::unexpected(movement.error());
    const auto record = lotSaid(asked, *movement, {&workshop, &by});
    if (!record)
        return tl::unexpected(record.error());
    Action action = numbered({*movement}, by);
    if (*record)
        action.records.push_back(**record);
    return action;
}

} // namespace flarestock
