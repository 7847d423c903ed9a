// SPDX-License-Identifier: MIT

#include "app/desk/parts/card/where_used.h"

#include "app/buyer/by_date/shelf_in_turn.h"
#include "app/workshop/worked_build.h"

namespace flarestock {

namespace {

void addUses(WhereUsed &used, const BuildPlan &plan, const WhereUsed::Use &as, ShelfInTurn &shelves)
{
    const auto worked = workBuild(*used.workshop, plan, shelves.of(plan, used.workshop->ledger));
    if (!worked)
        return;
    for (const BillLine &line : worked->expansion.lines) {
        WhereUsed::Use use = as;
        use.need = line.need;
        used.byPart[line.part->number].push_back(std::move(use));
    }
}

} // namespace

std::shared_ptr<const WhereUsed> WhereUsed::of(const std::shared_ptr<const Workshop> &workshop,
                                               const std::atomic<bool> &isStopped)
{
    auto used = std::make_shared<WhereUsed>();
    used->workshop = workshop;
    ShelfInTurn shelves(*workshop, workshop->bars);
    std::size_t builds = 0;
    for (const BuildPlan &plan : workshop->builds) {
        if (isStopped || ++builds > BuildsMost)
            break;
        addUses(*used, plan, {plan.title.empty() ? plan.id : plan.title, plan.by, true, {}},
                shelves);
    }
    for (const auto &[id, form] : *workshop->templates) {
        if (isStopped)
            return nullptr;
        BuildPlan plan;
        plan.templateId = id;
        addUses(*used, plan, {form->title, {}, false, {}}, shelves);
    }
    return isStopped ? nullptr : used;
}

} // namespace flarestock
