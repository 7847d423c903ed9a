// SPDX-License-Identifier: MIT
//
// `flarestock short`: what lacks, how much, for whom, and by when it must be ordered; of the shop's
// builds and places, or of a plan in a file.

#include "app/buyer/away_with.h"
#include "app/buyer/on_its_way.h"
#include "app/command/buying/short_words.h"
#include "app/command/buying/time_plan_words.h"
#include "app/command/papers/paper_options.h"
#include "app/sheet/needs_rows.h"
#include "app/stockroom/asked.h"
#include "app/workshop/clock.h"
#include "model/exchange/wanted_toml.h"
#include "model/netting/over_time/calendar_day.h"
#include "model/storage/trailer/travelling.h"

#include <CLI/CLI.hpp>

#include <fstream>
#include <iterator>
#include <memory>

namespace flarestock {

namespace {

struct ShortAsked : PaperAsked {
    std::string shop;
    std::string plan;
    std::string by;
    std::string on;
    std::vector<std::string> builds;
    std::vector<std::string> moves;
    bool json = false;
    bool strict = false;
};

void answerPlan(const ShortAsked &asked, const std::string &today, CommandOutcome &outcome)
{
    std::ifstream in(asked.plan, std::ios::binary);
    const std::string whole((std::istreambuf_iterator<char>(in)), {});
    if (!in.good() && whole.empty())
        return outcome.refuse({asked.plan, "cannot be read", "Name a plan that is there."});
    const auto file = readWanted(whole, asked.plan, *dayNumber(today));
    if (!file)
        return outcome.refuse(file.error());
    const auto plan = nettedOverTime(file->wanted);
    if (!plan) {
        Problem wrong = plan.error();
        wrong.thing = asked.plan + ": " + wrong.thing;
        return outcome.refuse(wrong);
    }
    const SaidPlan said{*plan, file->wanted.first, file->isCalendar};
    if (asked.json)
        outcome.print(planDocument(said));
    else
        outcome.out += planTables(said);
    if (asked.strict && isShort(*plan))
        outcome.ending = Ending::Attention;
}

Result<NeedsAsked> needsAsked(const ShortAsked &asked, const std::string &today)
{
    NeedsAsked needs{today, asked.by, asked.builds, {}, {}, true};
    for (const std::string &move : asked.moves) {
        const auto equals = move.find('=');
        if (equals == std::string::npos)
            return problem("--move", '"' + move + "\" has no equals sign",
                           "Write --move coupe-fuel=2027-01-09.");
        needs.moved[move.substr(0, equals)] = move.substr(equals + 1);
    }
    return needs;
}

/// What stands on them; points to both.
PaperMaking papersOf(const ShopNeeds &needs, const std::string &today)
{
    return {[&](PaperWords paper) { return needsPaper(needs, today, std::move(paper)); },
            [&] { return needsRows(needs, today); }};
}

/// What is counted on and need not be there.
Result<void> noteUnsure(ShopNeeds &needs, const Workshop &workshop, ShopFile &file,
                        const std::string &today)
{
    for (std::string &note : unsureOnItsWay(workshop, today))
        needs.notes.push_back(std::move(note));
    const auto trips = Travelling::trips(file);
    if (!trips)
        return tl::unexpected(trips.error());
    for (std::string &note : countedOnAway(needs, workshop, *trips))
        needs.notes.push_back(std::move(note));
    return {};
}

void answerShop(const ShortAsked &asked, const std::string &today, CommandOutcome &outcome)
{
    auto wanted = needsAsked(asked, today);
    if (!wanted)
        return outcome.refuse(wanted.error());
    auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    if (!file)
        return outcome.refuse(file.error());
    if (const auto can = canWritePapers(asked, *file); !can)
        return outcome.refuse(can.error());
    const auto workshop = Workshop::read(*file);
    if (!workshop)
        return outcome.refuse(workshop.error());
    auto due = dueInShop(**workshop, *file, today);
    if (!due)
        return outcome.refuse(due.error());
    wanted->due = std::move(due->lines);
    auto needs = needsOf(**workshop, *wanted);
    if (!needs)
        return outcome.refuse(needs.error());
    if (const auto noted = noteUnsure(*needs, **workshop, *file, today); !noted)
        return outcome.refuse(noted.error());
    NeedsAsked asTheyStand = *wanted;
    asTheyStand.moved.clear();
    asTheyStand.otherWays = false;
    const auto before = wanted->moved.empty() ? needs : needsOf(**workshop, asTheyStand);
    if (!before)
        return outcome.refuse(before.error());
    const auto written = writePapers(asked, *file, papersOf(*needs, today));
    if (!written)
        return outcome.refuse(written.error());
    if (asked.json)
        outcome.print(asked.moves.empty() ? needsDocument(*needs) : movedDocument(*before, *needs));
    else {
        outcome.out += needsTables(*needs);
        outcome.print(counted(shortLines(*needs), "line") + " short");
        if (!asked.moves.empty())
            outcome.out += "\nAgainst the days as they stand:\n" + movedTable(*before, *needs);
    }
    if (asked.strict && shortLines(*needs) > 0)
        outcome.ending = Ending::Attention;
}

void answer(const ShortAsked &asked, CommandOutcome &outcome)
{
    const auto today = dayAsked(asked.on, nowMilliseconds());
    if (!today)
        return outcome.refuse(today.error());
    if (asked.shop.empty() == asked.plan.empty())
        return outcome.refuse({"flarestock short", "takes --shop or --plan, and not both",
                               "Name a shop, or a plan in a file."});
    if (!asked.plan.empty() && asked.isAny())
        return outcome.refuse({"--plan", "is no shop's, which a paper is from",
                               "Leave out --pdf, --csv and --xlsx, or name a shop: --shop."});
    if (!asked.plan.empty())
        return answerPlan(asked, *today, outcome);
    answerShop(asked, *today, outcome);
}

} // namespace

void addShortCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ShortAsked>();
    CLI::App *command = app.add_subcommand(
        "short", "Says what lacks, how much, for whom, and by when it must be ordered.");
    auto *shop = command->add_option("--shop", asked->shop, ShopHelp);
    auto *plan = command->add_option("--plan", asked->plan,
                                     "a plan in a file, instead of a shop (see demo-data)");
    command->add_option("--by", asked->by, "only what is wanted by this day: 2026-12-31")
        ->excludes(plan);
    command->add_option("--on", asked->on, "as of this day; today where not said");
    command->add_option("--build", asked->builds, "only this build; may stand several times")
        ->allow_extra_args(false)
        ->needs(shop);
    command
        ->add_option("--move", asked->moves,
                     "a build by another day, and what that changes: coupe-fuel=2027-01-09")
        ->allow_extra_args(false)
        ->needs(shop);
    command->add_flag("--json", asked->json, JsonHelp);
    addPaperOptions(*command, *asked, "the short lines");
    command->add_flag("--strict", asked->strict, "exit with 1 where something is short");
    command->callback([asked, &outcome] { answer(*asked, outcome); });
}

} // namespace flarestock
