// SPDX-License-Identifier: MIT

#include "model/journal/notes/keeping.h"

namespace flarestock {

Record Keeping::asRecord() const
{
    return {id,   RecordKind::Keeping,
            part, {{"place", place}, {"min", std::to_string(least)}, {"max", std::to_string(most)}},
            who,  at};
}

Result<Keeping> Keeping::read(const Record &record)
{
    const auto least = record.number("min");
    const auto most = record.number("max");
    if (record.kind != RecordKind::Keeping || !least || !most || *least < 0 || *most < *least ||
        record.field("place").empty())
        return problem("record " + record.id.text(), "does not say how much a place is to hold",
                       "Run flarestock verify on the shop.");
    return Keeping{record.id,  record.subject, record.field("place"), *least, *most,
                   record.who, record.at};
}

} // namespace flarestock
