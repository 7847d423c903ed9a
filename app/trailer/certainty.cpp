// SPDX-License-Identifier: MIT

#include "app/trailer/certainty.h"

#include "model/exact/case_fold.h"
#include "model/exact/decimal.h"

namespace flarestock {

Result<double> certaintyAsked(const std::string &typed, const std::string &named)
{
    std::string_view number = trimmed(typed);
    const bool hasSign = number.ends_with('%');
    if (hasSign)
        number = trimmed(number.substr(0, number.size() - 1));
    auto read = Decimal::parse(number);
    if (!read)
        return problem(named + " " + typed, "is no certainty", "Write 95% or 0.95.");
    const bool isPercent = hasSign || *read > Decimal(1); // Nothing is surer than 1.
    const Decimal part = isPercent ? *read * Decimal::scaled(1, 2) : *read;
    if (part >= Decimal(1))
        return problem(named + " " + typed, "cannot be had: no number of spares covers all",
                       "Write less, for example 99%.");
    if (part.sign() <= 0)
        return problem(named + " " + typed, "asks for nothing", "Write more, for example 95%.");
    const double certainty = part.approximate();
    if (certainty > 1 - 1e-9)
        return problem(named + " " + typed, "is nearer to all than can be reckoned",
                       "Write 99.9999999% at most.");
    return certainty;
}

} // namespace flarestock
