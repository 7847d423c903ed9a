// SPDX-License-Identifier: MIT
//
// `flarestock due`: what of the cars has to be washed, looked at or replaced: now, before an event,
// by a day.

#include "app/command/papers/paper_options.h"
#include "app/command/servicing/due_words.h"
#include "app/command/shop_options.h"
#include "app/garage/due_list.h"
#include "app/sheet/due_rows.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct DueCommandAsked : PaperAsked {
    std::string shop;
    DueListAsked list;
    bool strict = false;
    bool json = false;
};

/// A document of what is due, and of the intervals that say so.
QJsonObject documentOf(const std::vector<DueLine> &lines, const Garage &garage,
                       const DueListAsked &asked)
{
    QJsonArray due;
    for (const DueLine &line : lines)
        due.append(dueDocument(line));
    QJsonArray events;
    for (const Event &one : garage.workshop->season.events()) {
        if (one.lastDay < asked.today)
            continue;
        events.append(QJsonObject{{QStringLiteral("event"), jsonText(one.id)},
                                  {QStringLiteral("firstDay"), jsonText(one.firstDay)},
                                  {QStringLiteral("lastDay"), jsonText(one.lastDay)}});
    }
    return {{QStringLiteral("today"), jsonText(asked.today)},
            {QStringLiteral("due"), due},
            {QStringLiteral("events"), events},
            {QStringLiteral("ownIntervals"), garage.ownIntervals}};
}

void answerDue(DueCommandAsked &asked, OpenShop &shop)
{
    CommandOutcome &outcome = shop.outcome;
    if (const auto can = canWritePapers(asked, shop.file); !can)
        return outcome.refuse(can.error());
    const auto garage = Garage::of(*shop.workshop, shop.file);
    if (!garage)
        return outcome.refuse(garage.error());
    if (!asked.list.by.empty() && !isDay(asked.list.by))
        return outcome.refuse(
            {asked.list.by, "is no day for --by", "Write for example 2026-12-12."});
    const auto today = dayAsked(asked.list.today, shop.by.at);
    if (!today)
        return outcome.refuse(today.error());
    asked.list.today = *today;
    const auto lines = dueList(*garage, asked.list);
    if (!lines)
        return outcome.refuse(lines.error());
    const auto written =
        writePapers(asked, shop.file,
                    {[&](PaperWords paper) { return duePaper(*lines, *today, std::move(paper)); },
                     [&] { return dueRows(*lines, *today); }, [&] { return dueNeeds(*lines); }});
    if (!written)
        return outcome.refuse(written.error());
    if (asked.json)
        outcome.print(documentOf(*lines, *garage, asked.list));
    else
        outcome.out += dueSheet(*lines, *garage);
    const bool isDue =
        std::any_of(lines->begin(), lines->end(), [](const DueLine &line) { return line.isDue(); });
    if (asked.strict && isDue)
        outcome.ending = Ending::Attention;
}

} // namespace

void addDueCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<DueCommandAsked>();
    CLI::App *command = app.add_subcommand(
        "due",
        "What has to be done to the cars by the shop's intervals, and which events it stops.");
    command->add_option("--car", asked->list.car, "only this car");
    auto *by = command->add_option("--by", asked->list.by, "only until this day: 2026-12-12");
    command->add_option("--event", asked->list.event, "only until this event of the season")
        ->excludes(by);
    command->add_option("--today", asked->list.today, "as if it were this day");
    command->add_flag("--all", asked->list.all, "also what is fine");
    command->add_flag("--strict", asked->strict, "exit status 1 where something is due");
    command->add_flag("--json", asked->json, JsonHelp);
    addPaperOptions(*command, *asked, "what is due; --csv: what lacks for it, for plan --needs");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->callback([asked, &outcome] {
        const ShopAsked shop{asked->shop, {}, {}, {}, asked->json};
        withShop(shop, OpenMode::ReadOnly, outcome,
                 [&](OpenShop &open) { answerDue(*asked, open); });
    });
}

} // namespace flarestock
