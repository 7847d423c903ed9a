// SPDX-License-Identifier: MIT
//
// Typed row: one row of the catalogue while somebody types it: a part, a supplier or an offer as
// the cells of its CSV row. What is wrong with it is found by the very code that reads the files,
// and said by the heading of the cell.
//
//   faultsOf(SheetKind::Parts, {{"part", "AD-66"}, {"kind", "adaptor"}}, known);
//   // kind: "adaptor" is no kind …; description: the cell "description" is empty

#pragma once

#include "model/exchange/catalogue/part_rows.h"
#include "model/exchange/catalogue/sheet_kind.h"

#include <map>
#include <string>
#include <vector>

namespace flarestock {

/// Heading to text; what is not there is empty.
using RowCells = std::map<std::string, std::string, std::less<>>;

struct CellFault {
    std::string heading; ///< Of the cell; empty where it is about the whole row.
    std::string wrong;
    std::string remedy;
    std::size_t within = 0; ///< The byte of the cell's text that it is about.
};

/// What a row may name.
struct RowKnows {
    KindOfPart kindOf;
    std::vector<Supplier> suppliers;
};

/// By what a row is told from another: "part"; "supplier"; "part", "supplier", "supplier part".
[[nodiscard]] std::vector<std::string> keyHeadings(SheetKind kind);
/// What a row cannot do without.
[[nodiscard]] std::vector<std::string> neededHeadings(SheetKind kind);
/// The key's cells as one folded text.
[[nodiscard]] std::string keyOf(SheetKind kind, const RowCells &cells);
/// The text of a cell; empty where it is not there.
[[nodiscard]] std::string cellOf(const RowCells &cells, std::string_view heading);

/// In the order of the headings as they are read. Empty: the row can be taken in.
[[nodiscard]] std::vector<CellFault> faultsOf(SheetKind kind, const RowCells &cells,
                                              const RowKnows &knows);

/// A field as RFC 4180 has it: in quotes where it needs them.
[[nodiscard]] std::string csvField(std::string_view text);

} // namespace flarestock
