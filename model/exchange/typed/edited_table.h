// SPDX-License-Identifier: MIT
//
// Edited table: a catalogue file whose rows are put in, changed or read one by one. What is not
// touched stays as it was typed, to the byte, unless a column comes in.
//
//   auto table = EditedTable::read(text, "parts/adapters.csv").value();
//   table.put({{"part", "AD-66"}, {"kind", "adapter"}, {"description", "…"}});
//   table.text();

#pragma once

#include "model/exchange/typed/typed_row.h"

#include <memory>
#include <optional>
#include <unordered_map>

namespace flarestock {

class EditedTable {
public:
    /// By the file's name it is known what its rows are. Problem: the text is no CSV.
    [[nodiscard]] static Result<EditedTable> read(std::string text, const std::string &file,
                                                  Broken broken = Broken::Refuses);
    /// A file that is not there yet.
    [[nodiscard]] static EditedTable fresh(SheetKind kind);

    [[nodiscard]] const std::vector<std::string> &headings() const { return m_headings; }
    [[nodiscard]] std::size_t rowCount() const { return m_rows.size(); }
    /// The cells of a row that are not empty.
    [[nodiscard]] RowCells row(std::size_t at) const;
    /// The row of a key (keyOf()); nothing where there is none.
    [[nodiscard]] std::optional<std::size_t> find(const std::string &key) const;
    /// In place of the row with the same key, or behind all.
    void put(RowCells cells);
    [[nodiscard]] std::string text() const;

private:
    struct Row {
        std::size_t record = 0;             ///< Of the text that was read …
        std::optional<RowCells> cells = {}; ///< … or these instead.
    };
    EditedTable() = default;
    [[nodiscard]] std::string_view asItWas(std::size_t record) const;
    [[nodiscard]] std::string line(const RowCells &cells) const;
    [[nodiscard]] std::string lineEnd() const;
    void know();

    SheetKind m_kind = SheetKind::Parts;
    std::unique_ptr<const std::string> m_text; ///< The table points into it.
    std::unique_ptr<const CsvTable> m_table;   ///< Nothing of a fresh one.
    std::vector<std::string> m_headings;
    bool m_isWider = false; ///< Columns came in.
    std::vector<Row> m_rows;
    std::unordered_map<std::string, std::size_t> m_byKey;
};

} // namespace flarestock
