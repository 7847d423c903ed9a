// SPDX-License-Identifier: MIT

#include "model/exchange/typed/typed_row.h"

#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/part_columns.h"
#include "model/exchange/catalogue/trade_rows.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A row as a table of one: a part's is wrong in no more ways than this.
constexpr std::size_t FaultsMost = 60;

struct OneRow {
    std::string text;
    std::vector<std::string> headings;
    std::size_t headEnd = 0; ///< Where the row begins.
};

OneRow asTable(SheetKind kind, const RowCells &cells)
{
    OneRow row;
    row.headings = neededHeadings(kind);
    for (const auto &[heading, text] : cells) {
        const bool isThere =
            std::find(row.headings.begin(), row.headings.end(), heading) != row.headings.end();
        if (!isThere && !trimmed(text).empty())
            row.headings.push_back(heading);
    }
    std::string values;
    for (const std::string &heading : row.headings) {
        const bool isFirst = row.text.empty();
        row.text += (isFirst ? "" : ",") + csvField(heading);
        // A row of one empty field would be an empty line.
        values += (isFirst ? "" : ",") + csvField(cellOf(cells, heading));
    }
    row.text += '\n';
    row.headEnd = row.text.size();
    row.text += values + '\n';
    return row;
}

/// Which cell a problem points at.
CellFault faultOf(const Problem &problem, const OneRow &row, const CsvTable &table)
{
    CellFault fault{{}, problem.wrong, problem.remedy, 0};
    if (problem.line == 0)
        return fault;
    const std::size_t byte = byteOf(row.text, problem.line, problem.column);
    const auto fields =
        byte < row.headEnd || table.recordCount() == 0 ? table.header() : table.record(0);
    for (std::size_t at = 0; at < fields.size(); ++at) {
        if (fields[at].begin > byte)
            break;
        fault.heading = row.headings[at];
        const bool isQuoted = row.text[fields[at].begin] == '"';
        const std::size_t begin = fields[at].begin + (isQuoted ? 1 : 0);
        fault.within = byte > begin ? byte - begin : 0;
    }
    return fault;
}

void readAs(SheetKind kind, const CsvTable &table, const RowKnows &knows, Problems &problems)
{
    if (kind == SheetKind::Suppliers) {
        (void)readSuppliers(table, problems);
        return;
    }
    PartOrigins origins;
    if (kind == SheetKind::Offers) {
        const auto part = table.column("part");
        const std::string number(part ? trimmed(table.record(0)[*part].text) : "");
        if (knows.kindOf && knows.kindOf(number))
            origins.emplace(folded(number), PartOrigin{});
        (void)readOffers(table, {&origins, &knows.suppliers}, problems);
        return;
    }
    const Sheet sheet(table, partHeadings(), problems);
    if (!problems.isEmpty())
        return;
    std::vector<Part> parts;
    PartRows(problems, origins).read(sheet, parts);
    if (knows.kindOf)
        checkReferences(sheet, knows.kindOf, problems);
}

} // namespace

std::vector<std::string> keyHeadings(SheetKind kind)
{
    if (kind == SheetKind::Suppliers)
        return {"supplier"};
    if (kind == SheetKind::Offers)
        return {"part", "supplier", "supplier part"};
    return {"part"};
}

std::vector<std::string> neededHeadings(SheetKind kind)
{
    if (kind == SheetKind::Suppliers)
        return {"supplier", "name"};
    if (kind == SheetKind::Offers)
        return {"part", "supplier", "currency", "prices"};
    return {"part", "kind", "description"};
}

std::string cellOf(const RowCells &cells, std::string_view heading)
{
    const auto found = cells.find(heading);
    return found == cells.end() ? std::string() : found->second;
}

std::string keyOf(SheetKind kind, const RowCells &cells)
{
    std::string key;
    for (const std::string &heading : keyHeadings(kind)) {
        const std::string cell = cellOf(cells, heading);
        // The supplier's own number is told apart by its case, too.
        key += heading == "supplier part" ? std::string(trimmed(cell)) : folded(trimmed(cell));
        key += '\n';
    }
    return key;
}

std::string csvField(std::string_view text)
{
    const bool isPlain = text.find_first_of("\",\r\n") == std::string_view::npos;
    if (isPlain)
        return std::string(text);
    std::string quoted = "\"";
    for (const char letter : text)
        quoted += letter == '"' ? std::string("\"\"") : std::string(1, letter);
    return quoted + '"';
}

std::vector<CellFault> faultsOf(SheetKind kind, const RowCells &cells, const RowKnows &knows)
{
    const OneRow row = asTable(kind, cells);
    const auto table = readCsv(row.text, "row");
    if (!table)
        return {{{}, table.error().wrong, table.error().remedy, 0}};
    Problems problems(FaultsMost);
    readAs(kind, *table, knows, problems);
    std::vector<CellFault> faults;
    for (const Problem &problem : problems.all())
        faults.push_back(faultOf(problem, row, *table));
    return faults;
}

} // namespace flarestock
