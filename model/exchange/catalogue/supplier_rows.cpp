// SPDX-License-Identifier: MIT
//
// Rows of suppliers.csv: who he is, how long he takes, what he asks besides the goods.

#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/trade_rows.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

enum SupplierColumn : ColumnId {
    Id,
    Name,
    Lead,
    InCurrency,
    Freight,
    MinimumOrder,
    TaxPercent,
    TaxBy,
    TaxRounding,
    TaxRecovered,
    Address
};
constexpr std::array<std::string_view, 11> Headings = {
    "supplier",    "name",   "lead days",    "currency",      "freight", "minimum order",
    "tax percent", "tax by", "tax rounding", "tax recovered", "address"};

constexpr std::array<std::string_view, 2> TaxByWords = {"item", "document"};
constexpr std::array<std::string_view, 2> RoundingWords = {"half up", "half even"};

/// "0: 12.00; 250: 0", rising from 0; empty with a problem where it is wrong.
std::vector<Supplier::FreightStep> readFreight(const SheetRow &row)
{
    std::vector<Supplier::FreightStep> steps;
    for (const SheetRow::Item &item : row.items(Freight)) {
        const std::size_t colon = std::min(item.text.find(':'), item.text.size());
        const auto from = Decimal::parse(trimmed(item.text.substr(0, colon)));
        const auto cost =
            Decimal::parse(trimmed(item.text.substr(std::min(colon + 1, item.text.size()))));
        TextFault fault{};
        if (!from || !cost || from->sign() < 0 || cost->sign() < 0)
            fault = {"the freight \"" + std::string(item.text) + "\" cannot be read",
                     "Write for example 0: 12.00; 250: 0."};
        else if (steps.empty() && !from->isZero())
            fault = {"the freight does not begin at 0",
                     "Say first what the smallest order costs: 0: 12.00."};
        else if (!steps.empty() && *from <= steps.back().from)
            fault = {"the freight steps do not rise", "Sort them by the value of the goods."};
        if (!fault.wrong.empty()) {
            row.wrong(Freight, std::move(fault), item.within);
            return {};
        }
        steps.push_back({*from, *cost});
    }
    return steps;
}

TaxRule readTax(const SheetRow &row)
{
    TaxRule tax;
    if (const auto percent = row.number(TaxPercent)) {
        if (percent->sign() < 0 || *percent > Decimal(100))
            row.wrong(TaxPercent, {"a tax of " + percent->text() + " % cannot be",
                                   "Write percent, from 0 to 100."});
        tax.percent = *percent;
    }
    if (const auto by = row.word(TaxBy, TaxByWords))
        tax.by = *by == 0 ? TaxRule::By::Item : TaxRule::By::Document;
    if (const auto rounding = row.word(TaxRounding, RoundingWords))
        tax.rounding = *rounding == 0 ? Rounding::HalfUp : Rounding::HalfEven;
    tax.recovered = row.yesNo(TaxRecovered).value_or(true);
    return tax;
}

Supplier readSupplier(const SheetRow &row)
{
    Supplier supplier;
    supplier.id = row.required(Id);
    supplier.name = row.required(Name);
    supplier.leadDays = row.whole(Lead, 0, LeadDaysMax).value_or(0);
    if (row.has(InCurrency)) {
        const auto currency = Currency::parse(row.text(InCurrency));
        if (currency)
            supplier.currency = *currency;
        else
            row.refused(InCurrency, currency.error(), row.cell(InCurrency).within);
    }
    supplier.freight = readFreight(row);
    if (const auto minimum = row.number(MinimumOrder)) {
        if (minimum->sign() < 0)
            row.wrong(MinimumOrder, {"the minimum order is below zero", "Write what the goods of "
                                                                        "an order come to at "
                                                                        "least."});
        supplier.minimumOrder = *minimum;
    }
    supplier.tax = readTax(row);
    for (const SheetRow::Item &line : row.items(Address))
        supplier.address.emplace_back(line.text);
    return supplier;
}

} // namespace

std::span<const std::string_view> supplierHeadings() noexcept
{
    return Headings;
}

std::vector<Supplier> readSuppliers(const CsvTable &table, Problems &problems)
{
    const Sheet sheet(table, Headings, problems);
    std::vector<Supplier> suppliers;
    if (!sheet.require({Id, Name}, problems))
        return suppliers;
    for (std::size_t i = 0; i < sheet.rowCount() && !problems.isFull(); ++i) {
        const SheetRow row(sheet, i, problems);
        Supplier supplier = readSupplier(row);
        const bool isThere =
            std::any_of(suppliers.begin(), suppliers.end(), [&supplier](const Supplier &other) {
                return sameFolded(other.id, supplier.id);
            });
        if (isThere)
            row.wrong(Id, {"the supplier \"" + supplier.id + "\" stands twice",
                           "Give one of them another id."});
        else
            suppliers.push_back(std::move(supplier));
    }
    return suppliers;
}

} // namespace flarestock
