// SPDX-License-Identifier: MIT

#include "model/journal/notes/count.h"

namespace flarestock {

Record Count::asRecord() const
{
    return {id,
            RecordKind::Count,
            key.part,
            {{"place", key.place},
             {"lot", key.lot},
             {"condition", std::string(text(key.condition))},
             {"found", std::to_string(found)},
             {"expected", std::to_string(expected)},
             {"why", why}},
            who,
            at};
}

Result<Count> Count::read(const Record &record)
{
    const auto condition = parsePieceCondition(record.field("condition"));
    const auto found = record.number("found");
    const auto expected = record.number("expected");
    if (record.kind != RecordKind::Count || !condition || !found || !expected)
        return problem("record " + record.id.text(), "is not a count",
                       "Run flarestock verify on the shop.");
    return Count{
        record.id,  {record.subject, record.field("place"), record.field("lot"), *condition},
        *found,     *expected,
        record.who, record.field("why"),
        record.at};
}

std::optional<Movement> differenceOf(const Count &count, const Ledger &ledger,
                                     const std::string &difference)
{
    if (count.found == count.expected)
        return std::nullopt;
    Movement movement;
    movement.part = count.key.part;
    movement.lot = count.key.lot;
    movement.condition = count.key.condition;
    movement.who = count.who;
    movement.why = count.why;
    movement.at = count.at;
    movement.deed = Deed::Count;
    if (count.found < count.expected) {
        movement.quantity = count.expected - count.found;
        movement.from = count.key.place;
        movement.to = difference;
        return movement;
    }
    movement.quantity = count.found - count.expected;
    movement.from = difference;
    movement.to = count.key.place;
    const Balance held = ledger.balance(count.key);
    if (held.quantity > 0) { // What is found is worth what its like is worth.
        __extension__ using Wide = __int128;
        const Wide value = Wide{held.value} * movement.quantity / held.quantity;
        movement.value = value > INT64_MAX ? 0 : static_cast<std::int64_t>(value);
    }
    return movement;
}

} // namespace flarestock
