// SPDX-License-Identifier: MIT

#include "model/journal/notes/decision.h"

namespace flarestock {

namespace {

constexpr std::string_view NibbleDigits = "0123456789abcdef";
constexpr auto BytesField = "entry";

} // namespace

Record Decision::asRecord() const
{
    return {id,    RecordKind::Decision,
            about, {{"what", what}, {"decided", word}, {"trip", trip}, {"why", why}},
            who,   at};
}

Record KeptEntry::asRecord(const MovementId &id) const
{
    std::string hex;
    for (const std::uint8_t byte : bytes) {
        hex += NibbleDigits[byte >> 4];
        hex += NibbleDigits[byte & 0x0F];
    }
    return {id,
            RecordKind::Decision,
            "kept " + original.text(),
            {{"what", what}, {BytesField, hex}, {"id", original.text()}},
            who,
            at};
}

std::optional<std::vector<std::uint8_t>> keptBytes(const Record &record)
{
    const std::string &hex = record.field(BytesField);
    if (record.kind != RecordKind::Decision || hex.empty() || hex.size() % 2 != 0)
        return std::nullopt;
    std::vector<std::uint8_t> bytes;
    for (std::size_t at = 0; at < hex.size(); at += 2) {
        const auto high = NibbleDigits.find(hex[at]);
        const auto low = NibbleDigits.find(hex[at + 1]);
        if (high == std::string_view::npos || low == std::string_view::npos)
            return std::nullopt;
        bytes.push_back(static_cast<std::uint8_t>(high << 4 | low));
    }
    return bytes;
}

} // namespace flarestock
