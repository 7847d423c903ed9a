// SPDX-License-Identifier: MIT
//
// Text table: columns as wide as their widest cell, for a terminal.
//
//   TextTable table({{"part", TextTable::Side::Left}, {"need", TextTable::Side::Right}});
//   table.add({"HE-8", "2"});
//   table.text();   // "  part  need\n  HE-8     2\n"

#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace flarestock {

class TextTable {
public:
    enum class Side : std::uint8_t { Left, Right };
    /// A column that no row has anything in may be left out.
    enum class Shown : std::uint8_t { Always, WhereFilled };
    struct Column {
        std::string title;
        Side side = Side::Left;
        Shown shown = Shown::Always;
    };

    explicit TextTable(std::vector<Column> columns);
    /// As many cells as there are columns (asserted); UTF-8, one line each.
    void add(std::vector<std::string> cells);
    /// Every line indented by two blanks and ended by '\n'; no blanks at the ends of lines.
    [[nodiscard]] std::string text() const;

private:
    [[nodiscard]] bool isShown(std::size_t column) const;
    std::vector<Column> m_columns;
    std::vector<std::vector<std::string>> m_rows;
};

} // namespace flarestock
