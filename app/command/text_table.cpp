// SPDX-License-Identifier: MIT

#include "app/command/text_table.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

/// Characters (UTF-8 code points); every letter of the trade takes one place.
std::size_t widthOf(const std::string &text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

} // namespace

TextTable::TextTable(std::vector<Column> columns) : m_columns(std::move(columns))
{
    std::vector<std::string> titles;
    for (const Column &column : m_columns)
        titles.push_back(column.title);
    m_rows.push_back(std::move(titles));
}

void TextTable::add(std::vector<std::string> cells)
{
    assert(cells.size() == m_columns.size());
    m_rows.push_back(std::move(cells));
}

bool TextTable::isShown(std::size_t column) const
{
    return m_columns[column].shown == Shown::Always ||
           std::any_of(m_rows.begin() + 1, m_rows.end(),
                       [column](const auto &row) { return !row[column].empty(); });
}

std::string TextTable::text() const
{
    std::vector<std::size_t> shown;
    std::vector<std::size_t> widths(m_columns.size());
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        if (isShown(i))
            shown.push_back(i);
        for (const auto &row : m_rows)
            widths[i] = std::max(widths[i], widthOf(row[i]));
    }
    std::string all;
    for (const auto &row : m_rows) {
        for (const std::size_t i : shown) {
            const std::string blanks(widths[i] - widthOf(row[i]), ' ');
            all += "  ";
            all += m_columns[i].side == Side::Left ? row[i] + blanks : blanks + row[i];
        }
        all.erase(all.find_last_not_of(' ') + 1);
        all += '\n';
    }
    return all;
}

} // namespace flarestock
