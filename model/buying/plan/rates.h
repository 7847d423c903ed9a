// SPDX-License-Identifier: MIT
//
// Rates: what one of another currency is worth in the shop's, as the shop wrote it down day by day.
//
//   rates.of(EUR, "2026-11-28")      // the newest that was written by then: 1.0850

#pragma once

#include "model/exact/money.h"

#include <optional>
#include <string>
#include <vector>

namespace flarestock {

struct Rate {
    Currency currency;
    Decimal rate;    ///< So much of the shop's currency for one of it; more than zero.
    std::string day; ///< From this day on: "2026-11-02".
    friend bool operator==(const Rate &, const Rate &) = default;
};

class Rates {
public:
    /// `shops` is the shop's currency, which is always worth one of itself.
    Rates(Currency shops, std::vector<Rate> rates);
    /// Nothing where none was written by that day.
    [[nodiscard]] std::optional<Decimal> of(const Currency &currency, std::string_view day) const;
    [[nodiscard]] const Currency &shops() const noexcept { return m_shops; }

private:
    Currency m_shops;
    std::vector<Rate> m_rates; ///< By day.
};

} // namespace flarestock
