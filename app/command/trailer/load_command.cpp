// SPDX-License-Identifier: MIT
//
// `flarestock load`: the trailer's drawers before and after an event. `load list` says what to
// bring from which bin and `load do` notes that it was brought; `load back` says what does not
// belong there, and with --do notes that it was taken out. All of one call is one action.

#include "app/command/papers/paper_options.h"
#include "app/command/shop_options.h"
#include "app/command/trailer/load_words.h"
#include "app/sheet/load_rows.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct LoadWords : ShopAsked {
    std::vector<std::string> parts;
    std::string drawer;
    std::string on;
    std::string event;
    std::string to;
    PaperAsked papers;
    bool doIt = false;
};

Result<std::string> eventDay(const std::string &id, const Season &season)
{
    if (const Event *event = season.event(id))
        return event->lastDay;
    std::string known;
    for (const Event &event : season.events())
        known += (known.empty() ? "" : ", ") + event.id;
    return problem("--event " + id, "is no event of the season",
                   known.empty() ? "Write the shop's events into its season.csv."
                                 : "Events are: " + known + ".");
}

Result<LoadAsked> loadAsked(const LoadWords &words, const OpenShop &shop)
{
    LoadAsked asked;
    const auto day = words.event.empty() ? dayAsked(words.on, shop.by.at)
                                         : eventDay(words.event, shop.workshop->season);
    if (!day)
        return tl::unexpected(day.error());
    asked.day = *day;
    if (!words.drawer.empty()) {
        const auto drawer = placeAsked(words.drawer, shop.workshop->ledger);
        if (!drawer)
            return tl::unexpected(drawer.error());
        if ((*drawer)->kind != PlaceKind::Drawer)
            return problem(words.drawer, "is no drawer of the trailer",
                           "Name a place of the kind drawer.");
        asked.drawer = (*drawer)->id;
    }
    for (const std::string &typed : words.parts) {
        const auto part = partAsked(typed, *shop.workshop);
        if (!part)
            return tl::unexpected(part.error());
        asked.parts.insert((*part)->number);
    }
    return asked;
}

void appendMoves(OpenShop &shop, std::vector<Movement> movements, const std::string &said)
{
    const auto moved = static_cast<qint64>(movements.size());
    if (movements.empty()) {
        if (shop.asked.json)
            return shop.outcome.print(QJsonObject{{QStringLiteral("moved"), 0},
                                                  {QStringLiteral("movement"), QJsonValue()},
                                                  {QStringLiteral("already"), false}});
        return shop.outcome.print("nothing to move");
    }
    appendAction(shop, numbered(std::move(movements), shop.by),
                 said + ": " + counted(static_cast<std::size_t>(moved), "movement"),
                 {{QStringLiteral("moved"), moved}});
}

/// An action that was done already is not listed anew: by then nothing lacks any more.
bool wasMoved(const OpenShop &shop)
{
    return wasDone(shop, [](const Movement &before) { return before.deed == Deed::Move; });
}

/// Refused where they cannot be written.
bool wrotePapers(const LoadWords &words, OpenShop &shop, const PaperMaking &making)
{
    auto written = canWritePapers(words.papers, shop.file);
    if (written)
        written = writePapers(words.papers, shop.file, making);
    if (!written)
        shop.outcome.refuse(written.error());
    return written.has_value();
}

void answerList(const LoadWords &words, OpenShop &shop)
{
    const auto asked = loadAsked(words, shop);
    if (!asked)
        return shop.outcome.refuse(asked.error());
    const auto lines = loadLines(*shop.workshop, *asked);
    const LoadFor forWhat{asked->day, shop.workshop->season.event(words.event)};
    const bool written =
        wrotePapers(words, shop,
                    {[&](PaperWords paper) { return loadPaper(lines, forWhat, std::move(paper)); },
                     [&] { return loadRows(lines, asked->day); }});
    if (!written)
        return;
    if (words.json)
        return shop.outcome.print(loadDocument(*shop.workshop, lines));
    shop.outcome.out += loadSheet(*shop.workshop, lines);
}

void answerDo(const LoadWords &words, OpenShop &shop)
{
    const auto asked = loadAsked(words, shop);
    if (!asked)
        return shop.outcome.refuse(asked.error());
    if (wasMoved(shop))
        return;
    appendMoves(shop, loadMovements(loadLines(*shop.workshop, *asked)), "loaded");
}

void answerBack(const LoadWords &words, OpenShop &shop)
{
    const auto asked = loadAsked(words, shop);
    if (!asked)
        return shop.outcome.refuse(asked.error());
    if (words.doIt && wasMoved(shop))
        return;
    std::string to;
    if (!words.to.empty()) {
        const auto place = stockPlaceAsked(words.to, shop.workshop->ledger);
        if (!place)
            return shop.outcome.refuse(place.error());
        to = (*place)->id;
    }
    const auto lines = unloadLines(*shop.workshop, *asked);
    const LoadFor forWhat{asked->day, shop.workshop->season.event(words.event)};
    if (words.doIt && words.papers.isAny())
        return shop.outcome.refuse({"load back --do", "writes no list", "Leave out one of them."});
    if (words.doIt)
        return appendMoves(shop, unloadMovements(lines, to), "taken out");
    const bool written = wrotePapers(
        words, shop,
        {[&](PaperWords paper) { return unloadPaper(lines, forWhat, std::move(paper)); },
         [&] { return unloadRows(lines, asked->day); }});
    if (!written)
        return;
    if (words.json)
        return shop.outcome.print(unloadDocument(lines));
    shop.outcome.out += unloadSheet(*shop.workshop, lines);
}

/// The options that all three share.
void addLoadOptions(CLI::App &command, LoadWords &words)
{
    command.add_option("PART", words.parts, "only these; all where none is named");
    command.add_option("--drawer", words.drawer, "only this one: trailer-2");
    auto *on = command.add_option("--on", words.on, "as of this day; today where not said");
    command.add_option("--event", words.event, "as of the last day of this event")->excludes(on);
    addShopOptions(command, words);
}

} // namespace

void addLoadCommand(CLI::App &app, CommandOutcome &outcome)
{
    CLI::App *load =
        app.add_subcommand("load", "Fills the trailer's drawers, and empties them after an event.");
    load->require_subcommand(1);
    const auto list = std::make_shared<LoadWords>();
    CLI::App *command = load->add_subcommand(
        "list", "By drawer: what it is to hold, what is there, what to bring from which bin.");
    addLoadOptions(*command, *list);
    addPaperOptions(*command, list->papers, "what to bring");
    command->callback([list, &outcome] {
        withShop(*list, OpenMode::ReadOnly, outcome,
                 [&](OpenShop &shop) { answerList(*list, shop); });
    });
    const auto bring = std::make_shared<LoadWords>();
    command = load->add_subcommand("do", "Notes that what the list says was brought: one action.");
    addLoadOptions(*command, *bring);
    command->callback([bring, &outcome] {
        withShop(*bring, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerDo(*bring, shop); });
    });
    const auto back = std::make_shared<LoadWords>();
    command = load->add_subcommand(
        "back", "After an event: what lies in the drawers and does not belong there.");
    addLoadOptions(*command, *back);
    command->add_option("--to", back->to, "of what no bin keeps: this place");
    addPaperOptions(*command, back->papers, "what to take out");
    command->add_flag("--do", back->doIt, "note that it was taken out: one action");
    command->callback([back, &outcome] {
        withShop(*back, back->doIt ? OpenMode::ReadWrite : OpenMode::ReadOnly, outcome,
                 [&](OpenShop &shop) { answerBack(*back, shop); });
    });
}

} // namespace flarestock
