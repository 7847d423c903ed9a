// SPDX-License-Identifier: MIT

#include "model/exchange/typed/catalogue_rows.h"

#include "model/exact/case_fold.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

/// "parts/hose-ends.csv"
std::string newFileOf(SheetKind kind, const RowCells &row)
{
    if (kind == SheetKind::Suppliers)
        return "suppliers.csv";
    if (kind == SheetKind::Offers)
        return "offers.csv";
    std::string name = folded(cellOf(row, "kind"));
    std::replace(name.begin(), name.end(), ' ', '-');
    return "parts/" + name + "s.csv";
}

} // namespace

Result<CatalogueRows> CatalogueRows::read(const TextFiles &documents, SheetKind kind)
{
    CatalogueRows rows;
    rows.m_kind = kind;
    for (const auto &[name, text] : documents) {
        if (sheetKind(name) != kind)
            continue;
        auto table = EditedTable::read(text, name);
        if (!table)
            return tl::unexpected(std::move(table.error()));
        rows.m_tables.emplace(name, std::move(*table));
    }
    return rows;
}

std::optional<RowCells> CatalogueRows::find(const std::string &key) const
{
    for (const auto &[name, table] : m_tables) {
        if (const auto at = table.find(key))
            return table.row(*at);
    }
    return std::nullopt;
}

void CatalogueRows::knowKinds()
{
    for (const auto &[name, table] : m_tables) {
        for (std::size_t at = 0; at < table.rowCount(); ++at)
            m_fileOfKind.emplace(folded(cellOf(table.row(at), "kind")), name);
    }
}

std::string CatalogueRows::fileFor(const RowCells &row) const
{
    const std::string key = keyOf(m_kind, row);
    for (const auto &[name, table] : m_tables) {
        if (table.find(key))
            return name;
    }
    if (m_kind != SheetKind::Parts && !m_tables.empty())
        return m_tables.begin()->first;
    const auto same = m_fileOfKind.find(folded(cellOf(row, "kind")));
    return same == m_fileOfKind.end() ? newFileOf(m_kind, row) : same->second;
}

Result<TextFiles> CatalogueRows::with(const std::vector<RowCells> &rows)
{
    if (m_kind == SheetKind::Parts)
        knowKinds();
    std::set<std::string> touched;
    for (const RowCells &row : rows) {
        const std::string key = keyOf(m_kind, row);
        if (find(key) == row)
            continue;
        const std::string name = fileFor(row);
        auto table = m_tables.find(name);
        if (table == m_tables.end())
            table = m_tables.emplace(name, EditedTable::fresh(m_kind)).first;
        table->second.put(row);
        touched.insert(name);
        if (m_kind == SheetKind::Parts)
            m_fileOfKind.emplace(folded(cellOf(row, "kind")), name);
    }
    TextFiles changed;
    for (const std::string &name : touched)
        changed.emplace(name, m_tables.at(name).text());
    if (changed.empty())
        return problem("the shop", "has all of it already, just so", "There is nothing to write.");
    return changed;
}

} // namespace flarestock
