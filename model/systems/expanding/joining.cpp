// SPDX-License-Identifier: MIT

#include "model/systems/expanding/joining.h"

#include "model/exact/case_fold.h"
#include "model/systems/expanding/plugging.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::size_t WaysKept = 4;
constexpr std::size_t LinesTried = 8; ///< Lines whose joints are tried before the first is taken.
constexpr std::size_t LinesKept = 8;

std::string sayPort(std::string_view name)
{
    if (name == "in")
        return "inlet";
    if (name == "out")
        return "outlet";
    return std::string(name);
}

/// The cut end of a line that is not there: what the run asks for.
Port wantedEnd(const LineWish &wish)
{
    Port end;
    end.family = wish.tubing.empty() ? Family::Hose : Family::Tube;
    end.size = wish.tubing.empty() ? "-" + std::to_string(wish.dash) : wish.tubing;
    if (wish.tubing.empty())
        end.construction = wish.construction.empty() ? "ANY" : wish.construction;
    return end;
}

/// What stands there for a slot; nullptr for nothing.
const std::string *said(const Picks &picks, std::string_view slot)
{
    const auto pick = picks.find(slot);
    return pick == picks.end() || trimmed(pick->second).empty() ? nullptr : &pick->second;
}

/// "AD-66 + HE-6" as part numbers; "direct" is none.
std::vector<std::string> numbersOf(std::string_view pick)
{
    std::vector<std::string> numbers;
    if (sameFolded(trimmed(pick), "direct"))
        return numbers;
    while (!pick.empty()) {
        const auto plus = pick.find(" + ");
        numbers.emplace_back(trimmed(pick.substr(0, plus)));
        pick.remove_prefix(plus == std::string_view::npos ? pick.size() : plus + 3);
    }
    return numbers;
}

tl::unexpected<Problem> wrongPick(const std::string &slot, Problem wrong)
{
    wrong.thing = "pick for " + slot + ", " + wrong.thing;
    return tl::unexpected(std::move(wrong));
}

} // namespace

Joining::Joining(const Settled &settled, Allotment &allotment, Expansion &into)
    : m_request(settled.request), m_ways(settled.ways), m_allotment(allotment), m_into(into),
      m_shelf(m_request.shelf ? *m_request.shelf : m_none),
      m_left([&allotment](const Part &part) { return allotment.left(part); }),
      m_jointShelf(m_request.closer->jointShelf(m_shelf))
{
    for (const PlacedStation &station : into.stations)
        if (station.part)
            tellLeft(*station.part);
}

void Joining::tellLeft(const Part &part)
{
    m_jointShelf.setLeft(part, m_allotment.left(part));
}

void Joining::take(const Way &way)
{
    m_allotment.take(way);
    for (const Piece &piece : way.pieces)
        tellLeft(*piece.part);
    for (const WayAid &aid : way.aids)
        if (aid.part)
            tellLeft(*aid.part);
}

Joining::Side Joining::sideOf(std::size_t station, std::string_view port)
{
    Side side{&m_into.stations[station], port, nullptr};
    if (!side.station->part)
        return side;
    if (const PartPort *found = side.station->part->port(port))
        side.port = &found->port;
    else
        m_into.notes.push_back(side.station->part->number + " at " + side.station->id +
                               " has no port \"" + std::string(port) + "\".");
    return side;
}

Joining::Plan Joining::planFor(const Side &side, std::optional<Fluid> fluid) const
{
    Plan plan;
    plan.joint.at = side.station->station->title + " " + sayPort(side.name);
    plan.joint.station = side.station->id;
    plan.known = side.port != nullptr;
    if (side.port)
        plan.request.from = *side.port;
    plan.request.fluid = plan.joint.fluid = fluid;
    plan.request.preference = m_request.preference;
    plan.request.best = WaysKept;
    return plan;
}

Result<void> Joining::makeRun(const FlatRun &run, const std::optional<LineWish> &wish)
{
    PlacedRun placed;
    if (auto risen = addRise(run, placed); !risen)
        return risen;
    placed.id = run.id;
    placed.run = run.run;
    placed.from = m_into.stations[run.from].id;
    placed.to = m_into.stations[run.to].id;
    m_into.runs.push_back(std::move(placed));
    const Side from = sideOf(run.from, run.run->from.port);
    const Side to = sideOf(run.to, run.run->to.port);
    return wish ? joinByLine(run, *wish, from, to) : joinDirectly(run, from, to);
}

Result<void> Joining::joinDirectly(const FlatRun &run, const Side &from, const Side &to)
{
    Plan plan = planFor(from, run.scope->fluid);
    plan.joint.run = run.id;
    plan.joint.id = run.id + ".start";
    plan.joint.at += " to " + to.station->station->title + " " + sayPort(to.name);
    plan.known = plan.known && to.port;
    if (to.port)
        plan.request.to = *to.port;
    m_into.runs.back().joints = {plan.joint.id};
    return close(std::move(plan));
}

Result<void> Joining::joinByLine(const FlatRun &run, const LineWish &asked, const Side &from,
                                 const Side &to)
{
    LineWish wish = asked;
    for (const Port *port : {from.port, to.port})
        if (wish.dash == 0 && port)
            wish.dash = dash(*port);
    Plan start = planFor(from, wish.fluid);
    Plan end = planFor(to, wish.fluid);
    start.joint.run = end.joint.run = run.id;
    start.joint.id = run.id + ".start";
    end.joint.id = run.id + ".end";
    start.request.angleDegrees = wish.startAngle;
    end.request.angleDegrees = wish.endAngle;

    PlacedRun &placed = m_into.runs.back();
    placed.joints = {start.joint.id, end.joint.id};
    placed.dash = wish.dash;
    placed.wanted = wish.text();
    const Part *programs = chosenLine(wish, start, end);
    if (const std::string *pick = said(m_request.picks, run.id)) {
        placed.line = m_request.catalogue->find(trimmed(*pick));
        placed.picked = true;
        placed.better = programs == placed.line ? nullptr : programs;
    } else {
        placed.line = programs;
    }
    for (const Part *line : linesAround(wish, m_request.preference, m_allotment))
        if (line != placed.line && placed.others.size() < LinesKept)
            placed.others.push_back(line);
    const bool cuttable = placed.line && !placed.line->ports.empty();
    for (Plan *plan : {&start, &end}) {
        plan->request.to = cuttable ? placed.line->ports.front().port : wantedEnd(wish);
        plan->known = plan->known && cuttable;
    }
    if (placed.line) {
        placed.length = lengthFor(wish, *placed.line);
        m_allotment.cut(*placed.line, placed.length.amount);
    }
    if (auto done = close(std::move(start)); !done)
        return done;
    return close(std::move(end));
}

/// The best line of which both ends can be closed; else the one with the most that can.
const Part *Joining::chosenLine(const LineWish &wish, const Plan &start, const Plan &end)
{
    const auto lines = linesFor(wish, m_request.preference, m_allotment);
    if (lines.size() < 2)
        return lines.empty() ? nullptr : lines.front();
    const Part *best = lines.front();
    int most = -1;
    for (std::size_t i = 0; i < std::min(lines.size(), LinesTried); ++i) {
        const int closed = (!start.known || closes(start, *lines[i]) ? 1 : 0) +
                           (!end.known || closes(end, *lines[i]) ? 1 : 0);
        if (closed > most) {
            most = closed;
            best = lines[i];
        }
        if (closed == 2)
            break;
    }
    return best;
}

bool Joining::closes(const Plan &plan, const Part &line)
{
    JointRequest request = plan.request;
    request.to = line.ports.front().port;
    request.best = 1;
    const auto key = std::tuple(request.from, request.to, request.angleDegrees.value_or(0));
    const auto [known, isNew] = m_closes.try_emplace(key, false);
    if (isNew)
        known->second = !m_request.closer->ways(request, m_jointShelf).empty();
    return known->second;
}

Result<void> Joining::close(Plan plan)
{
    const std::string *pick = said(m_request.picks, plan.joint.id);
    const std::string *settled = pick ? pick : said(m_ways, plan.joint.id);
    plan.joint.picked = pick != nullptr;
    plan.joint.from = plan.request.from;
    plan.joint.to = plan.request.to;
    plan.joint.angleDegrees = plan.request.angleDegrees;
    if (!plan.known) {
        m_into.joints.push_back(std::move(plan.joint));
        return {};
    }
    auto ways = m_request.closer->ways(plan.request, m_jointShelf);
    if (!settled)
        return decide(std::move(plan), std::move(ways));
    auto way = m_request.closer->judged(plan.request, numbersOf(*settled), m_shelf, m_left);
    if (!way)
        return wrongPick(plan.joint.id, way.error());
    return decide(std::move(plan), std::move(ways), std::move(*way));
}

/// Puts the joint in: closed by the way that is settled, else by the best; what it takes is taken.
Result<void> Joining::decide(Plan plan, std::vector<Way> ways, std::optional<Way> settled)
{
    PlacedJoint &joint = plan.joint;
    if (settled)
        joint.way = std::move(settled);
    else if (!ways.empty())
        joint.way = ways.front();
    if (joint.way) {
        const std::string key = joint.way->key();
        joint.outdone = joint.picked && !ways.empty() && ways.front().key() != key;
        for (Way &way : ways)
            if (way.key() != key && joint.others.size() < WaysKept - 1)
                joint.others.push_back(std::move(way));
        take(*joint.way);
    }
    m_into.joints.push_back(std::move(joint));
    return {};
}

Result<void> Joining::closePlugged(const PlacedStation &station, std::optional<Fluid> fluid)
{
    const auto index = static_cast<std::size_t>(&station - m_into.stations.data());
    for (const std::string &name : station.station->plugged) {
        Plan plan = planFor(sideOf(index, name), fluid);
        plan.joint.id = "plug:" + station.id + "." + name;
        plan.joint.from = plan.joint.to = plan.request.from;
        const std::string *pick = said(m_request.picks, plan.joint.id);
        const std::string *settled = pick ? pick : said(m_ways, plan.joint.id);
        plan.joint.picked = pick != nullptr;
        if (!plan.known) {
            m_into.joints.push_back(std::move(plan.joint));
            continue;
        }
        Plugging plugging(*m_request.closer, m_shelf, m_jointShelf, m_allotment);
        auto ways = plugging.ways(plan.request);
        std::optional<Way> decided;
        if (settled) {
            auto way = plugging.judged(plan.request, numbersOf(*settled));
            if (!way)
                return wrongPick(plan.joint.id, way.error());
            decided = std::move(*way);
        }
        if (const Way *way = decided ? &*decided : (ways.empty() ? nullptr : &ways.front()))
            plan.joint.to = way->links.back().b;
        if (auto done = decide(std::move(plan), std::move(ways), std::move(decided)); !done)
            return done;
    }
    return {};
}

} // namespace flarestock
