// SPDX-License-Identifier: MIT

#include "model/journal/notes/lot_facts.h"

#include <chrono>

namespace flarestock {

namespace {

std::optional<int> digits(std::string_view text) noexcept
{
    int number = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        number = number * 10 + (c - '0');
    }
    return number;
}

} // namespace

Record LotFacts::asRecord() const
{
    std::map<std::string, std::string> fields{{"lot", lot.lot},
                                              {"owner", owner},
                                              {"use by", useBy},
                                              {"certified", certified},
                                              {"note", note}};
    return {id, RecordKind::Lot, lot.part, std::move(fields), who, at};
}

Result<LotFacts> LotFacts::read(const Record &record)
{
    if (record.kind != RecordKind::Lot || record.field("lot").empty())
        return problem("record " + record.id.text(), "does not say which lot it is about",
                       "Run flarestock verify on the shop.");
    LotFacts facts{record.id,
                   {record.subject, record.field("lot")},
                   record.field("owner"),
                   record.field("use by"),
                   record.field("certified"),
                   record.field("note"),
                   record.who,
                   record.at};
    return facts;
}

bool LotFacts::serves(std::string_view forOwner, std::string_view day) const
{
    if (!owner.empty() && owner != forOwner)
        return false;
    // Days of this form sort as they follow each other.
    const auto past = [day](const std::string &last) {
        return !day.empty() && !last.empty() && last < day;
    };
    return !past(useBy) && !past(certified);
}

std::set<LotKey> barredLots(const LotBook &lots, std::string_view owner, std::string_view day)
{
    std::set<LotKey> barred;
    for (const auto &[key, facts] : lots) {
        if (!facts.serves(owner, day))
            barred.insert(key);
    }
    return barred;
}

Bars barsOf(const LotBook &lots, const std::vector<Due> &builds)
{
    Bars bars{{{}, barredLots(lots, {}, {})}};
    for (const Due &due : builds)
        bars.insert_or_assign(due.build, barredLots(lots, due.car, due.day));
    return bars;
}

std::string_view rootOf(std::string_view lot) noexcept
{
    return lot.substr(0, lot.find('/'));
}

std::string nextPieceOf(std::string_view part, std::string_view lot, const std::set<LotKey> &taken)
{
    const std::string root(rootOf(lot));
    for (int number = 1;; ++number) {
        std::string name = root + "/" + std::to_string(number);
        if (!taken.contains({std::string(part), name}))
            return name;
    }
}

bool isDay(std::string_view text) noexcept
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return false;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day)
        return false;
    return std::chrono::year_month_day(std::chrono::year(*year),
                                       std::chrono::month(static_cast<unsigned>(*month)),
                                       std::chrono::day(static_cast<unsigned>(*day)))
        .ok();
}

} // namespace flarestock
