// SPDX-License-Identifier: MIT

#include "model/exchange/text_place.h"

#include <algorithm>
#include <cstring>

namespace flarestock {

namespace {

constexpr std::size_t ExcerptMax = 160; ///< Code points; what a terminal shows in two lines.

bool beginsCodePoint(char byte) noexcept
{
    return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
}

std::size_t codePoints(std::string_view text) noexcept
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), beginsCodePoint));
}

/// The bytes of the first `count` code points.
std::string_view firstCodePoints(std::string_view text, std::size_t count) noexcept
{
    std::size_t at = 0;
    for (; at < text.size(); ++at) {
        if (beginsCodePoint(text[at]) && count-- == 0)
            break;
    }
    return text.substr(0, at);
}

std::string shown(std::string_view line, std::size_t column)
{
    if (column > ExcerptMax)
        return {};
    // At most four bytes a code point: damaged text may hold none at all.
    const std::string_view start = firstCodePoints(line.substr(0, 4 * ExcerptMax), ExcerptMax);
    std::string excerpt(start);
    // A damaged byte must not reach a terminal; a control character would move the caret.
    for (std::size_t at = 0; at < excerpt.size(); ++at) {
        if (static_cast<unsigned char>(excerpt[at]) < 0x20U || excerpt[at] == 0x7F)
            excerpt[at] = ' ';
    }
    for (auto bad = firstBadByte(excerpt); bad; bad = firstBadByte(excerpt))
        excerpt[*bad] = '?';
    return start.size() < line.size() ? excerpt + " …" : excerpt;
}

/// How many bytes a sequence of RFC 3629 takes that begins here; 0 where it is none.
std::size_t sequenceLength(std::string_view text) noexcept
{
    const auto byte = [&text](std::size_t at) {
        return at < text.size() ? static_cast<unsigned char>(text[at]) : 0U;
    };
    const auto follows = [&byte](std::size_t at, unsigned from = 0x80, unsigned to = 0xBF) {
        return byte(at) >= from && byte(at) <= to;
    };
    const unsigned lead = byte(0);
    if (lead < 0x80)
        return lead == 0 ? 0 : 1;
    if (lead >= 0xC2 && lead <= 0xDF)
        return follows(1) ? 2 : 0;
    if (lead >= 0xE0 && lead <= 0xEF) {
        const bool second = lead == 0xE0   ? follows(1, 0xA0)
                            : lead == 0xED ? follows(1, 0x80, 0x9F)
                                           : follows(1);
        return second && follows(2) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        const bool second = lead == 0xF0   ? follows(1, 0x90)
                            : lead == 0xF4 ? follows(1, 0x80, 0x8F)
                                           : follows(1);
        return second && follows(2) && follows(3) ? 4 : 0;
    }
    return 0;
}

} // namespace

Problem problemAt(std::string_view text, std::size_t byte, const std::string &file, TextFault fault)
{
    const std::size_t at = std::min(byte, text.size());
    const std::string_view before = text.substr(0, at);
    const std::size_t newline = before.rfind('\n');
    const std::size_t start = newline == std::string_view::npos ? 0 : newline + 1;
    std::string_view line = text.substr(start, text.find('\n', start) - start);
    if (line.ends_with('\r'))
        line.remove_suffix(1);
    const std::size_t column = codePoints(before.substr(start)) + 1;

    Problem found{file, std::move(fault.wrong), std::move(fault.remedy)};
    found.line = static_cast<std::uint32_t>(std::count(before.begin(), before.end(), '\n') + 1);
    found.column = static_cast<std::uint32_t>(column);
    found.excerpt = shown(line, column);
    return found;
}

std::size_t byteOf(std::string_view text, std::uint32_t line, std::uint32_t column)
{
    std::size_t start = 0;
    for (std::uint32_t i = 1; i < line; ++i) {
        const std::size_t newline = text.find('\n', start);
        if (newline == std::string_view::npos)
            return text.size();
        start = newline + 1;
    }
    const std::string_view rest = text.substr(start, text.find('\n', start) - start);
    return start + firstCodePoints(rest, column == 0 ? 0 : column - 1).size();
}

std::optional<std::size_t> firstBadByte(std::string_view text) noexcept
{
    constexpr std::size_t Step = sizeof(std::uint64_t);
    std::size_t at = 0;
    while (at < text.size()) {
        // Eight bytes at a time while all are ASCII and none is NUL.
        while (at + Step <= text.size()) {
            std::uint64_t eight = 0;
            std::memcpy(&eight, text.data() + at, Step);
            const std::uint64_t zeros = (eight - 0x0101010101010101U) & ~eight;
            if (((eight | zeros) & 0x8080808080808080U) != 0)
                break;
            at += Step;
        }
        if (at == text.size())
            break;
        const std::size_t length = sequenceLength(text.substr(at, 4));
        if (length == 0)
            return at;
        at += length;
    }
    return std::nullopt;
}

} // namespace flarestock
