// SPDX-License-Identifier: MIT

#include "model/exchange/typed/list_reading.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/exchange/catalogue/part_columns.h"
#include "model/exchange/catalogue/trade_rows.h"
#include "model/exchange/typed/doubts.h"

#include <algorithm>
#include <limits>

namespace flarestock {

namespace {

bool holds(const std::vector<std::string> &headings, std::string_view heading)
{
    return std::find(headings.begin(), headings.end(), heading) != headings.end();
}

SheetKind kindOf(const std::vector<std::string> &headings)
{
    if (holds(headings, "prices"))
        return SheetKind::Offers;
    return holds(headings, "supplier") && !holds(headings, "part") ? SheetKind::Suppliers
                                                                   : SheetKind::Parts;
}

/// The name under which such a list is read.
std::string nameOf(SheetKind kind)
{
    return kind == SheetKind::Suppliers ? "suppliers.csv"
           : kind == SheetKind::Offers  ? "offers.csv"
                                        : "parts.csv";
}

bool isHeadingOfAny(std::string_view heading)
{
    const auto is = [&](const auto &headings) {
        return std::find(headings.begin(), headings.end(), heading) != headings.end();
    };
    return is(supplierHeadings()) || is(offerHeadings()) || is(partHeadings());
}

bool namesAColumn(std::string_view line, char between)
{
    for (bool goesOn = true; goesOn;) {
        const std::size_t end = std::min(line.find(between), line.size());
        const std::string_view cell = trimmed(line.substr(0, end));
        const bool isQuoted = cell.size() > 1 && cell.front() == '"' && cell.back() == '"';
        if (isHeadingOfAny(folded(isQuoted ? cell.substr(1, cell.size() - 2) : cell)))
            return true;
        goesOn = end < line.size();
        line.remove_prefix(std::min(end + 1, line.size()));
    }
    return false;
}

/// Of any other text, a letter for example, it helps nobody which of its commas is wrong.
Result<void> isList(const ListFile &file)
{
    constexpr std::string_view Mark = "\xEF\xBB\xBF";
    std::string_view text = file.text;
    if (firstBadByte(text))
        return {}; // The reader says so.
    text.remove_prefix(text.starts_with(Mark) ? Mark.size() : 0);
    text.remove_prefix(std::min(text.find_first_not_of("\r\n"), text.size()));
    const std::string_view first = text.substr(0, text.find_first_of("\r\n"));
    if (first.empty() || namesAColumn(first, ','))
        return {};
    if (namesAColumn(first, ';') || namesAColumn(first, '\t'))
        return problem(file.name, "has no comma between its cells",
                       "Save it again as CSV with commas.");
    return problem(file.name, "is no list of parts, suppliers or offers",
                   "The first line of one names its columns, for example part,kind,description.");
}

Result<void> areKnown(const std::vector<std::string> &headings, SheetKind kind,
                      const std::string &file)
{
    const auto known = kind == SheetKind::Suppliers ? supplierHeadings()
                       : kind == SheetKind::Offers  ? offerHeadings()
                                                    : partHeadings();
    for (const std::string &heading : headings) {
        if (std::find(known.begin(), known.end(), heading) == known.end())
            return problem(file, "has a column \"" + heading + "\", which no list here has",
                           wordRemedy(heading, known));
    }
    for (const std::string &heading : keyHeadings(kind)) {
        if (heading != "supplier part" && !holds(headings, heading))
            return problem(file, "has no column \"" + heading + "\"",
                           "Name it in the first line: by it rows are told apart.");
    }
    return {};
}

/// On which line a byte stands; asked for one after the other.
class LineCount {
public:
    explicit LineCount(const std::string &text) : m_text(text) {}
    std::size_t at(std::size_t byte)
    {
        m_line += static_cast<std::size_t>(
            std::count(m_text.begin() + static_cast<std::ptrdiff_t>(m_at),
                       m_text.begin() + static_cast<std::ptrdiff_t>(byte), '\n'));
        m_at = byte;
        return m_line;
    }

private:
    const std::string &m_text;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
};

/// The line on which each record begins.
std::vector<std::size_t> linesOf(const CsvTable &table, const std::string &text)
{
    std::vector<std::size_t> lines;
    LineCount count(text);
    for (std::size_t record = 0; record < table.recordCount(); ++record)
        lines.push_back(count.at(table.record(record).front().begin));
    return lines;
}

std::vector<AskedRow> brokenOf(const CsvTable &table, const std::string &text)
{
    std::vector<AskedRow> all;
    LineCount count(text);
    for (const BrokenRecord &one : table.broken()) {
        AskedRow asked;
        asked.row.line = count.at(one.begin);
        asked.line = one.line;
        asked.faults.push_back({{}, one.fault.wrong, one.fault.remedy, 0});
        all.push_back(std::move(asked));
    }
    return all;
}

} // namespace

Result<ListReading> ListReading::begin(const ListFile &file, const TextFiles &documents,
                                       const Catalogue &catalogue)
{
    ListReading reading;
    if (const auto isOne = isList(file); !isOne)
        return tl::unexpected(isOne.error());
    const auto table = readCsv(file.text, file.name, Broken::IsPutAside);
    if (!table)
        return tl::unexpected(table.error());
    if (table->recordCount() == 0 && table->broken().empty())
        return problem(file.name, "has no row below the names of its columns",
                       "There is nothing to take in.");
    reading.m_lines = linesOf(*table, file.text);
    reading.m_broken = brokenOf(*table, file.text);
    std::vector<std::string> headings;
    for (const CsvField &field : table->header())
        headings.push_back(folded(trimmed(field.text)));
    reading.m_kind = flarestock::kindOf(headings);
    if (const auto known = areKnown(headings, reading.m_kind, file.name); !known)
        return tl::unexpected(known.error());
    auto list = EditedTable::read(file.text, nameOf(reading.m_kind), Broken::IsPutAside);
    auto shop = CatalogueRows::read(documents, reading.m_kind);
    if (!list || !shop)
        return tl::unexpected(list ? shop.error() : list.error());
    reading.m_list = std::move(*list);
    reading.m_shop = std::move(*shop);
    reading.m_catalogue = &catalogue;
    reading.m_suppliers.assign(catalogue.suppliers().begin(), catalogue.suppliers().end());
    reading.knowNumbers();
    return reading;
}

void ListReading::knowNumbers()
{
    for (std::size_t at = 0; m_kind == SheetKind::Parts && at < m_list->rowCount(); ++at) {
        const RowCells cells = m_list->row(at);
        m_numbers.emplace(folded(cellOf(cells, "part")),
                          parseKind(cellOf(cells, "kind")).value_or(Kind::Adapter));
    }
}

RowKnows ListReading::knows() const
{
    return {[this](std::string_view number) -> std::optional<Kind> {
                const auto own = m_numbers.find(folded(number));
                if (own != m_numbers.end())
                    return own->second;
                const Part *part = m_catalogue->find(number);
                return part ? std::optional(part->kind) : std::nullopt;
            },
            m_suppliers};
}

Result<bool> ListReading::readOn(std::size_t rows)
{
    const std::size_t end = std::min(m_at + rows, m_list->rowCount());
    for (; m_at < end && m_asking.size() <= AskedMost; ++m_at) {
        askBroken(m_lines[m_at]);
        readRow(m_at);
    }
    if (m_at == m_list->rowCount())
        askBroken(std::numeric_limits<std::size_t>::max());
    if (m_asking.size() > AskedMost)
        return problem("the file",
                       "has more than " + std::to_string(AskedMost) + " rows that are not clear",
                       "Look at it in a spreadsheet first: perhaps a column is another than its "
                       "heading says.");
    return m_at < m_list->rowCount();
}

void ListReading::askBroken(std::size_t before)
{
    for (; m_brokenAt < m_broken.size() && m_broken[m_brokenAt].row.line < before; ++m_brokenAt)
        m_asking.push_back(m_broken[m_brokenAt]);
}

void ListReading::readRow(std::size_t at)
{
    const RowCells typed = m_list->row(at);
    const std::string key = keyOf(m_kind, typed);
    ListRow row{m_lines[at], typed, m_shop->find(key)};
    if (row.before)
        row.cells.insert(row.before->begin(), row.before->end());
    const RowKnows known = knows();
    auto faults = faultsOf(m_kind, row.cells, known);
    const bool isWhole = faults.empty();
    const auto [seen, isFirst] = m_seen.emplace(key, row.line);
    if (!isFirst)
        faults.push_back({keyHeadings(m_kind).front(),
                          "stands in line " + std::to_string(seen->second) + " already",
                          {},
                          0});
    const bool isSame = row.before == row.cells;
    const bool isDoubtful = faults.empty() && !isSame && m_kind == SheetKind::Offers;
    if (isDoubtful) {
        const std::string supplier = cellOf(row.cells, "supplier");
        const auto [asks, isNew] = m_asks.try_emplace(supplier);
        if (isNew)
            asks->second = currencyAskedBy(supplier, *m_catalogue);
        faults = doubtsOf(row.cells, asks->second);
    }
    if (faults.empty()) {
        if (isSame)
            ++m_same;
        else
            m_clear.push_back(std::move(row));
        return;
    }
    AskedRow asked{row, typed, std::move(faults), {}, isDoubtful};
    asked.meant =
        isWhole ? std::optional(Understood{row.cells, {}}) : understood(m_kind, row.cells, known);
    m_asking.push_back(std::move(asked));
}

} // namespace flarestock
