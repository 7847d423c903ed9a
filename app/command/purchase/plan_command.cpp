// SPDX-License-Identifier: MIT
//
// `flarestock plan`: what is short becomes orders: from whom, how much, for how much, by when.

#include "app/buyer/needs.h"
#include "app/command/purchase/plan_document.h"
#include "app/stockroom/asked.h"
#include "app/workshop/clock.h"
#include "model/exchange/needs_csv.h"

#include <CLI/CLI.hpp>
#include <QFile>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

constexpr qint64 LargestTable = 64 * 1024 * 1024;

struct PurchaseAsked {
    std::string shop;
    std::string prefer = "cheapest";
    std::string by;
    std::string today;
    std::string needs;
    std::vector<std::string> builds;
    bool strict = false;
    bool json = false;
};

Result<std::vector<Shortage>> typedNeeds(const PurchaseAsked &asked, const Workshop &workshop)
{
    QFile file(QString::fromStdString(asked.needs));
    if (!file.open(QIODevice::ReadOnly))
        return problem(asked.needs, "cannot be read: " + file.errorString().toStdString());
    if (file.size() > LargestTable)
        return problem(asked.needs, "is larger than 64 MB", "Split it.");
    auto needs = readNeeds(file.readAll().toStdString(), asked.needs, workshop.catalogue);
    if (needs && !asked.by.empty())
        std::erase_if(*needs, [&asked](const Shortage &need) {
            return !need.day.empty() && need.day > asked.by;
        });
    return needs;
}

Result<PlanWanted> wantedOf(const PurchaseAsked &asked, const Workshop &workshop)
{
    const auto first = parsePlanAim(asked.prefer);
    if (!first)
        return tl::unexpected(first.error());
    auto today = dayAsked(asked.today, nowMilliseconds());
    if (!today)
        return tl::unexpected(today.error());
    if (!asked.by.empty())
        if (const auto by = dayAsked(asked.by, 0); !by)
            return tl::unexpected(by.error());
    auto shortages = asked.needs.empty() ? shortagesOf(workshop, {*today, asked.by, asked.builds})
                                         : typedNeeds(asked, workshop);
    if (!shortages)
        return tl::unexpected(shortages.error());
    return PlanWanted{std::move(*shortages), std::move(*today), *first};
}

void answerPurchasePlan(const PurchaseAsked &asked, CommandOutcome &outcome)
{
    const auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    if (!file)
        return outcome.refuse(file.error());
    const auto workshop = Workshop::read(*file);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto rates = ratesOf(*file);
    if (!rates)
        return outcome.refuse(rates.error());
    const auto wanted = wantedOf(asked, **workshop);
    if (!wanted)
        return outcome.refuse(wanted.error());
    const Planned planned = plannedAndCompared(**workshop, *rates, *wanted);
    if (asked.json)
        outcome.print(planDocument(planned, **workshop));
    else
        outcome.out += planSheet(planned, **workshop);
    const bool isLate = std::any_of(planned.plan.parts.begin(), planned.plan.parts.end(),
                                    [](const PlannedPart &part) { return !part.late.empty(); });
    if (asked.strict && (isLate || !planned.plan.unplaced.empty()))
        outcome.ending = Ending::Attention;
}

} // namespace

void addPlanCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<PurchaseAsked>();
    CLI::App *command = app.add_subcommand(
        "plan", "Says what to order from whom for all that is short, and what that costs.");
    command->add_option("--prefer", asked->prefer,
                        "what comes first: cheapest, earliest or parcels (the fewest); cheapest "
                        "where not said");
    command->add_option("--by", asked->by, "only what is needed by this day: 2026-12-12");
    command->add_option("--today", asked->today,
                        "the day on which orders go out; today where "
                        "not said");
    auto *builds = command
                       ->add_option("--build", asked->builds,
                                    "only what this build lacks; may stand several times")
                       ->allow_extra_args(false);
    command
        ->add_option("--needs", asked->needs,
                     "a CSV table of part, quantity, day, for, instead of what the shop lacks")
        ->excludes(builds);
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_flag("--strict", asked->strict,
                      "exit status 1 where something comes late or "
                      "nobody sells it");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerPurchasePlan(*asked, outcome); });
}

} // namespace flarestock
