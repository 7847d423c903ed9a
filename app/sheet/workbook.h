// SPDX-License-Identifier: MIT
//
// Workbook: a table as a file of one sheet (Office Open XML, ECMA-376), for a spreadsheet program.
//
//   Amount │ Amount (number)      a cell's number is a double, good for 15 digits: the text beside
//   "4.10" │            4.10      it is what counts, the number is for adding up
//
// Every text stays a text, whatever it begins with: only the sums are formulas.

#pragma once

#include "model/exact/problem.h"

#include <string>
#include <vector>

namespace flarestock {

struct WorkbookColumn {
    enum class Kind : std::uint8_t {
        Text,
        Quantity, ///< A number alone; empty: none.
        Price,    ///< A text, and a number beside it, with the digits that it has.
        Amount,   ///< The same, with the digits of its currency, and added up below.
    };
    std::string title;
    Kind kind = Kind::Text;
    double width = 12; ///< In digits of the program's own font, about.
};

struct Workbook {
    std::string name; ///< At most 31 letters, without []:*?/\ and apostrophes.
    std::string made; ///< The day that the file says it was made on: "2026-11-28".
    std::int32_t minorDigits = 2;
    std::vector<WorkbookColumn> columns;
    std::vector<std::vector<std::string>> rows; ///< As many cells as columns; numbers as "-4.10".
    std::vector<std::string> sums; ///< The same: of an amount its sum, else what stands below it.
};

/// The file's bytes: the same sheet is the same file. Problem: it cannot be written, or a text is
/// longer than a cell may be (32767).
[[nodiscard]] Result<std::string> xlsxOf(const Workbook &sheet);

} // namespace flarestock
