// SPDX-License-Identifier: MIT

#include "model/exchange/typed/edited_table.h"

#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

Result<EditedTable> EditedTable::read(std::string text, const std::string &file, Broken broken)
{
    EditedTable edited;
    edited.m_kind = sheetKind(file);
    edited.m_text = std::make_unique<const std::string>(std::move(text));
    auto table = readCsv(*edited.m_text, file, broken);
    if (!table)
        return tl::unexpected(std::move(table.error()));
    edited.m_table = std::make_unique<const CsvTable>(std::move(*table));
    for (const CsvField &field : edited.m_table->header())
        edited.m_headings.push_back(folded(trimmed(field.text)));
    for (std::size_t at = 0; at < edited.m_table->recordCount(); ++at)
        edited.m_rows.push_back({at});
    edited.know();
    return edited;
}

EditedTable EditedTable::fresh(SheetKind kind)
{
    EditedTable edited;
    edited.m_kind = kind;
    edited.m_headings = neededHeadings(kind);
    edited.m_isWider = true;
    return edited;
}

void EditedTable::know()
{
    m_byKey.reserve(m_rows.size());
    for (std::size_t at = 0; at < m_rows.size(); ++at)
        m_byKey.emplace(keyOf(m_kind, row(at)), at);
}

RowCells EditedTable::row(std::size_t at) const
{
    const Row &asked = m_rows.at(at);
    if (asked.cells)
        return *asked.cells;
    RowCells cells;
    const auto fields = m_table->record(asked.record);
    for (std::size_t column = 0; column < fields.size(); ++column) {
        const std::string_view text = trimmed(fields[column].text);
        if (!text.empty())
            cells.emplace(m_headings[column], text);
    }
    return cells;
}

std::optional<std::size_t> EditedTable::find(const std::string &key) const
{
    const auto found = m_byKey.find(key);
    return found == m_byKey.end() ? std::nullopt : std::optional(found->second);
}

void EditedTable::put(RowCells cells)
{
    std::erase_if(cells, [](const auto &cell) { return trimmed(cell.second).empty(); });
    for (const auto &[heading, text] : cells) {
        if (std::find(m_headings.begin(), m_headings.end(), heading) == m_headings.end()) {
            m_headings.push_back(heading);
            m_isWider = true;
        }
    }
    const auto [known, isNew] = m_byKey.try_emplace(keyOf(m_kind, cells), m_rows.size());
    if (isNew)
        m_rows.push_back({0, std::move(cells)});
    else
        m_rows[known->second].cells = std::move(cells);
}

/// With its line end, and with empty lines behind it.
std::string_view EditedTable::asItWas(std::size_t record) const
{
    const std::string_view whole = *m_text;
    const std::size_t begin = m_table->record(record).front().begin;
    const std::size_t end = record + 1 < m_table->recordCount()
                                ? m_table->record(record + 1).front().begin
                                : whole.size();
    return whole.substr(begin, end - begin);
}

std::string EditedTable::lineEnd() const
{
    return m_text && m_text->find("\r\n") != std::string::npos ? "\r\n" : "\n";
}

std::string EditedTable::line(const RowCells &cells) const
{
    std::string line;
    for (const std::string &heading : m_headings)
        line += (heading == m_headings.front() ? "" : ",") + csvField(cellOf(cells, heading));
    return line + lineEnd();
}

std::string EditedTable::text() const
{
    std::string text;
    if (m_isWider) {
        for (const std::string &heading : m_headings)
            text += (heading == m_headings.front() ? "" : ",") + csvField(heading);
        text += lineEnd();
    } else {
        const std::size_t head =
            m_table->recordCount() > 0 ? m_table->record(0).front().begin : m_text->size();
        text = m_text->substr(0, head);
    }
    for (std::size_t at = 0; at < m_rows.size(); ++at) {
        if (!text.empty() && text.back() != '\n')
            text += lineEnd();
        text +=
            m_rows[at].cells || m_isWider ? line(row(at)) : std::string(asItWas(m_rows[at].record));
    }
    return text;
}

} // namespace flarestock
