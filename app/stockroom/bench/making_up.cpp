// SPDX-License-Identifier: MIT

#include "app/stockroom/bench/making_up.h"

#include "app/stockroom/bench/hose_materials.h"
#include "app/stockroom/picking.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"
#include "model/fluids/measure.h"
#include "model/parts/cutting_plan/cut_length.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A length of the hose, above zero.
Result<std::int64_t> lengthAsked(const std::string &typed, const Part &hose,
                                 const std::string &option)
{
    auto length = quantityAsked(typed, hose, option);
    if (length && *length <= 0)
        return problem(option + " " + typed, "is no length", "Write one above zero.");
    return length;
}

/// As it is said, or the cut and what both ends add to it.
Result<std::int64_t> seatsAsked(const MakingWords &asked, const HoseMaterials &made,
                                std::int64_t cut)
{
    if (!asked.seats.empty())
        return lengthAsked(asked.seats, *made.hose, "--between-seats");
    const auto more = takenUp(*made.start, *made.far);
    if (!more)
        return tl::unexpected(more.error());
    return cut + *more;
}

/// The test and the dates; what is wrong with them.
Result<void> addTest(const MakingWords &asked, const By &by, MadeHose &hose)
{
    const auto madeOn = dayAsked(asked.madeOn, by.at);
    if (!madeOn)
        return tl::unexpected(madeOn.error());
    hose.madeOn = *madeOn;
    if (!asked.useBy.empty() && !isDay(asked.useBy))
        return problem(asked.useBy, "is no day", "Write it as 2027-03-31.");
    hose.useBy = asked.useBy;
    const bool any = !asked.pressure.empty() || !asked.medium.empty() || !asked.result.empty();
    if (!any)
        return {};
    if (asked.pressure.empty())
        return problem("the proof test", "lacks its pressure",
                       "Say what it was held at: --proof-pressure \"2000 psi\".");
    const auto pressure = Measure::parse(asked.pressure, Dimension::Pressure);
    if (!pressure)
        return tl::unexpected(wrongIn("--proof-pressure", pressure.error()));
    if (asked.medium.empty() || (asked.result != "passed" && asked.result != "failed"))
        return problem("the proof test", "lacks its medium or its result",
                       "Say --proof-medium, and --proof passed or failed.");
    hose.testedBy = asked.testedBy.empty() ? by.who : asked.testedBy;
    if (hose.testedBy.empty())
        return problem("the proof test", "has nobody's name below it", "Say --tested-by or --who.");
    hose.pressure = asked.pressure;
    hose.medium = asked.medium;
    hose.passed = asked.result == "passed";
    return {};
}

Result<std::string> clockingAsked(const std::string &typed)
{
    if (typed.empty())
        return std::string();
    const auto degrees = Decimal::parse(typed);
    if (!degrees || degrees->sign() < 0 || *degrees >= Decimal(360))
        return problem(typed, "is no clocking", "Write degrees from 0 to below 360: 90.");
    return degrees->text() + " deg";
}

Result<MadeHose> hoseAsked(const MakingWords &asked, const HoseMaterials &made, const By &by)
{
    MadeHose hose;
    hose.tag = asked.tag;
    hose.hose = made.hose->number;
    hose.startEnd = made.start->number;
    hose.farEnd = made.far->number;
    const auto cut = lengthAsked(asked.cut, *made.hose, "the length");
    if (!cut)
        return tl::unexpected(cut.error());
    hose.cut = *cut;
    const auto seats = seatsAsked(asked, made, *cut);
    if (!seats)
        return tl::unexpected(seats.error());
    hose.seats = *seats;
    const auto clocking = clockingAsked(asked.clocking);
    if (!clocking)
        return tl::unexpected(clocking.error());
    hose.clocking = *clocking;
    if (const auto tested = addTest(asked, by, hose); !tested)
        return tl::unexpected(tested.error());
    hose.who = by.who;
    hose.at = by.at;
    return hose;
}

/// The hose cut and the pieces taken, all to the bench.
Result<std::vector<Movement>> toTheBench(const MakingWords &asked, const HoseMaterials &made,
                                         const MadeHose &hose, const Workshop &workshop)
{
    const auto bench = placeOfKind(PlaceKind::Bench, workshop.ledger);
    if (!bench)
        return tl::unexpected(bench.error());
    const auto scrap = placeOfKind(PlaceKind::Scrap, workshop.ledger);
    if (!scrap)
        return tl::unexpected(scrap.error());
    const Due due{{}, {}, hose.madeOn}; // Nothing that is past its day, and no other car's.
    CutLoss loss = usualCutLoss();
    if (!asked.kerf.empty()) {
        const auto kerf = kerfAsked(asked.kerf, *made.hose);
        if (!kerf)
            return tl::unexpected(kerf.error());
        loss.kerf = *kerf;
    }
    auto pieces = freePieces(*made.hose, workshop, due);
    if (!asked.lot.empty())
        std::erase_if(pieces, [&](const auto &one) { return one.first.lot != asked.lot; });
    const auto plan = cuttingPlan(*made.hose, {hose.cut}, pieces, loss);
    if (!plan)
        return tl::unexpected(plan.error());
    const BalanceKey &piece = plan->front().piece;
    auto movements = cutMovements(*plan, {{piece, workshop.ledger.balance(piece).quantity}},
                                  {(*bench)->id, Deed::MakeUp, {}, (*scrap)->id, loss});
    for (const auto &[part, count] : made.pieces) {
        auto taken = takenNearest(*part, count, workshop, {(*bench)->id, Deed::MakeUp, due});
        if (!taken)
            return tl::unexpected(taken.error());
        std::move(taken->begin(), taken->end(), std::back_inserter(movements));
    }
    return movements;
}

Result<void> tagIsFree(const std::string &tag, const Workshop &workshop)
{
    if (tag.empty() || trimmed(tag) != tag)
        return problem("the tag \"" + tag + '"', "is no name for a piece",
                       "Write one: --tag L-17.");
    const bool wasHere =
        workshop.ledger.balancesOf(tag).begin() != workshop.ledger.balancesOf(tag).end();
    if (workshop.part(tag) || wasHere)
        return problem(tag, "is a part of the shop already", "Give it another tag.");
    return {};
}

/// Off the bench, with all the value that went onto it.
Result<Movement> offTheBench(const std::vector<Movement> &onto, const MadeAction &made,
                             const std::string &to, const Workshop &workshop)
{
    const auto values = valuesOf(onto, workshop);
    if (!values)
        return tl::unexpected(values.error());
    const auto bench = placeOfKind(PlaceKind::Bench, workshop.ledger);
    Movement off = movementOf({made.hose.tag, (*bench)->id, made.hose.tag, made.condition}, 1, to,
                              Deed::MakeUp);
    for (std::size_t i = 0; i < onto.size(); ++i)
        off.value += onto[i].to == (*bench)->id ? (*values)[i] : 0;
    return off;
}

/// Its last day, as that of any lot; its tag is its lot too.
Record ageOf(const MadeHose &hose, std::uint64_t n)
{
    LotFacts facts;
    facts.id = idWithin(MovementId::parse(hose.action).value(), n);
    facts.lot = {hose.tag, hose.tag};
    facts.useBy = hose.useBy;
    facts.who = hose.who;
    facts.at = hose.at;
    Record record = facts.asRecord();
    record.fields["action"] = hose.action;
    return record;
}

} // namespace

Result<MadeAction> madeUp(const MakingWords &asked, const Workshop &workshop, const By &by)
{
    if (const auto tag = tagIsFree(asked.tag, workshop); !tag)
        return tl::unexpected(tag.error());
    const auto materials = hoseMaterials(asked, workshop);
    if (!materials)
        return tl::unexpected(materials.error());
    const auto hose = hoseAsked(asked, *materials, by);
    if (!hose)
        return tl::unexpected(hose.error());
    const auto to = placeAsked(asked.to, workshop.ledger);
    if (!to)
        return tl::unexpected(to.error());
    MadeAction made{{}, *hose, 0, PieceCondition::New};
    if (!hose->isTested() || !hose->passed)
        made.condition =
            hose->isTested() ? PieceCondition::NotToBeUsed : PieceCondition::ToBeChecked;
    auto movements = toTheBench(asked, *materials, *hose, workshop);
    if (!movements)
        return tl::unexpected(movements.error());
    const auto off = offTheBench(*movements, made, (*to)->id, workshop);
    if (!off)
        return tl::unexpected(off.error());
    made.value = off->value;
    made.hose.hoseLot = movements->front().lot;
    movements->push_back(*off);
    made.action = numbered(std::move(*movements), by);
    const MovementId &first = made.action.movements.front().id;
    made.hose.id = idWithin(first, made.action.movements.size());
    made.hose.action = first.text();
    made.action.records.push_back(made.hose.asRecord());
    if (!made.hose.useBy.empty())
        made.action.records.push_back(ageOf(made.hose, made.action.movements.size() + 1));
    return made;
}

} // namespace flarestock
