// SPDX-License-Identifier: MIT
//
// CSV as RFC 4180 describes it, read in one pass; only a field with a doubled quote is copied.
//
//   const auto table = readCsv(text, "fittings.csv");   // the first record is the header
//   const auto part = table->column("part");
//   table->record(0)[*part].text;                       // "AD-66"

#pragma once

#include "model/exchange/text_place.h"

#include <cstdint>
#include <deque>
#include <span>

namespace flarestock {

struct CsvField {
    std::string_view text; ///< Without its quotes.
    std::size_t begin = 0; ///< Where it begins in the whole text: its quote where it has one.
};

/// A record of which it cannot be told what its fields are, on one line.
struct BrokenRecord {
    std::size_t begin = 0; ///< Its first byte in the whole text.
    std::string_view line; ///< As it stands, without its line end.
    TextFault fault;
};

/// What a broken record means for the others.
enum class Broken { Refuses, IsPutAside };

class CsvTable {
public:
    /// The whole text must outlive the table, whose fields point into it.
    CsvTable(std::string_view whole, std::string file) : m_whole(whole), m_file(std::move(file)) {}
    CsvTable(const CsvTable &) = delete;
    CsvTable &operator=(const CsvTable &) = delete;
    CsvTable(CsvTable &&) noexcept = default;
    CsvTable &operator=(CsvTable &&) noexcept = default;
    ~CsvTable() = default;

    [[nodiscard]] const std::string &file() const noexcept { return m_file; }
    [[nodiscard]] std::span<const CsvField> header() const noexcept
    {
        return std::span(m_fields).first(m_width);
    }
    [[nodiscard]] std::size_t recordCount() const noexcept ///< Without the header.
    {
        return m_width == 0 ? 0 : m_fields.size() / m_width - 1;
    }
    /// As many fields as the header has. index < recordCount() (asserted).
    [[nodiscard]] std::span<const CsvField> record(std::size_t index) const noexcept;

    /// Index of a column, case folded; nothing where it is not there.
    [[nodiscard]] std::optional<std::size_t> column(std::string_view name) const noexcept;
    /// In the order of the text; none of them is among the records.
    [[nodiscard]] std::span<const BrokenRecord> broken() const noexcept { return m_broken; }
    /// A Problem that points at a field, or at a byte of its text, with the line as excerpt.
    [[nodiscard]] Problem at(const CsvField &field, TextFault fault, std::size_t within = 0) const;

private:
    friend class CsvReading;
    std::string_view m_whole;
    std::string m_file;
    std::vector<CsvField> m_fields; ///< All, row by row; the header first.
    std::size_t m_width = 0;
    std::deque<std::string> m_unquoted; ///< Fields that had a doubled quote.
    std::vector<BrokenRecord> m_broken;
};

/// A byte-order mark is skipped; CRLF and LF both end a record; empty lines are skipped.
/// Problem, with line and column: an endless quote, text after a closing quote, a quote inside a
/// field that has none around it, a carriage return that ends no line, a record with more or fewer
/// fields than the header, NUL, invalid UTF-8 (also UTF-16, by its mark), an empty file, the same
/// heading twice (case folded), more than 10^6 fields in a record. Of these, what concerns one
/// record below the header and no line but its own can be put aside: text after a closing quote, a
/// quote inside a field, a wrong number of fields.
[[nodiscard]] Result<CsvTable> readCsv(std::string_view text, std::string file,
                                       Broken broken = Broken::Refuses);

} // namespace flarestock
