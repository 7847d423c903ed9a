// SPDX-License-Identifier: MIT

#include "app/garage/lots/lot_acts.h"

#include "app/stockroom/picking.h"

#include <algorithm>
#include <tuple>

namespace flarestock {

namespace {

/// The system that a part of a car belongs to, by the build that has got it.
std::string systemOf(const LiesNow &lies, const LotTrace &trace, const Workshop &workshop)
{
    const std::string build = lies.position.substr(0, lies.position.find('/'));
    const BuildPlan *plan = workshop.build(build);
    for (const CarriedBy &car : trace.cars) {
        if (!plan && car.car == lies.key.place && !car.builds.empty())
            plan = workshop.build(*car.builds.begin());
    }
    const auto form = plan ? workshop.templates->find(plan->templateId) : workshop.templates->end();
    return form == workshop.templates->end() ? std::string() : form->second->system;
}

int dangerOf(const TraceAct &act)
{
    if (act.lies.place->kind == PlaceKind::Car)
        return act.system == "brakes" ? 0 : act.system == "fuel" ? 1 : 2;
    return isStock(act.lies.place->kind) ? 4 : 3;
}

/// How much of the part is free that is not of this lot.
std::string freeInstead(const LiesNow &lies, const LotTrace &trace, const Workshop &workshop)
{
    const Part *part = workshop.part(lies.key.part);
    if (!part)
        return {};
    std::int64_t free = 0;
    for (const auto &[key, quantity] : freePieces(*part, workshop, {})) {
        if (!trace.pieces.contains({key.part, key.lot}))
            free += quantity;
    }
    return free > 0 ? spoken(free, *part) : std::string();
}

} // namespace

std::vector<TraceAct> actsFor(const LotTrace &trace, const Garage &garage, const std::string &today)
{
    std::vector<TraceAct> acts;
    for (const LiesNow &lies : trace.now) {
        TraceAct act;
        act.lies = lies;
        if (lies.place->kind == PlaceKind::Car) {
            act.todo = "stop using";
            act.system = systemOf(lies, trace, *garage.workshop);
            const auto events = garage.eventsOf(lies.key.place, today);
            act.event = events.empty() ? std::string() : events.front().id;
            act.by = events.empty() ? std::string() : events.front().firstDay;
        } else if (isStock(lies.place->kind)) {
            act.todo = isFree(lies.key.condition) ? "set aside" : "inspect";
        } else {
            act.todo = "ask back";
        }
        act.free = freeInstead(lies, trace, *garage.workshop);
        acts.push_back(std::move(act));
    }
    std::stable_sort(acts.begin(), acts.end(), [](const TraceAct &a, const TraceAct &b) {
        const auto rank = [](const TraceAct &act) {
            return std::make_tuple(dangerOf(act), act.by.empty() ? 1 : 0, act.by);
        };
        return rank(a) < rank(b);
    });
    return acts;
}

} // namespace flarestock
