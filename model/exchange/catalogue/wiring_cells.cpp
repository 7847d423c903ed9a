// SPDX-License-Identifier: MIT

#include "model/exchange/catalogue/fact_cells.h"
#include "model/exchange/catalogue/part_columns.h"

namespace flarestock {

namespace {

using namespace column;

constexpr int ThinnestGauge = 40;

} // namespace

std::optional<double> readAmps(const SheetRow &row)
{
    if (const auto bare = Decimal::parse(row.text(Amps)); bare && bare->sign() > 0)
        return bare->approximate();
    return row.positive(Amps, Dimension::Current);
}

Facts readWire(const SheetRow &row)
{
    if (!row.has(Gauge))
        return WireFacts{};
    const auto typed = row.text(Gauge);
    if (typed == "1/0")
        return WireFacts{0};
    const auto number = Decimal::parse(typed);
    const auto gauge = number && number->scale() == 0 ? number->toInt64() : std::nullopt;
    if (gauge && *gauge >= 0 && *gauge <= ThinnestGauge)
        return WireFacts{static_cast<int>(*gauge)};
    row.wrong(Gauge, {'"' + std::string(typed) + "\" is no gauge of a wire",
                      "Write its AWG number, for example 12."});
    return WireFacts{};
}

} // namespace flarestock
