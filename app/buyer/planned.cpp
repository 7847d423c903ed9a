// SPDX-License-Identifier: MIT

#include "app/buyer/planned.h"

#include "model/buying/plan/wishes.h"
#include "model/exchange/rates_csv.h"

#include <algorithm>

namespace flarestock {

namespace {

PlanTask taskOf(const Workshop &workshop, const Rates &rates, const PlanWanted &wanted)
{
    return {workshop.catalogue, rates, wanted.today, wanted.shortages, wanted.first};
}

Order draftFrom(const ProposedOrder &planned, const std::string &day)
{
    return {{},
            {},
            planned.supplier->id,
            planned.currency,
            OrderState::Draft,
            {},
            {},
            {},
            planned.supplier->tax,
            planned.rate,
            day,
            planned.hereBy,
            {},
            {},
            0};
}

} // namespace

Result<Rates> ratesOf(const ShopFile &file)
{
    const auto documents = file.documents();
    if (!documents)
        return tl::unexpected(documents.error());
    const auto found = documents->find("rates.csv");
    if (found == documents->end())
        return Rates(file.settings().currency, {});
    return readRates(found->second, found->first, file.settings().currency);
}

int onNoSlip(const Workshop &workshop, const Rates &rates, const PlanWanted &wanted)
{
    const PlanTask task = taskOf(workshop, rates, wanted);
    return static_cast<int>(Wishes(task).unplaced.size());
}

PurchasePlan plannedFor(const Workshop &workshop, const Rates &rates, const PlanWanted &wanted)
{
    return planPurchases(taskOf(workshop, rates, wanted));
}

Planned plannedAndCompared(const Workshop &workshop, const Rates &rates, const PlanWanted &wanted)
{
    PlanTask task = taskOf(workshop, rates, wanted);
    Planned made{planPurchases(task), {}, {}};
    for (const PlanAim other : {PlanAim::Cheapest, PlanAim::Earliest, PlanAim::Parcels}) {
        if (other == wanted.first)
            continue;
        task.first = other;
        made.others.push_back(planPurchases(task));
    }
    if (wanted.first == PlanAim::Cheapest)
        made.later = laterSaving(std::move(task), made.plan);
    return made;
}

std::vector<Order> draftsOf(const PurchasePlan &plan, const Catalogue &catalogue,
                            const std::string &day)
{
    std::vector<Order> drafts;
    for (const ProposedOrder &planned : plan.orders) {
        const std::size_t first = drafts.size();
        for (const PlannedLine &line : planned.lines) {
            std::size_t at = first;
            while (at < drafts.size() && drafts[at].line(line.offer->part))
                ++at;
            if (at == drafts.size())
                drafts.push_back(draftFrom(planned, day));
            const Part *part = catalogue.find(line.offer->part);
            drafts[at].lines.push_back({line.offer->part, line.offer->supplierNumber,
                                        part ? part->description : std::string(), line.quantity,
                                        line.offer->pack, line.priceEach,
                                        part ? part->unit : Unit::Each,
                                        line.hereBy == planned.hereBy ? "" : line.hereBy});
        }
        drafts[first].freight = planned.freight;
    }
    return drafts;
}

} // namespace flarestock
