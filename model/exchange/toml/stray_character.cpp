// SPDX-License-Identifier: MIT

#include "model/exchange/toml/stray_character.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::string_view ByteOrderMark = "\xEF\xBB\xBF";

/// The byte behind a string that begins at `begin`; nothing where it does not end.
std::optional<std::size_t> stringEnd(std::string_view text, std::size_t begin) noexcept
{
    const char quote = text[begin];
    const bool isLong =
        begin + 2 < text.size() && text[begin + 1] == quote && text[begin + 2] == quote;
    std::size_t at = begin + (isLong ? 3 : 1);
    while (at < text.size()) {
        if (text[at] == '\\' && quote == '"') {
            at += 2;
            continue;
        }
        if (text[at] == '\n' && !isLong)
            return std::nullopt;
        if (text[at] != quote) {
            ++at;
            continue;
        }
        if (!isLong)
            return at + 1;
        // Up to two quotes may stand before the three that end it.
        std::size_t quotes = 0;
        while (quotes < 5 && at + quotes < text.size() && text[at + quotes] == quote)
            ++quotes;
        at += quotes;
        if (quotes >= 3)
            return at;
    }
    return std::nullopt;
}

} // namespace

std::optional<std::size_t> firstStrayCharacter(std::string_view text) noexcept
{
    std::size_t at = text.starts_with(ByteOrderMark) ? ByteOrderMark.size() : 0;
    while (at < text.size()) {
        if (text[at] == '"' || text[at] == '\'') {
            const auto end = stringEnd(text, at);
            if (!end)
                return std::nullopt; // The parser stops at this string and says so.
            at = *end;
        } else if (text[at] == '#') {
            at = std::min(text.find('\n', at), text.size());
        } else if (static_cast<unsigned char>(text[at]) >= 0x80U) {
            return at;
        } else {
            ++at;
        }
    }
    return std::nullopt;
}

std::string asciiStandIn(std::string_view text)
{
    const std::size_t mark = text.starts_with(ByteOrderMark) ? ByteOrderMark.size() : 0;
    std::string standIn(text.substr(0, mark));
    for (const char byte : text.substr(mark)) {
        const auto code = static_cast<unsigned char>(byte);
        if (code < 0x80U)
            standIn += byte;
        else if (code >= 0xC0U) // The first byte of a letter; the others add nothing.
            standIn += 'X';
    }
    return standIn;
}

} // namespace flarestock
