// SPDX-License-Identifier: MIT

#include "model/exchange/spares/kit_csv.h"

#include "model/exact/case_fold.h"
#include "model/exchange/sheet.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

enum KitColumn : ColumnId { KitPartNumber, KitRate, KitPrice, KitEach };
constexpr std::array<std::string_view, 4> Headings = {"part", "rate", "price", "each"};
constexpr int EachMost = 10'000;
constexpr std::int64_t PriceMost = 1'000'000;

KitRow readRow(const SheetRow &row)
{
    KitRow kit;
    kit.part = row.required(KitPartNumber);
    (void)row.required(KitRate);
    kit.rate = row.number(KitRate).value_or(0);
    if (kit.rate.sign() < 0)
        row.wrong(KitRate, {"nothing is used less than never", "Write a rate of zero or more."});
    (void)row.required(KitPrice);
    kit.price = row.numberAbove(KitPrice, 0).value_or(1);
    if (!kit.price.rescaledExact(6) || kit.price > Decimal(PriceMost))
        row.wrong(KitPrice, {"the price is above a million, or has more than six decimals",
                             "Write what one piece costs: 12.50."});
    kit.each = row.whole(KitEach, 1, EachMost).value_or(1);
    return kit;
}

} // namespace

Result<std::vector<KitRow>> readKit(std::string_view text, std::string name)
{
    const auto table = readCsv(text, name);
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, Headings, problems);
    std::vector<KitRow> rows;
    if (sheet.require({KitPartNumber, KitRate, KitPrice}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            KitRow kit = readRow(row);
            const auto same = [&kit](const KitRow &other) {
                return sameFolded(other.part, kit.part);
            };
            if (!kit.part.empty() && std::any_of(rows.begin(), rows.end(), same))
                row.wrong(KitPartNumber, {kit.part + " stands twice", "Write it in one row."});
            rows.push_back(std::move(kit));
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    if (rows.empty())
        return problem(std::move(name), "names no part", "Write a row for each part of the kit.");
    return rows;
}

} // namespace flarestock
