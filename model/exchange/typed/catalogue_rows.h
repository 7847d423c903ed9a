// SPDX-License-Identifier: MIT
//
// Catalogue rows: the rows of parts, suppliers or offers as they stand in the shop's documents, and
// the documents with some of them put in or changed. A new part goes where others of its kind
// stand.
//
//   auto rows = CatalogueRows::read(documents, SheetKind::Parts).value();
//   rows.find(keyOf(SheetKind::Parts, {{"part", "AD-66"}}));
//   rows.with({{{"part", "AD-66"}, …}});   // {"parts/adapters.csv", "part,kind,…"}

#pragma once

#include "model/exchange/catalogue_csv.h"
#include "model/exchange/typed/edited_table.h"

namespace flarestock {

class CatalogueRows {
public:
    /// Problem: a document that is no CSV.
    [[nodiscard]] static Result<CatalogueRows> read(const TextFiles &documents, SheetKind kind);

    /// The cells of the row of that key (keyOf()); nothing where there is none.
    [[nodiscard]] std::optional<RowCells> find(const std::string &key) const;
    /// The documents that change when these rows stand in them; once only. Problem: none does.
    [[nodiscard]] Result<TextFiles> with(const std::vector<RowCells> &rows);

private:
    [[nodiscard]] std::string fileFor(const RowCells &row) const;
    void knowKinds();

    SheetKind m_kind = SheetKind::Parts;
    std::map<std::string, EditedTable> m_tables;     ///< By name.
    std::map<std::string, std::string> m_fileOfKind; ///< Folded kind: where the first of it stands.
};

} // namespace flarestock
