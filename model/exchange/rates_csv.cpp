// SPDX-License-Identifier: MIT

#include "model/exchange/rates_csv.h"

#include "model/exchange/sheet.h"
#include "model/journal/notes/lot_facts.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

enum RateColumn : ColumnId { OfCurrency, Worth, Day };
constexpr std::array<std::string_view, 3> Headings = {"currency", "rate", "day"};

std::optional<Rate> readRate(const SheetRow &row, const Currency &shops)
{
    const std::string code = row.required(OfCurrency);
    const auto currency = Currency::parse(code);
    if (!currency && !code.empty())
        row.refused(OfCurrency, currency.error(), row.cell(OfCurrency).within);
    if (currency && *currency == shops)
        row.wrong(OfCurrency, {code + " is the shop's own currency", "Take the row out."});
    (void)row.required(Worth);
    const auto rate = row.numberAbove(Worth, 0);
    const std::string day = row.required(Day);
    if (!day.empty() && !isDay(day))
        row.wrong(Day, {'"' + day + "\" is no day", "Write for example 2026-11-02."});
    if (!currency || !rate)
        return std::nullopt;
    return Rate{*currency, *rate, day};
}

} // namespace

Result<Rates> readRates(std::string_view text, std::string name, const Currency &shops)
{
    const auto table = readCsv(text, std::move(name));
    if (!table)
        return tl::unexpected(table.error());
    Problems problems(1);
    const Sheet sheet(*table, Headings, problems);
    std::vector<Rate> rates;
    if (sheet.require({OfCurrency, Worth, Day}, problems))
        for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
            const SheetRow row(sheet, i, problems);
            auto rate = readRate(row, shops);
            if (!rate)
                continue;
            const bool isThere =
                std::any_of(rates.begin(), rates.end(), [&rate](const Rate &other) {
                    return other.currency == rate->currency && other.day == rate->day;
                });
            if (isThere)
                row.wrong(Day, {"this rate stands twice", "Take one of the two rows out."});
            rates.push_back(std::move(*rate));
        }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return Rates(shops, std::move(rates));
}

} // namespace flarestock
