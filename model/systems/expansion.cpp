// SPDX-License-Identifier: MIT

#include "model/systems/expansion.h"

#include "model/parts/cutting.h"

#include <algorithm>

namespace flarestock {

namespace {

template <class Things>
auto placedWith(const Things &things, std::string_view id)
{
    const auto found = std::find_if(things.begin(), things.end(),
                                    [&](const auto &thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

} // namespace

void BillLine::use(Use more)
{
    const auto same = std::find_if(uses.begin(), uses.end(), [&more](const Use &one) {
        return one.station == more.station && one.run == more.run;
    });
    if (same == uses.end())
        uses.push_back(std::move(more));
    else
        same->amount += more.amount;
}

Decimal allotted(const BillLine &line, const FreeStock *stock)
{
    if (!stock)
        return {};
    if (stock->level && *stock->level != StockLevel::Out)
        return line.need.amount; // Nobody counts it, and there is enough.
    if (!line.cuts.empty())
        return std::min(cuttable(line.cuts, *stock), line.need.amount);
    const Decimal &here = line.consumed ? stock->free.amount : stock->onHand.amount;
    return std::clamp(here, Decimal(), line.need.amount);
}

const PlacedStation *Expansion::station(std::string_view id) const noexcept
{
    return placedWith(stations, id);
}

const PlacedRun *Expansion::run(std::string_view id) const noexcept
{
    return placedWith(runs, id);
}

const PlacedJoint *Expansion::joint(std::string_view id) const noexcept
{
    return placedWith(joints, id);
}

} // namespace flarestock
