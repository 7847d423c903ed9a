// SPDX-License-Identifier: MIT

#include "model/exchange/editing/toml_places.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::string_view Blanks = " \t";
constexpr std::string_view ByteOrderMark = "\xEF\xBB\xBF";

std::size_t atColumn(std::string_view text, std::size_t begin, std::uint32_t column)
{
    std::size_t at = begin;
    for (std::uint32_t left = column == 0 ? 0 : column - 1; left > 0 && at < text.size(); --left) {
        do
            ++at;
        while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U);
    }
    return at;
}

} // namespace

TomlPlaces::TomlPlaces(const TomlDocument &document)
    : m_text(document.whole()), m_lineEnd("\n"), m_lines({0})
{
    if (m_text.starts_with(ByteOrderMark))
        m_lines.front() = ByteOrderMark.size();
    for (std::size_t at = m_text.find('\n'); at != m_text.npos; at = m_text.find('\n', at + 1))
        m_lines.push_back(at + 1);
    if (m_lines.size() > 1 && m_text.substr(0, m_lines[1]).ends_with("\r\n"))
        m_lineEnd = "\r\n";
}

TextStretch TomlPlaces::value(const TomlValue &value) const
{
    const auto byte = [this](std::uint32_t line, std::uint32_t column) {
        const std::size_t at = std::clamp<std::size_t>(line, 1, m_lines.size()) - 1;
        return atColumn(m_text, m_lines[at], column);
    };
    return {byte(value.line, value.column), byte(value.endLine, value.endColumn)};
}

std::size_t TomlPlaces::key(const TomlEntry &entry) const
{
    const std::size_t at = std::clamp<std::size_t>(entry.line, 1, m_lines.size()) - 1;
    return atColumn(m_text, m_lines[at], entry.column);
}

bool TomlPlaces::isUnderHeader(const TomlValue &value) const
{
    if (value.form == TomlValue::Form::List)
        return !value.items.empty() && value.items.front().form == TomlValue::Form::Table &&
               isUnderHeader(value.items.front());
    return value.form == TomlValue::Form::Table &&
           m_text.substr(this->value(value).begin, 1) == "[";
}

bool TomlPlaces::isInline(const TomlValue &table) const
{
    return table.form == TomlValue::Form::Table && m_text.substr(value(table).begin, 1) == "{";
}

std::size_t TomlPlaces::lineBegin(std::size_t at) const
{
    return *std::prev(std::upper_bound(m_lines.begin(), m_lines.end(), at));
}

std::size_t TomlPlaces::nextLine(std::size_t at) const
{
    const auto next = std::upper_bound(m_lines.begin(), m_lines.end(), at);
    return next == m_lines.end() ? m_text.size() : *next;
}

std::size_t TomlPlaces::lineEndBefore(std::size_t at) const
{
    std::size_t end = nextLine(at);
    if (end > at && m_text[end - 1] == '\n')
        --end;
    if (end > at && m_text[end - 1] == '\r')
        --end;
    return end;
}

std::size_t TomlPlaces::contentEnd(const TomlValue &value) const
{
    const bool isHeaded = isUnderHeader(value);
    const bool isPlain = value.form != TomlValue::Form::Table && !isHeaded;
    if (isPlain || isInline(value))
        return this->value(value).end;
    // Of a list the parser says where its first header begins and its last one ends.
    std::size_t end = value.form == TomlValue::Form::Table ? this->value(value).end : 0;
    for (const TomlValue &item : value.items)
        end = std::max(end, contentEnd(item));
    for (const TomlEntry &entry : value.entries)
        end = std::max(end, contentEnd(entry.value));
    return end;
}

bool TomlPlaces::isComment(std::size_t line) const
{
    const std::size_t at = m_text.find_first_not_of(Blanks, line);
    return at != m_text.npos && m_text[at] == '#';
}

bool TomlPlaces::isHeader(std::size_t line) const
{
    const std::size_t at = m_text.find_first_not_of(Blanks, line);
    return at != m_text.npos && m_text[at] == '[';
}

TextStretch TomlPlaces::block(const TomlValue &table) const
{
    TextStretch block;
    block.begin = lineBegin(value(table).begin);
    while (block.begin > 0 && isComment(lineBegin(block.begin - 1)))
        block.begin = lineBegin(block.begin - 1);
    block.end = nextLine(contentEnd(table));
    std::size_t behind = block.end; // Comments that stand right below belong to it …
    while (behind < m_text.size() && isComment(behind))
        behind = nextLine(behind);
    if (behind == m_text.size() || !isHeader(behind)) // … but not what stands above the next.
        block.end = behind;
    return block;
}

} // namespace flarestock
