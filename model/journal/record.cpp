// SPDX-License-Identifier: MIT

#include "model/journal/record.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 18> KindTexts = {
    "promise",        "count",     "lot",     "leak test", "done",  "opened box",
    "made-up hose",   "level",     "keeping", "instead",   "order", "receipt",
    "supplier claim", "late cost", "outing",  "servicing", "trip",  "decision"};

} // namespace

std::string_view text(RecordKind kind) noexcept
{
    return KindTexts[static_cast<std::size_t>(kind)];
}

Result<RecordKind> parseRecordKind(std::string_view text)
{
    const auto *const at = std::find(KindTexts.begin(), KindTexts.end(), text);
    if (at == KindTexts.end())
        return problem(std::string(text), "is not a kind of record",
                       "It was written by a newer version: use that one.");
    return static_cast<RecordKind>(at - KindTexts.begin());
}

const std::string &Record::field(const std::string &name) const
{
    static const std::string none;
    const auto found = fields.find(name);
    return found == fields.end() ? none : found->second;
}

Result<std::int64_t> Record::number(const std::string &name) const
{
    const std::string &typed = field(name);
    std::int64_t number = 0;
    const auto read = std::from_chars(typed.data(), typed.data() + typed.size(), number);
    if (read.ec != std::errc{} || read.ptr != typed.data() + typed.size())
        return problem(std::string(text(kind)) + " " + id.text(),
                       "has no whole number in " + name + ": \"" + typed + '"',
                       "Run flarestock verify on the shop.");
    return number;
}

} // namespace flarestock
