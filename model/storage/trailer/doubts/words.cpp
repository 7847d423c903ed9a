// SPDX-License-Identifier: MIT
//
// Both have said something of one thing, where the newest word counts: a lot, a level, a build that
// is done; and orders and claims, which go on step by step under a number.

#include "model/storage/shop_sql.h"
#include "model/storage/trailer/doubts/doubts.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

/// Kinds of which the newest record on a matter counts, and by what a matter is told besides its
/// subject.
struct NewestCounts {
    RecordKind kind;
    const char *field;
};
constexpr std::array<NewestCounts, 5> Kinds = {{{RecordKind::Lot, "lot"},
                                                {RecordKind::Level, "place"},
                                                {RecordKind::Keeping, "place"},
                                                {RecordKind::Done, ""},
                                                {RecordKind::MadeHose, ""}}};

using Matter = std::pair<std::string, std::string>;
std::map<Matter, Record> newestOf(const std::vector<NewsEntry> &news, const NewestCounts &what)
{
    std::map<Matter, Record> newest;
    eachRecord(news, what.kind, [&](const Record &record) {
        newest.insert_or_assign({record.subject, record.field(what.field)}, record);
    });
    return newest;
}

/// Those that go on under a number, and what else stands under it.
constexpr std::array<RecordKind, 2> Numbered = {RecordKind::Order, RecordKind::SupplierClaim};
bool standsUnder(const Record &record, RecordKind numbered)
{
    if (record.kind == numbered)
        return true;
    return numbered == RecordKind::Order &&
           (record.kind == RecordKind::Receipt || record.kind == RecordKind::LateCost);
}

std::string nameOf(RecordKind kind, const std::string &subject)
{
    return std::string(kind == RecordKind::Order ? "order:" : "claim:") + subject;
}

std::set<std::string> subjectsOf(const std::vector<NewsEntry> &news, RecordKind kind)
{
    std::set<std::string> subjects;
    eachRecord(news, kind, [&](const Record &record) { subjects.insert(record.subject); });
    return subjects;
}

/// What a side has newly opened: of which nothing stands but what is new there.
bool isOpenedIn(const std::vector<NewsEntry> &news, RecordKind kind, const std::string &subject)
{
    const auto first = std::find_if(news.begin(), news.end(), [&](const NewsEntry &entry) {
        return entry.record && entry.record->kind == kind && entry.record->subject == subject;
    });
    return first != news.end() && first->record->field("before").empty();
}

bool isKnownBefore(const BothSides &sides, const EntriesBrought::Into &into, const Matter &matter)
{
    std::set<MovementId> fresh;
    for (const auto *side : {&sides.copy, &sides.shop}) {
        for (const NewsEntry &entry : *side)
            fresh.insert(entry.id());
    }
    bool found = false;
    into.connection.runAgain(
        sql::SelectRecordsAbout, {text(matter.first), text(matter.second)},
        [&](const QSqlQuery &row) { found = found || !fresh.contains(recordRow(row).record.id); });
    return found;
}

std::string decided(const BothSides &sides, RecordKind kind, const std::string &subject,
                    const EntriesBrought::Into &into)
{
    const std::string what(text(kind));
    const bool opened = isOpenedIn(sides.copy, kind, subject) &&
                        isOpenedIn(sides.shop, kind, subject) &&
                        !isKnownBefore(sides, into, {subject, what});
    std::vector<Choice> choices{
        {"shop", "the shop's counts; the copy's is kept with its words"},
        {"copy", "the copy's counts from now on; the shop's stays among its steps"}};
    if (opened)
        choices[1] = {"renumber", "they are two: the copy's gets the next number"};
    return into.disagreements.decide(
        {nameOf(kind, subject),
         opened ? what + " " + subject + " was opened on both sides under the same number"
                : "both sides went on from " + what + " " + subject,
         std::move(choices),
         {}});
}

/// "2026-0012" to "2026-0013", or the next that nobody has.
std::string nextFree(const std::string &subject, RecordKind kind, std::set<std::string> &taken,
                     const ShopConnection &connection)
{
    const auto digits = subject.find_last_not_of("0123456789") + 1;
    const std::string head = subject.substr(0, digits);
    const std::string tail = subject.substr(digits);
    for (std::uint64_t number = tail.empty() ? 1 : std::stoull(tail) + 1;; ++number) {
        std::string count = std::to_string(number);
        if (count.size() < tail.size())
            count.insert(0, tail.size() - count.size(), '0');
        bool stands = taken.contains(head + count);
        connection.runAgain(sql::SelectRecordsAbout,
                            {text(head + count), text(std::string(text(kind)))},
                            [&stands](const QSqlQuery &) { stands = true; });
        if (!stands) {
            taken.insert(head + count);
            return head + count;
        }
    }
}

} // namespace

std::set<MovementId> keptAside(const BothSides &sides, const EntriesBrought::Into &into)
{
    std::set<MovementId> aside;
    for (const RecordKind kind : Numbered) {
        const auto here = subjectsOf(sides.shop, kind);
        for (const std::string &subject : subjectsOf(sides.copy, kind)) {
            if (!here.contains(subject))
                continue;
            const std::string word = decided(sides, kind, subject, into);
            if (word == "copy")
                continue;
            for (const NewsEntry &entry : sides.copy) {
                if (entry.record && entry.record->subject == subject &&
                    (word == "renumber" ? standsUnder(*entry.record, kind)
                                        : entry.record->kind == kind))
                    aside.insert(entry.id());
            }
        }
    }
    return aside;
}

void sayAgainUnderNextNumber(const BothSides &sides, const EntriesBrought::Into &into)
{
    for (const RecordKind kind : Numbered) {
        const auto here = subjectsOf(sides.shop, kind);
        const auto there = subjectsOf(sides.copy, kind);
        std::set<std::string> taken = there;
        for (const std::string &subject : there) {
            if (!here.contains(subject) || decided(sides, kind, subject, into) != "renumber")
                continue;
            const std::string next = nextFree(subject, kind, taken, into.connection);
            std::map<std::string, std::string> renamed; // Ids, by what they were.
            for (const NewsEntry &entry : sides.copy) {
                if (!entry.record || entry.record->subject != subject ||
                    !standsUnder(*entry.record, kind))
                    continue;
                Record again = *entry.record;
                again.id = into.own.nextId();
                again.subject = next;
                renamed[entry.record->id.text()] = again.id.text();
                if (const auto before = renamed.find(again.field("before"));
                    before != renamed.end())
                    again.fields["before"] = before->second;
                static_cast<void>(into.writer.append(again));
            }
        }
    }
}

void settleWords(const BothSides &sides, const EntriesBrought::Into &into)
{
    for (const NewestCounts &what : Kinds) {
        const auto copy = newestOf(sides.copy, what);
        if (copy.empty())
            continue;
        const auto shop = newestOf(sides.shop, what);
        for (const auto &[matter, there] : copy) {
            const auto here = shop.find(matter);
            if (here == shop.end() || here->second.fields == there.fields)
                continue;
            const std::string kind(text(what.kind));
            const std::string name =
                matter.first + (matter.second.empty() ? "" : "@" + matter.second);
            const std::string where = matter.second.empty()              ? ""
                                      : std::string(what.field) == "lot" ? ", lot " + matter.second
                                                                         : " at " + matter.second;
            const auto word = into.disagreements.decide(
                {"word:" + kind + ":" + name,
                 "both sides have said another thing of " + matter.first + where + " (" + kind +
                     ")",
                 {{"copy", "what was said there counts"},
                  {"shop", "what was said here counts, and is said once more"}},
                 {}});
            if (word != "shop")
                continue;
            Record again = here->second;
            again.id = into.own.nextId();
            again.at = into.own.at;
            static_cast<void>(into.writer.append(again));
        }
    }
}

} // namespace flarestock
