// SPDX-License-Identifier: MIT

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/exchange/sheet.h"
#include "model/exchange/shop_toml.h"

#include <algorithm>
#include <array>
#include <set>

namespace flarestock {

namespace {

enum StockColumn : ColumnId {
    StockPart,
    StockPlace,
    StockQuantity,
    StockValue,
    StockLot,
    StockCondition,
    StockMissing
};
constexpr std::array<std::string_view, 7> StockHeadings = {"part", "place",     "quantity", "value",
                                                           "lot",  "condition", "missing"};
constexpr std::int32_t ValueDecimals = 6;

class StockRows {
public:
    StockRows(const Catalogue &catalogue, std::span<const Place> places)
        : m_catalogue(catalogue), m_places(places)
    {
    }
    [[nodiscard]] OpeningStock read(const SheetRow &row);

private:
    [[nodiscard]] const Part *partOf(const SheetRow &row) const;
    [[nodiscard]] std::string placeOf(const SheetRow &row) const;
    void checkQuantity(const SheetRow &row, const Part &part, const OpeningStock &stock) const;
    void checkLot(const SheetRow &row, const Part &part, const OpeningStock &stock);
    void checkMissing(const SheetRow &row, const Part &part, OpeningStock &stock) const;

    const Catalogue &m_catalogue;
    std::span<const Place> m_places;
    std::set<std::pair<std::string, std::string>> m_lots; ///< Part and lot.
};

const Part *StockRows::partOf(const SheetRow &row) const
{
    const std::string number = row.required(StockPart);
    const Part *const part = m_catalogue.find(number);
    if (!part && !number.empty())
        row.wrong(StockPart, {'"' + number + "\" is no part of the catalogue",
                              "Enter that part, or correct its number."});
    return part;
}

std::string StockRows::placeOf(const SheetRow &row) const
{
    const std::string id = row.required(StockPlace);
    if (m_places.empty() || id.empty())
        return id;
    std::vector<std::string_view> ids;
    for (const Place &place : m_places) {
        if (sameFolded(place.id, id))
            return place.id;
        ids.push_back(place.id);
    }
    row.wrong(StockPlace, {"there is no place \"" + id + '"', wordRemedy(id, ids)});
    return id;
}

void StockRows::checkQuantity(const SheetRow &row, const Part &part,
                              const OpeningStock &stock) const
{
    if (const auto smallest = Quantity{stock.quantity, part.unit}.smallest(); !smallest)
        row.wrong(StockQuantity, {stock.quantity.text() + ' ' + std::string(text(part.unit)) +
                                      ": " + smallest.error().wrong,
                                  smallest.error().remedy});
    const auto micros = stock.value.rescaledExact(ValueDecimals);
    if (!micros || !(*micros * Decimal(1'000'000)).toInt64())
        row.wrong(StockValue, {"the value " + stock.value.text() +
                                   " is too large or has more than six decimals",
                               "Correct the number."});
}

void StockRows::checkLot(const SheetRow &row, const Part &part, const OpeningStock &stock)
{
    if (stock.lot.empty()) {
        if (part.kind == Kind::Hose)
            row.wrong(StockLot, {"a piece of hose has no lot",
                                 "Give each piece an id of its own, a row each."});
        return;
    }
    if (part.unit != Unit::Each && !m_lots.emplace(part.number, folded(stock.lot)).second)
        row.wrong(StockLot, {"the piece \"" + stock.lot + "\" stands twice",
                             "Give each piece an id of its own."});
}

void StockRows::checkMissing(const SheetRow &row, const Part &part, OpeningStock &stock) const
{
    if (!row.has(StockMissing))
        return;
    for (const SheetRow::Item &item : row.items(StockMissing)) {
        const auto inside =
            std::find_if(part.box.begin(), part.box.end(),
                         [&item](const PartCount &one) { return sameFolded(one.part, item.text); });
        if (inside != part.box.end())
            stock.missing.push_back(inside->part);
        else
            row.wrong(
                StockMissing,
                {'"' + std::string(item.text) + "\" does not lie in the box of " + part.number,
                 "Correct the number, or enter it under box."},
                item.within);
    }
}

OpeningStock StockRows::read(const SheetRow &row)
{
    OpeningStock stock;
    const Part *const part = partOf(row);
    stock.place = placeOf(row);
    (void)row.required(StockQuantity);
    const auto quantity = row.numberAbove(StockQuantity, 0);
    stock.quantity = quantity.value_or(1);
    stock.value = row.number(StockValue).value_or(0);
    if (stock.value.sign() < 0)
        row.wrong(StockValue, {"the value is below zero", "Correct the number."});
    stock.lot = row.text(StockLot);
    if (row.has(StockCondition)) {
        if (const auto condition = parsePieceCondition(row.text(StockCondition)))
            stock.condition = *condition;
        else
            row.refused(StockCondition, condition.error(), row.cell(StockCondition).within);
    }
    if (part) {
        stock.part = part->number;
        checkQuantity(row, *part, stock);
        checkLot(row, *part, stock);
        checkMissing(row, *part, stock);
    }
    return stock;
}

} // namespace

Result<std::vector<OpeningStock>> readOpeningStock(std::string_view text, std::string file,
                                                   const Catalogue &catalogue,
                                                   std::span<const Place> places)
{
    const auto table = readCsv(text, std::move(file));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, StockHeadings, problems);
    std::vector<OpeningStock> all;
    if (sheet.require({StockPart, StockPlace, StockQuantity, StockValue}, problems)) {
        StockRows rows(catalogue, places);
        all.reserve(sheet.rowCount());
        for (std::size_t i = 0; i < sheet.rowCount() && problems.isEmpty(); ++i)
            all.push_back(rows.read(SheetRow(sheet, i, problems)));
    }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return all;
}

} // namespace flarestock
