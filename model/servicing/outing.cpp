// SPDX-License-Identifier: MIT

#include "model/servicing/outing.h"

#include "model/journal/notes/lot_facts.h"

#include <algorithm>
#include <set>

namespace flarestock {

Record Outing::asRecord() const
{
    std::map<std::string, std::string> fields{{"event", event},
                                              {"day", day},
                                              {"runs", std::to_string(runs)},
                                              {"hours", hours.text()},
                                              {"note", note}};
    return {id, RecordKind::Outing, car, std::move(fields), who, at};
}

Result<Outing> Outing::read(const Record &record)
{
    const auto runs = record.number("runs");
    if (!runs)
        return tl::unexpected(runs.error());
    const auto hours = Decimal::parse(record.field("hours"));
    if (record.kind != RecordKind::Outing || !hours || !isDay(record.field("day")))
        return problem("record " + record.id.text(), "does not say how far a car ran, and when",
                       "Run flarestock verify on the shop.");
    return Outing{record.id, record.subject, record.field("event"), record.field("day"),
                  *runs,     *hours,         record.field("note"),  record.who,
                  record.at};
}

Record takingBack(const Record &past)
{
    Record back = past;
    back.fields[TakesBackField] = past.id.text();
    return back;
}

std::vector<Record> standingOf(const std::vector<Record> &records)
{
    std::set<std::string> gone;
    std::vector<Record> standing;
    for (auto at = records.rbegin(); at != records.rend(); ++at) {
        if (at->kind != RecordKind::Outing && at->kind != RecordKind::Servicing)
            continue;
        const std::string &past = at->field(TakesBackField);
        if (gone.contains(at->id.text()))
            continue;
        if (past.empty())
            standing.push_back(*at);
        else
            gone.insert(past);
    }
    std::reverse(standing.begin(), standing.end());
    return standing;
}

} // namespace flarestock
