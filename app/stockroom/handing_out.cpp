// SPDX-License-Identifier: MIT

#include "app/stockroom/handing_out.h"

#include "app/workshop/clock.h"
#include "model/exact/case_fold.h"
#include "model/fluids/measure.h"

#include <algorithm>

namespace flarestock {

namespace {

void signWith(Promise &promise, const MovementId &id, const By &by)
{
    promise.id = id;
    promise.who = by.who;
    if (promise.why.empty())
        promise.why = by.why;
    promise.at = by.at;
}

BuildDone doneOf(const BuildPlan &plan, const By &by)
{
    BuildDone done;
    done.build = plan.id;
    done.car = plan.car;
    done.who = by.who;
    done.why = by.why;
    done.at = by.at;
    return done;
}

void openOne(Action &action, const Workshop &workshop, const BuildPlan &plan, const By &by)
{
    const BuildStanding &standing = workshop.notes.build(plan.id);
    if (standing.testsNow().empty() && !standing.isDone())
        return;
    BuildDone opened = doneOf(plan, by);
    opened.id =
        idWithin(action.movements.empty() ? by.action.value() : action.movements.front().id,
                 action.movements.size() + action.records.size() + action.afterwards.size());
    opened.open = opened.changed = true;
    opened.why = "its pieces have changed since its leak test";
    action.records.push_back(opened.asRecord());
}

/// A measure above zero, as it was typed for `what`.
Result<void> measured(const std::string &typed, const std::string &what, Dimension dimension)
{
    const auto measure = Measure::parse(typed, dimension);
    if (!measure)
        return tl::unexpected(wrongIn(what, measure.error()));
    if (measure->si <= 0)
        return problem(what, "is not more than zero, and so the test proves nothing",
                       "Write what it was held at, and for how long.");
    return {};
}

} // namespace

Action promised(std::vector<Promise> promises, const By &by)
{
    Action action;
    const MovementId first = by.action.value_or(freshId());
    for (Promise &promise : promises) {
        signWith(promise, idWithin(first, action.records.size()), by);
        action.records.push_back(promise.asRecord());
    }
    return action;
}

std::string issuedOnly(std::int64_t issued, const Part &part, const BuildPlan &plan)
{
    return issued <= 0 ? "was not issued to " + plan.id
                       : "was issued to " + plan.id + " only as " + spoken(issued, part);
}

Result<Movement> givenBack(const GiveBackWords &asked, const Workshop &workshop)
{
    const auto plan = buildAsked(asked.build, workshop);
    if (!plan)
        return tl::unexpected(plan.error());
    const auto stock = stockAsked({asked.part, asked.quantity, (*plan)->car, asked.to}, workshop);
    if (!stock)
        return tl::unexpected(stock.error());
    const Part &part = *stock->part;
    const auto key =
        piecesAsked({stock->from->id, asked.lot, asked.condition}, workshop.ledger, part);
    if (!key)
        return tl::unexpected(key.error());
    const auto issued = workshop.ledger.claim({part.number, (*plan)->id}).issued;
    if (stock->quantity > issued)
        return problem(part.number, issuedOnly(issued, part, **plan),
                       "Give back no more than that; for other pieces of the car use move.");
    Movement movement = movementOf(*key, stock->quantity, stock->to->id, Deed::Return);
    movement.document = (*plan)->id;
    if (!asked.now.empty()) {
        const auto now = parsePieceCondition(asked.now);
        if (!now)
            return tl::unexpected(now.error());
        movement.newCondition = *now;
    }
    return movement;
}

void openAgain(Action &action, const Workshop &workshop, const By &by)
{
    std::set<const BuildPlan *> builds;
    for (const Movement &movement : action.movements) {
        const BuildPlan *plan = workshop.build(movement.document);
        if (plan && builds.insert(plan).second)
            openOne(action, workshop, *plan, by);
    }
}

void openAgain(Action &action, const Workshop &workshop, const BuildPlan &plan, const By &by)
{
    openOne(action, workshop, plan, by);
}

Action changed(std::vector<Movement> movements, const Workshop &workshop, const By &by)
{
    Action action = numbered(std::move(movements), by);
    openAgain(action, workshop, by);
    return action;
}

Action changed(std::vector<Movement> movements, const Workshop &workshop, const BuildPlan &plan,
               const By &by)
{
    Action action = numbered(std::move(movements), by);
    if (!action.movements.empty())
        openOne(action, workshop, plan, by);
    return action;
}

Result<LeakTest> leakTestOf(const LeakTestWords &asked, const Workshop &workshop, const By &by)
{
    const auto plan = buildAsked(asked.build, workshop);
    if (!plan)
        return tl::unexpected(plan.error());
    const auto pressure = measured(asked.pressure, "the test pressure", Dimension::Pressure);
    if (!pressure)
        return tl::unexpected(pressure.error());
    if (trimmed(asked.medium).empty())
        return problem("a leak test", "does not say what it was made with",
                       "Write it: air, nitrogen, water, the fluid itself.");
    const auto held = measured(asked.held, "how long it was held", Dimension::Time);
    if (!held)
        return tl::unexpected(held.error());
    if (asked.result != "passed" && asked.result != "failed")
        return problem(asked.result, "is no result of a leak test", "Write passed or failed.");
    if (by.who.empty())
        return problem("a leak test", "has nobody's name below it", "Say who made it: --who.");
    LeakTest test;
    test.id = by.action.value_or(freshId());
    test.build = (*plan)->id;
    test.medium = asked.medium;
    test.pressure = asked.pressure;
    test.held = asked.held;
    test.passed = asked.result == "passed";
    test.who = by.who;
    test.second = asked.second;
    test.note = asked.note;
    test.at = by.at;
    return test;
}

LeftUndone leftUndone(const WorkedBuild &built, const std::vector<Promise> &lacking,
                      const PickList &picks)
{
    const auto &lines = built.bill.lines;
    const auto isShort = [](const PricedLine &line) { return line.shortBy.sign() > 0; };
    return {static_cast<std::size_t>(built.count(Severity::Stop)),
            static_cast<std::size_t>(std::count_if(lines.begin(), lines.end(), isShort)),
            lacking.size(), picks.picks.size()};
}

Action doneAction(const Workshop &workshop, const BuildPlan &plan,
                  const std::optional<LeakTest> &test, const By &by)
{
    const MovementId first = by.action.value_or(freshId());
    std::uint64_t n = 0;
    Action action;
    if (test) {
        action.records.push_back(test->asRecord());
        action.records.back().id = idWithin(first, n++);
    }
    BuildDone done = doneOf(plan, by);
    done.id = idWithin(first, n++);
    action.records.push_back(done.asRecord());
    // What it was promised and did not take is free again.
    for (Promise &promise : promisesLetGo(workshop.ledger, plan.id)) {
        promise.why = "the build is done";
        signWith(promise, idWithin(first, n++), by);
        action.records.push_back(promise.asRecord());
    }
    return action;
}

Result<Action> tested(const LeakTestWords &asked, const Workshop &workshop, const By &by)
{
    const auto test = leakTestOf(asked, workshop, by);
    if (!test)
        return tl::unexpected(test.error());
    if (!test->passed)
        return Action{{test->asRecord()}, {}};
    const BuildPlan &plan = *workshop.build(test->build);
    auto tests = workshop.notes.build(plan.id).testsNow();
    tests.push_back(*test);
    const auto worked = workBuild(workshop, plan);
    if (!worked)
        return tl::unexpected(worked.error());
    const std::string wrong = notDoneBecause(tests, worked->expansion.system == "brakes");
    if (!wrong.empty())
        return problem(plan.id, "is not done: " + wrong, "Write the test down with it.");
    return doneAction(workshop, plan, *test, by);
}

Action openedAgain(const BuildPlan &plan, const By &by)
{
    BuildDone opened = doneOf(plan, by);
    opened.id = by.action.value_or(freshId());
    opened.open = true;
    return Action{{opened.asRecord()}, {}};
}

} // namespace flarestock
