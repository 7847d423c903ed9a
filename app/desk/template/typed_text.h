// SPDX-License-Identifier: MIT
//
// Typed text: between the text of a file, whose lines end as somebody's editor ended them, and the
// sheet on which it is typed, which knows lines only. What was not touched keeps its line ends, so
// that a change of one line is a change of one line.

#pragma once

#include <QTextDocument>

#include <cstdint>
#include <string>

namespace flarestock {

/// What stands on the sheet, with a line feed at the end of each line.
[[nodiscard]] std::string textOn(const QTextDocument &sheet);

/// `typed` with the line ends, and the byte order mark, of the text that it was made from; new
/// lines end as most of that do.
[[nodiscard]] std::string asInFile(const std::string &typed, const std::string &from);

/// Where a byte of textOn() stands on the sheet.
[[nodiscard]] int placeOnSheet(const std::string &text, std::size_t byte);
/// Where line and column of a fault stand on the sheet.
[[nodiscard]] int placeOnSheet(const QTextDocument &sheet, std::uint32_t line,
                               std::uint32_t column);

} // namespace flarestock
