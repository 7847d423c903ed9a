// SPDX-License-Identifier: MIT
//
// Rows of suppliers.csv and offers.csv.

#pragma once

#include "model/exchange/catalogue/part_rows.h"

#include <map>

namespace flarestock {

/// Whoever takes ten years has mistyped.
inline constexpr int LeadDaysMax = 3650;

[[nodiscard]] std::span<const std::string_view> supplierHeadings() noexcept;
[[nodiscard]] std::span<const std::string_view> offerHeadings() noexcept;

/// The suppliers of a table; adds a problem for each row that is wrong.
[[nodiscard]] std::vector<Supplier> readSuppliers(const CsvTable &table, Problems &problems);

/// What an offer may name. Empty `parts` or `suppliers`: not checked, because they did not read.
struct KnownNames {
    const PartOrigins *parts = nullptr;
    const std::vector<Supplier> *suppliers = nullptr;
};
[[nodiscard]] std::vector<Offer> readOffers(const CsvTable &table, const KnownNames &known,
                                            Problems &problems);

} // namespace flarestock
