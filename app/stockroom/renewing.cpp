// SPDX-License-Identifier: MIT

#include "app/stockroom/renewing.h"

#include "app/stockroom/asked.h"
#include "app/stockroom/handing_out.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>

namespace flarestock {

namespace {

Result<const PlacedJoint *> jointAsked(const std::string &typed, const Expansion &expansion)
{
    std::vector<std::string_view> places;
    std::vector<std::string_view> words; // Their ids too.
    for (const PlacedJoint &joint : expansion.joints) {
        if (sameFolded(joint.id, typed) || sameFolded(joint.at, typed))
            return &joint;
        places.push_back(joint.at);
        words.insert(words.end(), {joint.at, joint.id});
    }
    const std::string_view near = nearestWord(typed, words);
    return problem(typed, "is no joint of this build",
                   near.empty() ? "Joints are: " + listed(places) + "."
                                : "Perhaps " + std::string(near) + " is meant.");
}

/// What the build has in place of a planned part; the part itself where nothing else was put in.
const Part *asBuilt(const Part *planned, const BuildPlan &plan, const Workshop &workshop)
{
    const Part *part = planned;
    for (const Instead &instead : workshop.notes.build(plan.id).instead) {
        const Part *used = workshop.part(instead.used);
        if (used && sealsOnce(*used) && sameFolded(instead.planned, part->number))
            part = used;
    }
    return part;
}

bool hasAnything(const BuildPlan &plan, const Workshop &workshop)
{
    const auto claims = workshop.claimsOf(plan.id);
    return std::any_of(claims.begin(), claims.end(),
                       [](const auto *one) { return one->second.issued > 0; });
}

/// What of the joint seals once.
Result<std::vector<Renewed>> spentIn(const PlacedJoint &joint, const BuildPlan &plan,
                                     const Workshop &workshop)
{
    if (!hasAnything(plan, workshop))
        return problem(plan.id, "has got nothing yet, so that none of its joints is closed",
                       "Issue its parts first: flarestock issue " + plan.id + ".");
    std::vector<Renewed> pieces;
    for (const WayAid &aid : joint.way ? joint.way->aids : std::vector<WayAid>()) {
        if (!aid.part || !sealsOnce(*aid.part))
            continue;
        const Part *part = asBuilt(aid.part, plan, workshop);
        const auto known = std::find_if(pieces.begin(), pieces.end(),
                                        [part](const Renewed &one) { return one.part == part; });
        Renewed &piece =
            known == pieces.end() ? pieces.emplace_back(Renewed{part, 0, 0, 0}) : *known;
        piece.need += aid.need.count;
    }
    if (pieces.empty())
        return problem(joint.at, "has no ring and no crush washer",
                       "Look at its seats and threads before it is closed again.");
    return pieces;
}

/// Of a part at a car, what it holds: the earliest by lot first.
std::vector<Movement> oldOut(const Renewed &piece, const BuildPlan &plan, const std::string &usedUp,
                             const Ledger &ledger)
{
    std::vector<Movement> movements;
    std::int64_t left = piece.need;
    for (const auto &[key, held] : ledger.balancesOf(piece.part->number)) {
        const std::int64_t some = std::min(left, held.quantity);
        if (key.place != plan.car || some <= 0)
            continue;
        movements.push_back(movementOf(key, some, usedUp, Deed::Renew));
        left -= some;
    }
    return movements;
}

/// As many fresh ones as are free to whoever comes and may go into this car.
std::vector<Movement> freshIn(const Renewed &piece, const Due &due, const Workshop &workshop)
{
    std::int64_t there = 0;
    for (const auto &[key, quantity] : freePieces(*piece.part, workshop, due))
        there += quantity;
    const std::int64_t some = std::min(there, piece.need);
    if (some <= 0)
        return {};
    return takenNearest(*piece.part, some, workshop, {due.car, Deed::Renew, due})
        .value_or(std::vector<Movement>());
}

std::int64_t sumOf(const std::vector<Movement> &movements)
{
    std::int64_t sum = 0;
    for (const Movement &movement : movements)
        sum += movement.quantity;
    return sum;
}

} // namespace

bool sealsOnce(const Part &part)
{
    const auto *washer = part.as<WasherFacts>();
    return part.kind == Kind::Ring || (washer && washer->crush);
}

Result<RenewedAction> openedJoint(const std::string &build, const std::string &typed,
                                  const Workshop &workshop, const By &by)
{
    const auto plan = buildAsked(build, workshop);
    if (!plan)
        return tl::unexpected(plan.error());
    const auto worked = workBuild(workshop, **plan);
    if (!worked)
        return tl::unexpected(worked.error());
    const auto joint = jointAsked(typed, worked->expansion);
    if (!joint)
        return tl::unexpected(joint.error());
    auto pieces = spentIn(**joint, **plan, workshop);
    if (!pieces)
        return tl::unexpected(pieces.error());
    const auto usedUp = placeOfKind(PlaceKind::UsedUp, workshop.ledger);
    if (!usedUp)
        return tl::unexpected(usedUp.error());
    RenewedAction made{{}, (*joint)->id, (*joint)->at, std::move(*pieces)};
    std::vector<Movement> movements;
    for (Renewed &piece : made.pieces) {
        auto out = oldOut(piece, **plan, (*usedUp)->id, workshop.ledger);
        auto in = freshIn(piece, {{}, (*plan)->car, dayOf(by.at)}, workshop);
        piece.spent = sumOf(out);
        piece.taken = sumOf(in);
        std::move(out.begin(), out.end(), std::back_inserter(movements));
        std::move(in.begin(), in.end(), std::back_inserter(movements));
    }
    for (Movement &movement : movements) {
        movement.document = (*plan)->id;
        movement.why = by.why.empty() ? "joint opened: " + (*joint)->at : by.why;
    }
    if (!movements.empty())
        made.action = changed(std::move(movements), workshop, by);
    return made;
}

} // namespace flarestock
