// SPDX-License-Identifier: MIT

#include "app/buyer/costing/build_cost.h"

#include <algorithm>

namespace flarestock {

namespace {

struct Issues {
    std::int64_t quantity = 0;
    std::int64_t value = 0;
};

/// What of a part went to a build, less what came back.
Result<Issues> issuedOf(const std::string &part, const std::string &build, const ShopFile &file)
{
    const auto movements = file.movements(part);
    if (!movements)
        return tl::unexpected(movements.error());
    Issues sum;
    for (const Movement &one : *movements) {
        if (one.document != build || (one.deed != Deed::Issue && one.deed != Deed::Return))
            continue;
        const std::int64_t sign = one.deed == Deed::Issue ? 1 : -1;
        sum.quantity += sign * one.quantity;
        sum.value += sign * one.value;
    }
    return sum;
}

void addTo(std::vector<CostSum> &sums, const std::string &name, const CostLine &line)
{
    auto at = std::find_if(sums.begin(), sums.end(),
                           [&](const CostSum &sum) { return sum.name == name; });
    if (at == sums.end()) {
        sums.push_back({name, {}, {}});
        at = sums.end() - 1;
    }
    at->planned += line.planned.value_or(Decimal());
    at->actual += line.actual;
}

/// The title of a station; of a line that serves none it is the lines' own.
std::string titleOf(const std::string &station, const Expansion &expansion)
{
    const PlacedStation *placed = expansion.station(station);
    return placed && placed->station ? placed->station->title : station;
}

CostLine lineOf(const Part &part, const Issues &issues, std::int32_t minorDigits)
{
    CostLine line;
    line.part = &part;
    line.issued = issues.quantity;
    line.actual = Decimal::scaled(issues.value, 6).rescaled(minorDigits, Rounding::HalfEven);
    return line;
}

} // namespace

Result<BuildCost> costOf(const BuildPlan &plan, const ShopFile &file, const Workshop &workshop)
{
    const auto built = workBuild(workshop, plan);
    if (!built)
        return tl::unexpected(built.error());
    const std::int32_t digits = workshop.settings.currency.minorDigits();
    BuildCost cost;
    std::set<std::string> onBill;
    for (const PricedLine &priced : built->bill.lines) {
        const Part &part = *priced.line->part;
        const auto issues = issuedOf(part.number, plan.id, file);
        if (!issues)
            return tl::unexpected(issues.error());
        CostLine line = lineOf(part, *issues, digits);
        const auto &stations = priced.line->stations;
        line.station = stations.empty() ? "lines" : titleOf(stations.front(), built->expansion);
        line.need = priced.line->need.amount;
        if (priced.cost)
            line.planned = priced.cost->amount;
        else
            cost.unpriced.push_back(part.number);
        onBill.insert(part.number);
        cost.lines.push_back(std::move(line));
    }
    for (const Claims::value_type *one : workshop.claimsOf(plan.id)) {
        const auto &key = one->first;
        const Part *part = workshop.part(key.part);
        if (!part || onBill.contains(key.part))
            continue;
        const auto issues = issuedOf(key.part, plan.id, file);
        if (!issues)
            return tl::unexpected(issues.error());
        if (issues->quantity != 0 || issues->value != 0)
            cost.lines.push_back(lineOf(*part, *issues, digits));
    }
    cost.total.name = built->expansion.system;
    cost.total.planned = cost.total.actual = Decimal::scaled(0, digits);
    for (const CostLine &line : cost.lines) {
        addTo(cost.byStation, line.station.empty() ? "not on the bill" : line.station, line);
        addTo(cost.byKind, std::string(text(line.part->kind)), line);
        cost.total.planned += line.planned.value_or(Decimal());
        cost.total.actual += line.actual;
    }
    return cost;
}

} // namespace flarestock
