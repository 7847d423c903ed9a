// SPDX-License-Identifier: MIT

#include "model/exchange/csv.h"

#include "model/exact/case_fold.h"

#include <array>
#include <cassert>
#include <unordered_map>

namespace flarestock {

namespace {

constexpr std::size_t FieldsMax = 1'000'000;
constexpr std::string_view ByteOrderMark = "\xEF\xBB\xBF";

/// Whether a byte ends a field without quotes, or has no place in one.
constexpr auto StopsPlainField = [] {
    std::array<bool, 256> stops{};
    for (const unsigned byte : {0x2CU, 0x0AU, 0x0DU, 0x22U}) // comma, LF, CR, quote
        stops[byte] = true;
    return stops;
}();

std::optional<TextFault> encodingFault(std::string_view text)
{
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF"))
        return TextFault{"the text is UTF-16", "Save the sheet as CSV in UTF-8."};
    if (trimmed(text).empty() || text == ByteOrderMark)
        return TextFault{"the file is empty", "The first line names the columns."};
    return std::nullopt;
}

} // namespace

/// One pass over a text; stops at the first thing that is wrong.
class CsvReading {
public:
    CsvReading(std::string_view text, std::string file, Broken broken)
        : m_table(text, std::move(file)), m_text(text), m_broken(broken)
    {
    }
    Result<CsvTable> run();

private:
    [[nodiscard]] tl::unexpected<Problem> stop(std::size_t byte, TextFault fault) const
    {
        return tl::unexpected(problemAt(m_text, byte, m_table.m_file, std::move(fault)));
    }
    /// What can be put aside where the reader of the file wants it so.
    [[nodiscard]] tl::unexpected<Problem> stopRecord(std::size_t byte, TextFault fault)
    {
        m_fault = fault;
        return stop(byte, std::move(fault));
    }
    [[nodiscard]] bool putAside(std::size_t begin, std::size_t first);
    tl::expected<void, Problem> readRecord();
    tl::expected<void, Problem> readPlainField();
    tl::expected<void, Problem> readQuotedField();
    [[nodiscard]] tl::expected<void, Problem> checkHeader() const;
    [[nodiscard]] tl::expected<void, Problem> checkWidth(std::size_t first);
    /// The length of the line end here: 0 where there is none, also 0 at the end of the text.
    [[nodiscard]] std::size_t lineEnd(std::size_t byte) const noexcept;

    CsvTable m_table;
    std::string_view m_text;
    Broken m_broken;
    std::size_t m_at = 0;
    bool m_endsRecord = false;
    std::optional<TextFault> m_fault; ///< Of the record that is read, if it can be put aside.
};

std::size_t CsvReading::lineEnd(std::size_t byte) const noexcept
{
    if (byte >= m_text.size())
        return 0;
    if (m_text[byte] == '\n')
        return 1;
    return m_text[byte] == '\r' && byte + 1 < m_text.size() && m_text[byte + 1] == '\n' ? 2 : 0;
}

Result<CsvTable> CsvReading::run()
{
    if (auto fault = encodingFault(m_text))
        return stop(0, std::move(*fault));
    if (const auto bad = firstBadByte(m_text))
        return stop(*bad,
                    m_text[*bad] == '\0'
                        ? TextFault{"there is a NUL character", "Export the sheet again."}
                        : TextFault{"the text is not UTF-8", "Save the sheet as CSV in UTF-8."});
    if (m_text.starts_with(ByteOrderMark))
        m_at = ByteOrderMark.size();
    while (m_at < m_text.size()) {
        if (const std::size_t length = lineEnd(m_at)) {
            m_at += length;
            continue;
        }
        const std::size_t begin = m_at;
        const std::size_t first = m_table.m_fields.size();
        m_fault.reset();
        if (auto read = readRecord(); !read && !putAside(begin, first))
            return tl::unexpected(std::move(read.error()));
    }
    if (m_table.m_width == 0)
        return stop(0, {"the file is empty", "The first line names the columns."});
    return std::move(m_table);
}

/// Where a quote took lines along, nobody knows which of them it was meant for.
bool CsvReading::putAside(std::size_t begin, std::size_t first)
{
    const std::size_t lineFeed = std::min(m_text.find('\n', begin), m_text.size());
    const std::size_t next = std::min(lineFeed + 1, m_text.size());
    if (m_broken == Broken::Refuses || !m_fault || m_table.m_width == 0 || m_at > next)
        return false;
    std::string_view line = m_text.substr(begin, lineFeed - begin);
    if (line.ends_with('\r'))
        line.remove_suffix(1);
    m_table.m_broken.push_back({begin, line, *m_fault});
    m_table.m_fields.resize(first);
    m_at = next;
    return true;
}

tl::expected<void, Problem> CsvReading::readRecord()
{
    const std::size_t first = m_table.m_fields.size();
    m_endsRecord = false;
    while (!m_endsRecord) {
        if (m_table.m_fields.size() - first == FieldsMax)
            return stop(m_at, {"the record has more than 1,000,000 fields",
                               "Export the sheet again without empty columns."});
        const bool isQuoted = m_at < m_text.size() && m_text[m_at] == '"';
        if (auto read = isQuoted ? readQuotedField() : readPlainField(); !read)
            return read;
    }
    if (first > 0)
        return checkWidth(first);
    m_table.m_width = m_table.m_fields.size();
    return checkHeader();
}

tl::expected<void, Problem> CsvReading::readPlainField()
{
    const std::size_t begin = m_at;
    std::size_t end = begin;
    while (end < m_text.size() && !StopsPlainField[static_cast<unsigned char>(m_text[end])])
        ++end;
    const bool isStopped = end < m_text.size() && m_text[end] != ',' && lineEnd(end) == 0;
    if (isStopped && m_text[end] == '"')
        return stopRecord(end, {"there is a quote inside a field that has none around it",
                                "Put the field in quotes and write each quote in it twice."});
    if (isStopped)
        return stop(end, {"a carriage return ends no line", "End lines with CR LF or LF."});
    m_table.m_fields.push_back({m_text.substr(begin, end - begin), begin});
    m_endsRecord = end == m_text.size() || m_text[end] != ',';
    m_at = m_endsRecord ? end + lineEnd(end) : end + 1;
    return {};
}

tl::expected<void, Problem> CsvReading::readQuotedField()
{
    const std::size_t begin = m_at;
    std::string_view field;
    std::string *copied = nullptr;
    std::size_t from = begin + 1;
    std::size_t end = 0;
    for (;;) {
        end = m_text.find('"', from);
        if (end == std::string_view::npos)
            return stop(begin, {"the quote that begins here does not end", "Close the quote."});
        const std::string_view run = m_text.substr(from, end - from);
        const bool isDoubled = end + 1 < m_text.size() && m_text[end + 1] == '"';
        if (isDoubled && !copied)
            copied = &m_table.m_unquoted.emplace_back();
        if (copied)
            copied->append(run).append(isDoubled ? 1 : 0, '"');
        if (!isDoubled) {
            field = copied ? std::string_view(*copied) : run;
            break;
        }
        from = end + 2;
    }
    ++end;
    const bool isLast = end == m_text.size() || lineEnd(end) > 0;
    if (!isLast && m_text[end] != ',') {
        m_at = end; // So far its lines may go.
        return stopRecord(end, {"there is text after the closing quote",
                                "Write a quote inside a quoted field twice."});
    }
    m_table.m_fields.push_back({field, begin});
    m_endsRecord = isLast;
    m_at = isLast ? end + lineEnd(end) : end + 1;
    return {};
}

tl::expected<void, Problem> CsvReading::checkWidth(std::size_t first)
{
    const std::size_t width = m_table.m_fields.size() - first;
    if (width == m_table.m_width)
        return {};
    const auto counted = [](std::size_t count) {
        return std::to_string(count) + (count == 1 ? " field" : " fields");
    };
    // Too many: the first that has no heading. Too few: where the record begins.
    const std::size_t shown = width > m_table.m_width ? first + m_table.m_width : first;
    return stopRecord(
        m_table.m_fields[shown].begin,
        {"the record has " + counted(width) + ", the header " + counted(m_table.m_width),
         width > m_table.m_width ? "Put a field that holds a comma in quotes."
                                 : "Leave an unknown cell empty, but keep its comma."});
}

tl::expected<void, Problem> CsvReading::checkHeader() const
{
    std::unordered_map<std::string, std::size_t> seen;
    for (const CsvField &heading : m_table.m_fields) {
        if (!seen.emplace(folded(trimmed(heading.text)), heading.begin).second)
            return stop(heading.begin,
                        {"the heading \"" + std::string(heading.text) + "\" stands twice",
                         "Remove one of the two columns, or rename it."});
    }
    return {};
}

std::span<const CsvField> CsvTable::record(std::size_t index) const noexcept
{
    assert(index < recordCount());
    return std::span(m_fields).subspan((index + 1) * m_width, m_width);
}

std::optional<std::size_t> CsvTable::column(std::string_view name) const noexcept
{
    for (std::size_t i = 0; i < m_width; ++i) {
        if (sameFolded(trimmed(m_fields[i].text), name))
            return i;
    }
    return std::nullopt;
}

Problem CsvTable::at(const CsvField &field, TextFault fault, std::size_t within) const
{
    std::size_t byte = field.begin;
    if (byte < m_whole.size() && m_whole[byte] == '"' && (within > 0 || !field.text.empty())) {
        ++byte;
        for (; within > 0 && byte < m_whole.size(); --within)
            byte += m_whole[byte] == '"' ? 2U : 1U;
    } else {
        byte += within;
    }
    return problemAt(m_whole, byte, m_file, std::move(fault));
}

Result<CsvTable> readCsv(std::string_view text, std::string file, Broken broken)
{
    return CsvReading(text, std::move(file), broken).run();
}

} // namespace flarestock
