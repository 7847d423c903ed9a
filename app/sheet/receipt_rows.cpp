// SPDX-License-Identifier: MIT

#include "app/sheet/receipt_rows.h"

#include "app/stockroom/asked.h"

namespace flarestock {

namespace {

constexpr std::int32_t ValueDigits = 6;

std::string moneyText(std::int64_t micros)
{
    return Decimal::scaled(micros, ValueDigits).text();
}

std::string conditionWords(const SlipOfReceipt::Row &row)
{
    if (row.condition == PieceCondition::New)
        return row.note;
    const std::string said(text(row.condition));
    return row.note.empty() ? said : said + ", " + row.note;
}

} // namespace

Workbook receiptRows(const SlipOfReceipt &came, const Workshop &workshop)
{
    using Kind = WorkbookColumn::Kind;
    const std::string code(workshop.settings.currency.code());
    Workbook sheet{"received", came.day, ValueDigits, {}, {}, {}};
    sheet.columns = {{"day", Kind::Text, 11},          {"supplier", Kind::Text, 12},
                     {"order", Kind::Text, 11},        {"document", Kind::Text, 14},
                     {"part", Kind::Text, 16},         {"description", Kind::Text, 40},
                     {"quantity", Kind::Quantity, 10}, {"unit", Kind::Text, 6},
                     {"to", Kind::Text, 10},           {"lot", Kind::Text, 14},
                     {"condition", Kind::Text, 14},    {"value " + code, Kind::Amount, 14},
                     {"note", Kind::Text, 30}};
    std::int64_t sum = 0;
    for (const SlipOfReceipt::Row &row : came.rows) {
        sum += row.value;
        sheet.rows.push_back({came.day, came.supplier, came.order, came.document, row.part->number,
                              row.part->description, amountText(row.quantity, *row.part),
                              std::string(text(row.part->unit)), row.to, row.lot,
                              std::string(text(row.condition)), moneyText(row.value), row.note});
    }
    if (!came.rows.empty())
        sheet.sums = {"received", "", "", "", "", "", "", "", "", "", "", moneyText(sum), ""};
    return sheet;
}

PaperWords receivingSlip(const SlipOfReceipt &came, const Workshop &workshop, PaperWords paper)
{
    paper.title = came.order.empty() ? "Received" : "Received of order";
    paper.number = came.order;
    paper.made = came.day;
    paper.facts = {{"Date", came.day}, {"From", came.supplier}};
    if (!came.document.empty())
        paper.facts.emplace_back("Document", came.document);
    paper.columns = {{"Part", 17}, {"What", 36}, {"Came", 12, true},
                     {"To", 10},   {"Lot", 16},  {"Value", 15, true}};
    std::int64_t sum = 0;
    for (const SlipOfReceipt::Row &row : came.rows) {
        sum += row.value;
        paper.rows.push_back({row.part->number, row.part->description + "\n" + conditionWords(row),
                              spoken(row.quantity, *row.part), row.to, row.lot,
                              moneyText(row.value)});
    }
    if (came.rows.empty())
        paper.rows.push_back({"", "nothing came", "", "", "", ""});
    paper.sums = {{"Value " + std::string(workshop.settings.currency.code()), moneyText(sum)}};
    for (const std::string &one : came.besides)
        paper.note += (paper.note.empty() ? "" : "\n") + one;
    return paper;
}

} // namespace flarestock
