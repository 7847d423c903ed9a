// SPDX-License-Identifier: MIT

#include "model/checks/joint_rating.h"

#include "model/checks/joint_parts.h"

#include <algorithm>

namespace flarestock {

namespace {

void takeIn(const Part &part, JointRating &rating)
{
    const Ratings &published = part.ratings;
    if (published.pressureKpa &&
        (!rating.pressureKpa || *published.pressureKpa < *rating.pressureKpa)) {
        rating.pressureKpa = published.pressureKpa;
        rating.weakest = &part;
    }
    if (published.lowC && (!rating.lowC || *published.lowC > *rating.lowC))
        rating.lowC = published.lowC;
    if (published.highC && (!rating.highC || *published.highC < *rating.highC)) {
        rating.highC = published.highC;
        rating.tenderest = &part;
    }
    auto &unrated = rating.unrated;
    if (!published.pressureKpa && holdsPressure(part.kind) &&
        std::find(unrated.begin(), unrated.end(), &part) == unrated.end())
        unrated.push_back(&part);
}

} // namespace

bool holdsPressure(Kind kind) noexcept
{
    switch (kind) {
    case Kind::Hose:
    case Kind::HoseEnd:
    case Kind::Tubing:
    case Kind::TubeNut:
    case Kind::Adapter:
    case Kind::Tee:
    case Kind::Manifold:
    case Kind::Bulkhead:
    case Kind::Cap:
    case Kind::Plug:
    case Kind::Filter:
    case Kind::Pump:
    case Kind::Regulator:
    case Kind::CheckValve:
    case Kind::Sender:
    case Kind::Gauge:
    case Kind::Rail:
    case Kind::Cooler:
    case Kind::MasterCylinder:
    case Kind::Calliper:
    case Kind::BrakeValve:
        return true;
    default:
        return false;
    }
}

JointRating ratingOf(const PlacedJoint &joint, const Expansion &expansion)
{
    JointRating rating;
    for (const Part *part : partsOf(joint, expansion))
        if (part != nullptr && part->kind != Kind::Tank)
            takeIn(*part, rating);
    return rating;
}

} // namespace flarestock
