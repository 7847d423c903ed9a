// SPDX-License-Identifier: MIT
//
// Sheet: a CSV table with known headings. A row is read cell by cell as what it should hold; what
// is wrong with a cell becomes a Problem that points at it, and reading goes on.
//
//   enum : std::size_t { PartNumber, PackSize };
//   SheetRow row(sheet, 0, problems);
//   const auto pack = row.number(PackSize);   // nothing where empty or wrong

#pragma once

#include "model/exact/decimal.h"
#include "model/exchange/csv.h"
#include "model/fluids/measure.h"

namespace flarestock {

/// A column by its place in the list of headings that a kind of sheet has.
using ColumnId = std::size_t;

class Sheet {
public:
    /// `table` must outlive the sheet. Adds a problem for each heading that is not in `headings`.
    Sheet(const CsvTable &table, std::span<const std::string_view> headings, Problems &problems);

    [[nodiscard]] const CsvTable &table() const noexcept { return *m_table; }
    [[nodiscard]] std::string_view heading(ColumnId column) const { return m_headings[column]; }
    [[nodiscard]] std::size_t rowCount() const noexcept { return m_table->recordCount(); }
    [[nodiscard]] std::optional<std::size_t> place(ColumnId column) const noexcept
    {
        return m_places[column];
    }
    /// Whether all of these columns are there; a problem for each that is not.
    [[nodiscard]] bool require(std::initializer_list<ColumnId> columns, Problems &problems) const;

private:
    const CsvTable *m_table;
    std::span<const std::string_view> m_headings;
    std::vector<std::optional<std::size_t>> m_places; ///< By ColumnId: which column of the table.
};

class SheetRow {
public:
    /// `sheet` and `problems` must outlive the row.
    SheetRow(const Sheet &sheet, std::size_t index, Problems &problems)
        : m_sheet(&sheet), m_fields(sheet.table().record(index)), m_problems(&problems)
    {
    }

    /// A part of a cell, with where it begins in the cell's text.
    struct Item {
        std::string_view text;
        std::size_t within = 0;
    };

    /// The cell without blanks around it; empty where the column is not there.
    [[nodiscard]] Item cell(ColumnId column) const noexcept;
    [[nodiscard]] std::string_view text(ColumnId column) const noexcept
    {
        return cell(column).text;
    }
    [[nodiscard]] bool has(ColumnId column) const noexcept { return !text(column).empty(); }
    /// What stands between semicolons, without blanks around it; an empty item is a problem.
    [[nodiscard]] std::vector<Item> items(ColumnId column) const;

    /// Adds a problem at a cell (at the row's first where the column is not there), or at a byte of
    /// its text.
    void wrong(ColumnId column, TextFault fault, std::size_t within) const;
    void wrong(ColumnId column, TextFault fault) const;
    /// The same, with what another parser said.
    void refused(ColumnId column, const Problem &said, std::size_t within) const;

    /// The text of a cell that must not be empty.
    [[nodiscard]] std::string required(ColumnId column) const;
    /// These return nothing where the cell is empty or, with a problem, wrong.
    [[nodiscard]] std::optional<Decimal> number(ColumnId column) const;
    [[nodiscard]] std::optional<Decimal> numberAbove(ColumnId column, const Decimal &limit) const;
    [[nodiscard]] std::optional<int> whole(ColumnId column, int least, int most) const;
    [[nodiscard]] std::optional<bool> yesNo(ColumnId column) const;
    /// In the SI unit of the dimension (measure.h).
    [[nodiscard]] std::optional<double> measure(ColumnId column, Dimension dimension) const;
    /// The same, more than zero.
    [[nodiscard]] std::optional<double> positive(ColumnId column, Dimension dimension) const;
    /// One of some words, by its index.
    [[nodiscard]] std::optional<std::size_t> word(ColumnId column,
                                                  std::span<const std::string_view> words) const;

private:
    const Sheet *m_sheet;
    std::span<const CsvField> m_fields;
    Problems *m_problems;
};

} // namespace flarestock
