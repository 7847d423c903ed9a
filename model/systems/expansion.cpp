// SPDX-License-Identifier: MIT

#include "model/systems/expansion.h"

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
