// SPDX-License-Identifier: MIT

#include "app/garage/at_work.h"

#include "app/garage/bench_wash.h"
#include "app/garage/piece_moves.h"
#include "app/garage/work_begun.h"
#include "app/stockroom/handing_out.h"
#include "app/workshop/clock.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

/// The rings of the joints that are opened, and those that the part itself takes to be fitted.
Result<FreshRings> ringsFor(const WorkWords &asked, const Begun &begun, const Garage &garage,
                            const By &by)
{
    if (!begun.plan || begun.piece == nullptr)
        return FreshRings();
    std::vector<std::string> joints = asked.joints;
    const auto words = garage.words.find(begun.piece->position);
    if (!asked.keepRings && begun.serviced.work != Work::Washed && words != garage.words.end())
        joints.insert(joints.end(), words->second.joints.begin(), words->second.joints.end());
    return freshRings(begun.plan->id, joints, garage, by);
}

/// One action of all of it.
WorkDone written(Begun begun, std::vector<Movement> movements, const Garage &garage, const By &by)
{
    By named = by;
    named.action = by.action.value_or(freshId());
    const std::string why = begun.serviced.position + " " + std::string(text(begun.serviced.work));
    for (Movement &movement : movements) {
        if (begun.plan && movement.deed == Deed::Renew)
            movement.document = begun.plan->id;
        if (movement.why.empty())
            movement.why = by.why.empty() ? why : by.why;
    }
    WorkDone done;
    done.action = numbered(std::move(movements), named);
    const bool wasOpened = begun.serviced.work == Work::Washed ||
                           begun.serviced.work == Work::Replaced ||
                           begun.serviced.work == Work::TakenOut;
    if (begun.plan && wasOpened) {
        openAgain(done.action, *garage.workshop, *begun.plan, named);
        done.isOpen = !done.action.records.empty();
    }
    if (!done.action.movements.empty())
        begun.serviced.action = named.action->text();
    begun.serviced.id =
        idWithin(*named.action, done.action.movements.size() + done.action.records.size());
    done.action.records.push_back(begun.serviced.asRecord());
    done.said = begun.piece ? garage.said(*begun.piece) : begun.serviced.position;
    done.serviced = std::move(begun.serviced);
    return done;
}

/// So long as was asked, else as long as the old one.
Result<std::int64_t> lengthOf(const WorkWords &asked, const Part &part, const FittedPiece *old)
{
    if (!isLength(part.unit))
        return std::int64_t(1);
    if (!asked.length.empty())
        return quantityAsked(asked.length, part, "--length");
    if (old && old->quantity > 1)
        return old->quantity;
    return problem(part.number, "is a length, and nobody said how long",
                   "Say it: --length \"24 in\".");
}

/// A fluid is no part of the catalogue; its lot is the bottle, and it is of the day that was
/// opened.
bool isFluid(const std::string &name, const Workshop &workshop)
{
    return !workshop.part(name) && parseFluid(name);
}

/// What goes in, or was in the car before. Problem: no such part, not free.
Result<PieceMoves> goingIn(const WorkWords &asked, const std::string &name, const Begun &begun,
                           const Garage &garage)
{
    if (isFluid(name, *garage.workshop))
        return PieceMoves{{}, {std::string(text(*parseFluid(name))), asked.lot}, 1, {}, {}};
    const auto part = partAsked(name, *garage.workshop);
    if (!part)
        return tl::unexpected(part.error());
    const auto length = lengthOf(asked, **part, begun.piece);
    if (!length)
        return tl::unexpected(length.error());
    const AtCar at{garage, begun.car->id, begun.serviced.day};
    const bool there = begun.serviced.work == Work::Fitted && asked.from.empty();
    return there ? pieceThere(asked, **part, *length, at) : pieceIn(asked, **part, *length, at);
}

/// The old one out, where there was a piece and not a fluid.
Result<PieceMoves> goingOut(const WorkWords &asked, const Leaving &leaving, const Begun &begun,
                            const Garage &garage)
{
    if (isFluid(leaving.piece->piece.part, *garage.workshop))
        return PieceMoves{{}, leaving.piece->piece, 1, {}, PieceCondition::NotToBeUsed};
    return pieceOut(asked, leaving, {garage, begun.car->id, begun.serviced.day});
}

bool isSpent(const Begun &begun, const Garage &garage)
{
    return !spentBecause(*begun.piece, garage.intervalsOf(*begun.piece, begun.car->id)).empty();
}

/// Whether a hand keeps it where nobody says anything: what can be cleaned or looked after.
bool isKept(const Begun &begun, const Garage &garage)
{
    const PieceKind kind = garage.kindOf(*begun.piece);
    return kind.kind == Kind::Pump || kind.kind == Kind::Regulator || kind.kind == Kind::Injector ||
           kind.kind == Kind::Carburettor || kind.kind == Kind::Calliper ||
           kind.kind == Kind::MasterCylinder ||
           (kind.kind == Kind::Element && notWashedBecause(kind).empty()) ||
           (kind.kind == Kind::Filter && !kind.isSealed);
}

/// A piece that went out is washed at the bench; where there is none of that name, `noPosition` is
/// wrong with it.
Result<WorkDone> washedOutside(const WorkWords &asked, const Problem &noPosition,
                               const Garage &garage, const By &by)
{
    auto begun = begunAtCar(Work::Washed, asked, garage, by);
    const PieceOut *out = begun ? outAsked(asked.position, *begun->life) : nullptr;
    if (out == nullptr)
        return tl::unexpected(noPosition);
    auto wash = washedAtBench(*out, *begun, garage);
    if (!wash)
        return tl::unexpected(wash.error());
    begun->serviced = std::move(wash->serviced);
    return written(std::move(*begun), std::move(wash->movements), garage, by);
}

} // namespace

Result<WorkDone> fitted(const WorkWords &asked, const Garage &garage, const By &by)
{
    auto begun = begunAtCar(Work::Fitted, asked, garage, by);
    if (!begun)
        return tl::unexpected(begun.error());
    const Part *part = garage.workshop->part(asked.part);
    const std::string name = !asked.position.empty()                 ? asked.position
                             : part                                  ? part->description
                             : isFluid(asked.part, *garage.workshop) ? "fluid"
                                                                     : asked.part;
    const auto known = positionAsked(name, garage, *begun->life);
    begun->serviced.position = known ? (*known)->position : name;
    begun->serviced.build = known ? (*known)->build : std::string();
    if (!known && garage.words.contains(name))
        begun->serviced.build = name.substr(0, name.find('/'));
    begun->piece = known ? *known : nullptr;
    auto moves = goingIn(asked, asked.part, *begun, garage);
    if (!moves)
        return tl::unexpected(moves.error());
    for (Movement &movement : moves->movements)
        movement.deed = movement.deed == Deed::Renew ? Deed::Move : movement.deed;
    begun->serviced.piece = moves->piece;
    begun->serviced.quantity = moves->quantity;
    if (auto read = readFacts(asked, begun->serviced); !read)
        return tl::unexpected(read.error());
    addKnownDays(begun->serviced, *garage.workshop);
    return written(std::move(*begun), std::move(moves->movements), garage, by);
}

Result<WorkDone> washed(const WorkWords &asked, const Garage &garage, const By &by)
{
    auto begun = begunAt(Work::Washed, asked, garage, by);
    if (!begun)
        return washedOutside(asked, begun.error(), garage, by);
    const std::string &part = begun->piece->piece.part;
    if (const std::string why = notWashedBecause(garage.kindOf(*begun->piece)); !why.empty())
        return problem(part, why,
                       "Replace it: flarestock service " + begun->car->id + " replace " +
                           begun->piece->position + ".");
    const auto intervals = garage.intervalsOf(*begun->piece, begun->car->id);
    if (const std::string why = spentBecause(*begun->piece, intervals); !why.empty())
        return problem(part, "is spent: " + why,
                       "Replace it: flarestock service " + begun->car->id + " replace " +
                           begun->piece->position + ".");
    std::vector<Movement> movements;
    auto rings = ringsFor(asked, *begun, garage, by);
    if (!rings)
        return tl::unexpected(rings.error());
    std::move(rings->movements.begin(), rings->movements.end(), std::back_inserter(movements));
    WorkDone done = written(std::move(*begun), std::move(movements), garage, by);
    done.rings = std::move(rings->rings);
    return done;
}

Result<WorkDone> replaced(const WorkWords &asked, const Garage &garage, const By &by)
{
    auto begun = begunAt(Work::Replaced, asked, garage, by);
    if (!begun)
        return tl::unexpected(begun.error());
    const auto in =
        goingIn(asked, asked.part.empty() ? begun->piece->piece.part : asked.part, *begun, garage);
    if (!in)
        return tl::unexpected(in.error());
    const auto out =
        goingOut(asked,
                 {begun->piece, isSpent(*begun, garage),
                  isKept(*begun, garage) && in->from != begun->car->id ? in->from : std::string()},
                 *begun, garage);
    if (!out)
        return tl::unexpected(out.error());
    std::vector<Movement> movements = out->movements;
    movements.insert(movements.end(), in->movements.begin(), in->movements.end());
    auto rings = ringsFor(asked, *begun, garage, by);
    if (!rings)
        return tl::unexpected(rings.error());
    std::move(rings->movements.begin(), rings->movements.end(), std::back_inserter(movements));
    begun->serviced.piece = in->piece;
    begun->serviced.quantity = in->quantity;
    begun->serviced.old = out->piece;
    begun->serviced.oldIs = out->is;
    if (auto read = readFacts(asked, begun->serviced); !read)
        return tl::unexpected(read.error());
    addKnownDays(begun->serviced, *garage.workshop);
    WorkDone done = written(std::move(*begun), std::move(movements), garage, by);
    done.rings = std::move(rings->rings);
    return done;
}

namespace {

/// The id of the record that says so.
std::string damagedBy(const Begun &begun)
{
    std::string id = "ID";
    for (const Serviced &one : begun.life->done) {
        if (one.position == begun.piece->position && one.work == Work::Damaged)
            id = one.id.text();
    }
    return id;
}

} // namespace

Result<WorkDone> lookedAt(Work work, const WorkWords &asked, const Garage &garage, const By &by)
{
    auto begun = begunAt(work, asked, garage, by);
    if (!begun)
        return tl::unexpected(begun.error());
    if (work == Work::Inspected && begun->piece->damaged)
        return problem(begun->piece->position, "was found damaged: no look makes it good again",
                       "Replace it; where that was a slip, take it back: flarestock take-back " +
                           damagedBy(*begun) + ".");
    return written(std::move(*begun), {}, garage, by);
}

Result<WorkDone> takenOut(const WorkWords &asked, const Garage &garage, const By &by)
{
    auto begun = begunAt(Work::TakenOut, asked, garage, by);
    if (!begun)
        return tl::unexpected(begun.error());
    if (asked.oldTo.empty())
        return problem("taking " + begun->piece->position + " out", "does not say where to",
                       "Say it: --old-to PLACE.");
    auto out = goingOut(asked, {begun->piece, false, {}}, *begun, garage);
    if (!out)
        return tl::unexpected(out.error());
    auto rings = ringsFor(asked, *begun, garage, by);
    if (!rings)
        return tl::unexpected(rings.error());
    std::move(rings->movements.begin(), rings->movements.end(), std::back_inserter(out->movements));
    begun->serviced.old = out->piece;
    begun->serviced.oldIs = out->is;
    WorkDone done = written(std::move(*begun), std::move(out->movements), garage, by);
    done.rings = std::move(rings->rings);
    return done;
}

} // namespace flarestock
