// SPDX-License-Identifier: MIT
//
// CSV as RFC 4180 describes it, read in one pass without copying what needs no unquoting.
//
//   auto table = readCsv(text, "fittings.csv");   // first record is the header
//   table->rows[0].cell("part")

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

struct CsvRecord {
    std::vector<std::string> fields;
    std::uint32_t line = 0;             ///< Where it begins, 1-based.
    std::vector<std::uint32_t> columns; ///< Where each field begins in its line, 1-based.
};

struct CsvTable {
    std::string file;
    std::vector<std::string> header;
    std::vector<CsvRecord> records;
    std::string_view text; ///< The whole, for excerpts; must outlive the table.

    /// Index of a column, case folded; nothing where it is not there.
    [[nodiscard]] std::optional<std::size_t> column(std::string_view name) const;
    /// A Problem that points at a field, with the line as excerpt.
    [[nodiscard]] Problem at(const CsvRecord &record, std::size_t field, std::string wrong,
                             std::string remedy) const;
};

/// A byte-order mark is skipped; CRLF and LF both end a record; empty lines are skipped.
/// Problem, with line and column: an endless quote, text after a closing quote, a record with more
/// or fewer fields than the header, NUL, invalid UTF-8 (also UTF-16, by its mark), an empty file,
/// the same heading twice, more than 10^6 fields in a record.
[[nodiscard]] Result<CsvTable> readCsv(std::string_view text, std::string file);

} // namespace flarestock
