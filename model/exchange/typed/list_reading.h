// SPDX-License-Identifier: MIT
//
// List reading: a file of parts, suppliers or offers, read row by row beside what the shop has.
// What an empty cell does not say stays as the shop's card has it; a row that is not clear is put
// aside with what it probably means, for somebody to be asked, and so is a line that has more or
// fewer cells than the first, or a stray quote. Nothing is written here.
//
//   auto list = ListReading::begin({text, "autumn.csv"}, documents, *catalogue);
//   while (list->readOn(500))
//       …;
//   list->asking().front().faults;

#pragma once

#include "model/exchange/typed/catalogue_rows.h"
#include "model/exchange/typed/understood.h"

#include <unordered_set>

namespace flarestock {

struct ListFile {
    std::string text;
    std::string name;
};

/// A row of the list beside the shop's.
struct ListRow {
    std::size_t line = 0;           ///< In the file, from 1.
    RowCells cells;                 ///< With what the shop's row says besides.
    std::optional<RowCells> before; ///< The shop's; nothing: it is new there.
};

/// A row that somebody is asked about.
struct AskedRow {
    ListRow row;
    RowCells typed; ///< As it stands in the file.
    std::vector<CellFault> faults;
    std::optional<Understood> meant; ///< Nothing: nobody can tell.
    bool isDoubt = false;            ///< It can stand as it is, and is seldom meant.
    std::string line = {};           ///< The whole of it where it is no row of cells.
};

class ListReading {
public:
    /// Rows beyond which a file asks too much of a person.
    static constexpr std::size_t AskedMost = 500;

    /// By its headings it is known what the list holds. `documents` are the shop's; `catalogue`,
    /// what they say, must outlive it. Problem: no CSV, a heading that no such list has, none of
    /// those by which rows are told apart.
    [[nodiscard]] static Result<ListReading> begin(const ListFile &file, const TextFiles &documents,
                                                   const Catalogue &catalogue);

    /// Reads so many rows more; whether there are others. Problem: too many rows are not clear.
    [[nodiscard]] Result<bool> readOn(std::size_t rows);

    [[nodiscard]] SheetKind kind() const { return m_kind; }
    [[nodiscard]] std::size_t rowCount() const { return m_list->rowCount() + m_broken.size(); }
    [[nodiscard]] std::size_t readCount() const { return m_at + m_brokenAt; }
    [[nodiscard]] std::size_t sameCount() const { return m_same; } ///< As the shop has them.
    [[nodiscard]] const std::vector<ListRow> &clear() const { return m_clear; }
    [[nodiscard]] const std::vector<AskedRow> &asking() const { return m_asking; }

private:
    ListReading() = default;
    void readRow(std::size_t at);
    void askBroken(std::size_t before); ///< Those above a line.
    [[nodiscard]] RowKnows knows() const;
    void knowNumbers();

    SheetKind m_kind = SheetKind::Parts;
    std::optional<EditedTable> m_list;
    std::vector<std::size_t> m_lines; ///< By row.
    std::vector<AskedRow> m_broken;   ///< By line, as they are asked about.
    std::size_t m_brokenAt = 0;
    std::optional<CatalogueRows> m_shop;
    const Catalogue *m_catalogue = nullptr;
    std::vector<Supplier> m_suppliers;
    std::unordered_map<std::string, Kind> m_numbers;     ///< Of the list's own parts, folded.
    std::unordered_map<std::string, std::string> m_asks; ///< Suppliers' currencies.
    std::unordered_map<std::string, std::size_t> m_seen; ///< Key to line.
    std::size_t m_at = 0;
    std::size_t m_same = 0;
    std::vector<ListRow> m_clear;
    std::vector<AskedRow> m_asking;
};

} // namespace flarestock
