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

bool isQuote(char letter) noexcept
{
    return letter == '"' || letter == '\'';
}

/// The first string that does not end, or character beyond ASCII outside strings.
std::optional<std::size_t> firstOdd(std::string_view text, bool minds) noexcept
{
    std::size_t at = text.starts_with(ByteOrderMark) ? ByteOrderMark.size() : 0;
    while (at < text.size()) {
        if (isQuote(text[at])) {
            const auto end = stringEnd(text, at);
            if (!end)
                return at;
            at = *end;
        } else if (text[at] == '#') {
            at = std::min(text.find('\n', at), text.size());
        } else if (minds && static_cast<unsigned char>(text[at]) >= 0x80U) {
            return at;
        } else {
            ++at;
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<std::size_t> firstStrayCharacter(std::string_view text) noexcept
{
    const auto odd = firstOdd(text, true);
    return odd && !isQuote(text[*odd]) ? odd : std::nullopt; // The parser says so of a string.
}

std::optional<std::size_t> firstOpenQuote(std::string_view text) noexcept
{
    const auto open = firstOdd(text, false);
    if (!open || text[*open] == '"')
        return open;
    // An apostrophe in a word begins nothing.
    const auto before = text.substr(0, *open).find_last_not_of(' ');
    const bool isBegun = before != std::string_view::npos &&
                         std::string_view("=,[{\n").find(text[before]) != std::string_view::npos;
    return isBegun ? open : std::nullopt;
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
