// SPDX-License-Identifier: MIT

#include "model/journal/notes/level_seen.h"

namespace flarestock {

Record LevelSeen::asRecord() const
{
    return {id,   RecordKind::Level,
            part, {{"place", place}, {"level", std::string(text(level))}, {"holds", holds}},
            who,  at};
}

Result<LevelSeen> LevelSeen::read(const Record &record)
{
    const auto level = parseStockLevel(record.field("level"));
    if (record.kind != RecordKind::Level || !level || record.field("place").empty())
        return problem("record " + record.id.text(), "does not say how much is where",
                       "Run flarestock verify on the shop.");
    return LevelSeen{record.id, record.subject,        record.field("place"),
                     *level,    record.field("holds"), record.who,
                     record.at};
}

} // namespace flarestock
