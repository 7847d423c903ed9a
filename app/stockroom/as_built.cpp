// SPDX-License-Identifier: MIT

#include "app/stockroom/as_built.h"

#include "app/stockroom/handing_out.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

/// An aid that is not written yet is one that is put in: as good as one that is.
int goodness(Verdict verdict) noexcept
{
    return static_cast<int>(verdict == Verdict::FitsWithAid ? Verdict::Fits : verdict);
}

/// The port of the other part that goes by the name of the one that stood there.
const Port *portLike(const Port &port, const Part &planned, const Part &used)
{
    for (const PartPort &one : planned.ports) {
        const PartPort *same = one.port == port ? used.port(one.name) : nullptr;
        if (same)
            return &same->port;
    }
    return nullptr;
}

/// The worst of its links, and why it is that.
const Mating &worstOf(const Way &way)
{
    return std::min_element(way.links.begin(), way.links.end(),
                            [](const Link &a, const Link &b) {
                                return goodness(a.mating.verdict) < goodness(b.mating.verdict);
                            })
        ->mating;
}

/// A joint as it is now: another piece in its way, or another port where it begins. Nothing where
/// the part does not stand in it.
std::optional<JointRequest> changed(const PlacedJoint &joint, const Expansion &expansion,
                                    const Replaced &replaced)
{
    const Part *planned = replaced.planned;
    JointRequest request;
    request.from = joint.from;
    request.to = joint.to;
    request.fluid = expansion.fluid;
    const auto &pieces = joint.way->pieces;
    bool stands = std::any_of(pieces.begin(), pieces.end(),
                              [&](const Piece &piece) { return piece.part == planned; });
    const PlacedStation *station = expansion.station(joint.station);
    if (station && station->part == planned) {
        const Port *port = portLike(joint.from, *planned, *replaced.used);
        stands = stands || port;
        if (port)
            request.from = *port;
    }
    return stands ? std::optional(std::move(request)) : std::nullopt;
}

/// What the planned one came from, where nobody has said where it goes.
Result<std::string> placeBack(const InsteadWords &asked, const BuildPlan &plan,
                              const Workshop &workshop, const std::vector<Movement> &history)
{
    if (!asked.backTo.empty()) {
        const auto place = placeAsked(asked.backTo, workshop.ledger);
        if (!place)
            return tl::unexpected(place.error());
        return (*place)->id;
    }
    for (auto at = history.rbegin(); at != history.rend(); ++at) {
        if (at->deed == Deed::Issue && at->document == plan.id && !at->reverses &&
            !workshop.ledger.isTakenBack(at->id))
            return at->from;
    }
    return problem(asked.planned, "was not issued to " + plan.id,
                   "Name a piece that the build has: flarestock history --build " + plan.id + ".");
}

struct Swap {
    const BuildPlan *plan = nullptr;
    const Part *planned = nullptr;
    const Part *used = nullptr;
    std::int64_t quantity = 0;
};

Result<Swap> swapAsked(const InsteadWords &asked, const Workshop &workshop)
{
    const auto plan = buildAsked(asked.build, workshop);
    if (!plan)
        return tl::unexpected(plan.error());
    const auto planned = partAsked(asked.planned, workshop);
    if (!planned)
        return tl::unexpected(planned.error());
    const auto used = partAsked(asked.used, workshop);
    if (!used)
        return tl::unexpected(used.error());
    for (const Part *part : {*planned, *used}) {
        if (isLength(part->unit))
            return problem(part->number, "is cut from a length",
                           "Give it back and issue the other: give-back, reserve, issue.");
    }
    const auto quantity = quantityAsked(asked.quantity.empty() ? "1" : asked.quantity, **planned);
    if (!quantity)
        return tl::unexpected(quantity.error());
    const auto issued = workshop.ledger.claim({(*planned)->number, (*plan)->id}).issued;
    if (*quantity <= 0)
        return problem(asked.quantity, "is not more than zero", "Say how many: 1.");
    if (*quantity > issued)
        return problem((*planned)->number, issuedOnly(issued, **planned, **plan),
                       "Name a piece that the build has: flarestock history --build " +
                           (*plan)->id + ".");
    if (*planned == *used)
        return problem(asked.used, "is what was planned", "Name the other piece.");
    return Swap{*plan, *planned, *used, *quantity};
}

Result<Movement> plannedBack(const InsteadWords &asked, const Swap &swap, const Workshop &workshop,
                             const std::vector<Movement> &history)
{
    const auto back = placeBack(asked, *swap.plan, workshop, history);
    if (!back)
        return tl::unexpected(back.error());
    const auto key =
        piecesAsked({swap.plan->car, asked.plannedLot, {}}, workshop.ledger, *swap.planned);
    if (!key)
        return tl::unexpected(key.error());
    Movement movement = movementOf(*key, swap.quantity, *back, Deed::Return);
    movement.document = swap.plan->id;
    if (!asked.now.empty()) {
        const auto now = parsePieceCondition(asked.now);
        if (!now)
            return tl::unexpected(now.error());
        if (*now != movement.condition)
            movement.newCondition = *now;
    }
    return movement;
}

Result<std::vector<Movement>> usedIn(const InsteadWords &asked, const Swap &swap,
                                     const Workshop &workshop)
{
    const BuildPlan &plan = *swap.plan;
    std::vector<Movement> movements;
    if (asked.from.empty() && asked.usedLot.empty()) {
        auto taken = takenNearest(*swap.used, swap.quantity, workshop,
                                  {plan.car, Deed::Issue, {plan.id, plan.car, plan.by}});
        if (!taken)
            return taken;
        movements = std::move(*taken);
    } else {
        auto pieces = freePieces(*swap.used, workshop, {plan.id, plan.car, plan.by});
        std::erase_if(pieces, [&](const auto &one) {
            return (!asked.from.empty() && !sameFolded(one.first.place, asked.from)) ||
                   (!asked.usedLot.empty() && one.first.lot != asked.usedLot);
        });
        const auto enough = std::find_if(pieces.begin(), pieces.end(), [&](const auto &one) {
            return one.second >= swap.quantity;
        });
        if (enough == pieces.end())
            return problem(
                swap.used->number, "is not free there as " + spoken(swap.quantity, *swap.used),
                "Look at what there is: flarestock stock --find " + swap.used->number + ".");
        movements.push_back(movementOf(enough->first, swap.quantity, plan.car, Deed::Issue));
    }
    for (Movement &movement : movements)
        movement.document = plan.id;
    return movements;
}

/// The record of it; and what the planned piece was promised is let go, or the build would still
/// wait for it.
void addRecords(const Swap &swap, const Workshop &workshop, const By &by, Action &action)
{
    const MovementId &first = action.movements.front().id;
    Instead instead;
    instead.id = idWithin(first, action.movements.size());
    instead.build = swap.plan->id;
    instead.planned = swap.planned->number;
    instead.used = swap.used->number;
    instead.quantity = swap.quantity;
    instead.who = by.who;
    instead.why = by.why;
    instead.action = first.text();
    instead.at = by.at;
    action.records.push_back(instead.asRecord());
    Promise promise;
    promise.quantity = -std::min(
        swap.quantity, workshop.ledger.claim({swap.planned->number, swap.plan->id}).promised);
    if (promise.quantity == 0)
        return;
    promise.id = idWithin(first, action.movements.size() + 1);
    promise.build = swap.plan->id;
    promise.part = swap.planned->number;
    promise.who = by.who;
    promise.why = "it has " + swap.used->number + " instead";
    promise.at = by.at;
    action.records.push_back(promise.asRecord());
}

} // namespace

bool OtherJoint::isWorse() const noexcept
{
    return goodness(after) < goodness(before);
}

std::vector<OtherJoint> jointsWith(const Expansion &expansion, const Workshop &workshop,
                                   const Replaced &replaced)
{
    const auto plenty = [](const Part &) { return Decimal(1'000); };
    std::vector<OtherJoint> joints;
    if (!workshop.catalogue.find(replaced.used->number))
        return joints; // A made-up hose: what it joins, its ends join.
    for (const PlacedJoint &joint : expansion.joints) {
        if (!joint.way || joint.way->links.empty())
            continue;
        const auto request = changed(joint, expansion, replaced);
        if (!request)
            continue;
        std::vector<std::string> numbers;
        for (const Piece &piece : joint.way->pieces)
            numbers.push_back(piece.part == replaced.planned ? replaced.used->number
                                                             : piece.part->number);
        const Verdict before = joint.way->verdict();
        const auto way = workshop.closer->judged(*request, numbers, workshop.shelf, plenty);
        if (!way) { // It has no two ports to join by.
            joints.push_back({joint.id, joint.at, before, Verdict::NoFit, way.error().sentence()});
            continue;
        }
        const Mating &worst = worstOf(*way);
        joints.push_back({joint.id, joint.at, before, worst.verdict, worst.why});
    }
    return joints;
}

Result<InsteadAction> builtInstead(const InsteadWords &asked, const Workshop &workshop,
                                   const std::vector<Movement> &history, const By &by)
{
    const auto swap = swapAsked(asked, workshop);
    if (!swap)
        return tl::unexpected(swap.error());
    const auto back = plannedBack(asked, *swap, workshop, history);
    if (!back)
        return tl::unexpected(back.error());
    auto in = usedIn(asked, *swap, workshop);
    if (!in)
        return tl::unexpected(in.error());
    const auto worked = workBuild(workshop, *swap->plan);
    if (!worked)
        return tl::unexpected(worked.error());
    std::vector<Movement> movements{*back};
    std::move(in->begin(), in->end(), std::back_inserter(movements));
    InsteadAction made{numbered(std::move(movements), by),
                       jointsWith(worked->expansion, workshop, {swap->planned, swap->used})};
    addRecords(*swap, workshop, by, made.action);
    openAgain(made.action, workshop, by);
    return made;
}

} // namespace flarestock
