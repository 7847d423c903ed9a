// SPDX-License-Identifier: MIT

#include "model/buying/plan/rates.h"

#include <algorithm>

namespace flarestock {

Rates::Rates(Currency shops, std::vector<Rate> rates) : m_shops(shops), m_rates(std::move(rates))
{
    std::stable_sort(m_rates.begin(), m_rates.end(),
                     [](const Rate &a, const Rate &b) { return a.day < b.day; });
}

std::optional<Decimal> Rates::of(const Currency &currency, std::string_view day) const
{
    if (currency == m_shops)
        return Decimal(1);
    const auto found = std::find_if(m_rates.rbegin(), m_rates.rend(), [&](const Rate &rate) {
        return rate.currency == currency && rate.day <= day;
    });
    return found == m_rates.rend() ? std::nullopt : std::optional(found->rate);
}

} // namespace flarestock
