// SPDX-License-Identifier: MIT

#include "app/command/purchase/plan_words.h"

#include "app/buyer/coming_in_time.h"
#include "app/stockroom/asked.h"
#include "app/workshop/clock.h"
#include "model/exchange/needs_csv.h"

#include <CLI/CLI.hpp>
#include <QFile>

namespace flarestock {

namespace {

constexpr qint64 LargestTable = 64 * 1024 * 1024;

Result<std::vector<Shortage>> typedNeeds(const PlanWords &asked, const Workshop &workshop)
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

Result<std::vector<Shortage>> shopShortages(const PlanWords &asked, const std::string &today,
                                            const Workshop &workshop, const ShopFile &file)
{
    auto due = dueInShop(workshop, file, today);
    if (!due)
        return tl::unexpected(due.error());
    NeedsAsked needs{today, asked.by, asked.builds};
    needs.due = std::move(due->lines);
    auto found = needsOf(workshop, needs);
    if (!found)
        return tl::unexpected(found.error());
    return shortagesToOrder(std::move(*found), workshop.catalogue, today);
}

} // namespace

void addPlanOptions(CLI::App &command, PlanWords &asked)
{
    command.add_option("--prefer", asked.prefer,
                       "what comes first: cheapest, earliest or parcels (the fewest); cheapest "
                       "where not said");
    command.add_option("--by", asked.by, "only what is needed by this day: 2026-12-12");
    command.add_option("--today", asked.today,
                       "the day on which orders go out; today where "
                       "not said");
    auto *builds = command
                       .add_option("--build", asked.builds,
                                   "only what this build lacks; may stand several times")
                       ->allow_extra_args(false);
    command
        .add_option("--needs", asked.needs,
                    "a CSV table of part, quantity, day, for, instead of what the shop lacks")
        ->excludes(builds);
}

Result<PlanWanted> planWanted(const PlanWords &asked, const Workshop &workshop,
                              const ShopFile &file)
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
    auto shortages = asked.needs.empty() ? shopShortages(asked, *today, workshop, file)
                                         : typedNeeds(asked, workshop);
    if (!shortages)
        return tl::unexpected(shortages.error());
    return PlanWanted{std::move(*shortages), std::move(*today), *first};
}

} // namespace flarestock
