// SPDX-License-Identifier: MIT

#include "model/servicing/serviced.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 6> WorkTexts = {"fitted",    "washed",  "replaced",
                                                       "inspected", "damaged", "taken out"};

Result<void> readNumbers(const Record &record, Serviced &done)
{
    for (auto [name, number] : {std::pair("washed", &done.washed),
                                {"had runs", &done.hadRuns},
                                {"quantity", &done.quantity}}) {
        const auto read =
            record.field(name).empty() ? Result<std::int64_t>(*number) : record.number(name);
        if (!read)
            return tl::unexpected(read.error());
        *number = *read;
    }
    if (const std::string &hours = record.field("had hours"); !hours.empty()) {
        const auto read = Decimal::parse(hours);
        if (!read)
            return tl::unexpected(read.error());
        done.hadHours = *read;
    }
    return {};
}

} // namespace

std::string_view text(Work work) noexcept
{
    return WorkTexts[static_cast<std::size_t>(work)];
}

Result<Work> parseWork(std::string_view text)
{
    const auto *const at = std::find(WorkTexts.begin(), WorkTexts.end(), text);
    if (at == WorkTexts.end())
        return problem(std::string(text), "is nothing that is done to a piece in a car",
                       "It was written by a newer version: use that one.");
    return static_cast<Work>(at - WorkTexts.begin());
}

Record Serviced::asRecord() const
{
    std::map<std::string, std::string> fields{{"work", std::string(text(work))},
                                              {"position", position},
                                              {"build", build},
                                              {"part", piece.part},
                                              {"lot", piece.lot},
                                              {"day", day},
                                              {"note", note},
                                              {"action", action}};
    const auto say = [&fields](const char *name, const std::string &value, bool said) {
        if (said)
            fields.emplace(name, value);
    };
    say("old part", old.part, !old.part.empty());
    say("old lot", old.lot, !old.lot.empty());
    say("old is", std::string(text(oldIs)), !old.part.empty());
    say("quantity", std::to_string(quantity), quantity != 1);
    say("washed", std::to_string(washed), washed > 0);
    say("had runs", std::to_string(hadRuns), hadRuns > 0);
    say("had hours", hadHours.text(), hadHours.sign() > 0);
    say("made", made, !made.empty());
    say("use by", useBy, !useBy.empty());
    return {id, RecordKind::Servicing, car, std::move(fields), who, at};
}

Result<Serviced> Serviced::read(const Record &record)
{
    const auto work = parseWork(record.field("work"));
    if (record.kind != RecordKind::Servicing || !work || !isDay(record.field("day")))
        return problem("record " + record.id.text(),
                       "does not say what was done to a car, and when",
                       "Run flarestock verify on the shop.");
    Serviced done{record.id,
                  record.subject,
                  *work,
                  record.field("position"),
                  record.field("build"),
                  {record.field("part"), record.field("lot")},
                  1,
                  {record.field("old part"), record.field("old lot")},
                  {},
                  0,
                  0,
                  {},
                  {},
                  {},
                  {},
                  {},
                  {},
                  {},
                  0};
    if (!done.old.part.empty()) {
        const auto condition = parsePieceCondition(record.field("old is"));
        if (!condition)
            return tl::unexpected(condition.error());
        done.oldIs = *condition;
    }
    if (auto read = readNumbers(record, done); !read)
        return tl::unexpected(read.error());
    done.made = record.field("made");
    done.useBy = record.field("use by");
    done.day = record.field("day");
    done.note = record.field("note");
    done.action = record.field("action");
    done.who = record.who;
    done.at = record.at;
    return done;
}

std::set<std::string> decidedWhenBrought(const std::vector<Record> &records)
{
    std::set<std::string> ids;
    for (const Record &record : records) {
        if (record.field(SaidBeforeField).empty())
            continue;
        ids.insert({record.id.text(), record.field(SaidBeforeField), record.field(FollowsField)});
    }
    return ids;
}

} // namespace flarestock
