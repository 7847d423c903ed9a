// SPDX-License-Identifier: MIT

#include "model/journal/notes/count.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 3> LevelTexts = {"out", "low", "plenty"};

template <class T>
Result<T> notOne(const Record &record, const char *what)
{
    return problem("record " + record.id.text(), std::string("is not ") + what,
                   "Run flarestock verify on the shop.");
}

} // namespace

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
        return notOne<Count>(record, "a count");
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

std::string_view text(StockLevel level) noexcept
{
    return LevelTexts[static_cast<std::size_t>(level)];
}

Result<StockLevel> parseStockLevel(std::string_view text)
{
    const auto *const at = std::find(LevelTexts.begin(), LevelTexts.end(), text);
    if (at == LevelTexts.end())
        return problem(std::string(text), "is no level", "Write plenty, low or out.");
    return static_cast<StockLevel>(at - LevelTexts.begin());
}

Record LevelSeen::asRecord() const
{
    return {id,   RecordKind::Level,
            part, {{"place", place}, {"level", std::string(text(level))}},
            who,  at};
}

Result<LevelSeen> LevelSeen::read(const Record &record)
{
    const auto level = parseStockLevel(record.field("level"));
    if (record.kind != RecordKind::Level || !level)
        return notOne<LevelSeen>(record, "a level");
    return LevelSeen{record.id, record.subject, record.field("place"),
                     *level,    record.who,     record.at};
}

} // namespace flarestock
