// SPDX-License-Identifier: MIT

#include "model/exchange/catalogue/trade_rows.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>
#include <array>
#include <set>

namespace flarestock {

namespace {

constexpr int MultipleMax = 10'000;

enum OfferColumn : ColumnId {
    OfferPart,
    OfferSupplier,
    OfferNumber,
    OfferCurrency,
    OfferPack,
    OfferMinimum,
    OfferPrices,
    OfferLead,
    OfferMultiple
};
constexpr std::array<std::string_view, 9> OfferHeadings = {"part",     "supplier",  "supplier part",
                                                           "currency", "pack",      "minimum",
                                                           "prices",   "lead days", "multiple"};

/// "1: 12.50; 10: 11.00", rising; empty with a problem where it is wrong.
std::vector<Offer::Break> readBreaks(const SheetRow &row)
{
    std::vector<Offer::Break> breaks;
    (void)row.required(OfferPrices);
    for (const SheetRow::Item &item : row.items(OfferPrices)) {
        const std::size_t colon = std::min(item.text.find(':'), item.text.size());
        const auto from = Decimal::parse(trimmed(item.text.substr(0, colon)));
        const auto price =
            Decimal::parse(trimmed(item.text.substr(std::min(colon + 1, item.text.size()))));
        if (!from || !price || from->sign() < 0 || price->sign() < 0) {
            row.wrong(OfferPrices,
                      {"the price \"" + std::string(item.text) + "\" cannot be read",
                       "Write for example 1: 12.50; 10: 11.00."},
                      item.within);
            return {};
        }
        if (!breaks.empty() && *from <= breaks.back().from) {
            row.wrong(OfferPrices, {"the price breaks do not rise", "Sort them by quantity."},
                      item.within);
            return {};
        }
        breaks.push_back({*from, *price});
    }
    return breaks;
}

class OfferRows {
public:
    OfferRows(const CsvTable &table, const KnownNames &known, Problems &problems)
        : m_sheet(table, OfferHeadings, problems), m_known(known), m_problems(problems)
    {
        if (known.suppliers) {
            for (const Supplier &supplier : *known.suppliers)
                m_suppliers.emplace(folded(supplier.id), &supplier);
        }
    }

    std::vector<Offer> all();

private:
    [[nodiscard]] std::optional<Offer> readOffer(const SheetRow &row) const;
    [[nodiscard]] const Supplier *supplierOf(const SheetRow &row) const;
    static void checkLeast(const SheetRow &row, const Offer &offer);

    Sheet m_sheet;
    KnownNames m_known;
    Problems &m_problems;
    std::map<std::string, const Supplier *> m_suppliers;
};

const Supplier *OfferRows::supplierOf(const SheetRow &row) const
{
    const std::string id = row.required(OfferSupplier);
    const auto found = m_suppliers.find(folded(id));
    if (found != m_suppliers.end())
        return found->second;
    if (m_known.suppliers && !id.empty()) {
        std::vector<std::string_view> ids;
        for (const Supplier &supplier : *m_known.suppliers)
            ids.push_back(supplier.id);
        row.wrong(OfferSupplier, {"the supplier \"" + id + "\" is not known", wordRemedy(id, ids)});
    }
    return nullptr;
}

void OfferRows::checkLeast(const SheetRow &row, const Offer &offer)
{
    const Decimal lot = offer.pack * offer.multiple;
    const Decimal least = divide(std::max(offer.minimum, lot), lot, 0, Rounding::Ceiling) * lot;
    if (offer.breaks.front().from > least)
        row.wrong(OfferPrices, {"there is no price for " + least.text() +
                                    ", the least quantity that can be bought",
                                "Begin the prices there, or raise the minimum."});
}

std::optional<Offer> OfferRows::readOffer(const SheetRow &row) const
{
    const std::string part = row.required(OfferPart);
    if (m_known.parts && !part.empty() && m_known.parts->count(folded(part)) == 0)
        row.wrong(OfferPart, {'"' + part + "\" is no part of the catalogue",
                              "Enter that part, or correct its number."});
    const Supplier *const supplier = supplierOf(row);
    const std::string code = row.required(OfferCurrency);
    const auto currency = Currency::parse(code);
    if (!currency && !code.empty())
        row.refused(OfferCurrency, currency.error(), row.cell(OfferCurrency).within);
    const auto pack = row.numberAbove(OfferPack, 0);
    const auto minimum = row.numberAbove(OfferMinimum, 0);
    const auto multiple = row.whole(OfferMultiple, 1, MultipleMax);
    auto breaks = readBreaks(row);
    const auto lead = row.whole(OfferLead, 0, LeadDaysMax);
    if (!currency || breaks.empty())
        return std::nullopt;
    Offer offer{.part = part,
                .supplier = row.required(OfferSupplier),
                .supplierNumber = std::string(row.text(OfferNumber)),
                .pack = pack.value_or(1),
                .minimum = minimum.value_or(1),
                .multiple = multiple.value_or(1),
                .currency = *currency,
                .breaks = std::move(breaks),
                .leadDays = lead.value_or(supplier ? supplier->leadDays : 0)};
    checkLeast(row, offer);
    return offer;
}

std::vector<Offer> OfferRows::all()
{
    std::vector<Offer> offers;
    if (!m_sheet.require({OfferPart, OfferSupplier, OfferCurrency, OfferPrices}, m_problems))
        return offers;
    offers.reserve(m_sheet.rowCount());
    std::set<std::tuple<std::string, std::string, std::string>> seen;
    for (std::size_t i = 0; i < m_sheet.rowCount() && !m_problems.isFull(); ++i) {
        const SheetRow row(m_sheet, i, m_problems);
        const std::size_t before = m_problems.count();
        auto offer = readOffer(row);
        if (!seen.emplace(folded(row.text(OfferPart)), folded(row.text(OfferSupplier)),
                          std::string(row.text(OfferNumber)))
                 .second)
            row.wrong(OfferPart, {"this offer stands twice", "Remove one of the two rows."});
        if (offer && m_problems.count() == before)
            offers.push_back(std::move(*offer));
    }
    return offers;
}

} // namespace

std::span<const std::string_view> offerHeadings() noexcept
{
    return OfferHeadings;
}

std::vector<Offer> readOffers(const CsvTable &table, const KnownNames &known, Problems &problems)
{
    return OfferRows(table, known, problems).all();
}

} // namespace flarestock
