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

std::string TextTable::text() const
{
    std::vector<std::size_t> widths(m_columns.size());
    for (const auto &row : m_rows)
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], widthOf(row[i]));
    std::string all;
    for (const auto &row : m_rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
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
