// SPDX-License-Identifier: MIT
//
// `flarestock server`: a shop on a PostgreSQL server: sets it up, and moves a shop there and back.

#include "app/command/command.h"

#include "app/workshop/clock.h"
#include "model/storage/moving.h"
#include "model/storage/server/server_setup.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct SetupAsked {
    std::string shop;
    std::string title;
    std::string currency;
    std::string costing;
    std::vector<std::string> hands;
    bool json = false;
};

/// What no shop can be without; its bins and cars are added by `flarestock place`.
std::vector<Place> firstPlaces()
{
    return {{"opening", "what was there before", PlaceKind::Opening},
            {"used-up", "used up", PlaceKind::UsedUp},
            {"scrap", "scrap", PlaceKind::Scrap},
            {"bench", "bench", PlaceKind::Bench},
            {"difference", "found by counting", PlaceKind::Difference}};
}

Result<std::optional<NewShop>> shopOf(const SetupAsked &asked)
{
    if (asked.title.empty())
        return std::nullopt;
    const auto currency = Currency::parse(asked.currency);
    if (!currency)
        return tl::unexpected(currency.error());
    const auto costing = asked.costing.empty() ? Costing::MovingAverage : costingOf(asked.costing);
    if (!costing)
        return problem(asked.costing, "is no way to cost stock",
                       "Say " + std::string(text(Costing::MovingAverage)) + " or " +
                           std::string(text(Costing::FirstInFirstOut)) + ".");
    NewShop shop{{asked.title, *currency, *costing}, firstPlaces(), {}, {}, {}, "setup"};
    shop.now = nowMilliseconds();
    return shop;
}

void answerSetup(const SetupAsked &asked, CommandOutcome &outcome)
{
    const auto begins = shopOf(asked);
    if (!begins)
        return outcome.refuse(begins.error());
    const auto made = setUpServer({asked.shop, *begins, asked.hands});
    if (!made)
        return outcome.refuse(made.error());
    QJsonArray hands;
    for (const auto &hand : made->hands)
        hands.append(jsonText(hand));
    if (asked.json)
        return outcome.print(QJsonObject{{QStringLiteral("tables"), made->tables},
                                         {QStringLiteral("broughtUp"), made->broughtUp},
                                         {QStringLiteral("shop"), made->shop},
                                         {QStringLiteral("hands"), hands}});
    outcome.print(made->tables      ? "made the tables and their guards"
                  : made->broughtUp ? "the tables were an older program's: brought up, nothing lost"
                                    : "the tables are there");
    outcome.print(made->shop ? "made the shop " + asked.title
                             : (begins->has_value() ? "there is a shop already: it stays as it is"
                                                    : "no shop was asked for"));
    for (const auto &hand : made->hands) {
        outcome.print("made the role " + hand);
        outcome.print("  give it a password there: psql, then \\password " + hand);
    }
}

struct MoveAsked {
    std::string from;
    std::string to;
    bool json = false;
};

void answerMove(const MoveAsked &asked, CommandOutcome &outcome)
{
    const auto moved = moveShop(asked.from, asked.to);
    if (!moved)
        return outcome.refuse(moved.error());
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("movements"), static_cast<qint64>(moved->movements)},
                        {QStringLiteral("whole"), true}});
    outcome.print("moved to " + asked.to + ": " +
                  counted(static_cast<std::size_t>(moved->movements), "movement") +
                  ", proved whole; " + asked.from + " stays as it is, write there no more");
}

void addSetup(CLI::App &server, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<SetupAsked>();
    CLI::App *setup = server.add_subcommand(
        "setup", "Makes the tables, their guards and the roles; can be run again.");
    setup->add_option("URL", asked->shop, "postgresql://owner@host/database")->required();
    setup->add_option("--title", asked->title, "begin a shop of this title, where there is none");
    setup->add_option("--currency", asked->currency, "its currency: USD, EUR …");
    setup->add_option("--costing", asked->costing, "how it costs its stock");
    setup->add_option("--hand", asked->hands, "a role that may work in the shop; several times")
        ->allow_extra_args(false);
    setup->add_flag("--json", asked->json, JsonHelp);
    setup->callback([asked, &outcome] { answerSetup(*asked, outcome); });
}

void addMove(CLI::App &server, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<MoveAsked>();
    CLI::App *move = server.add_subcommand(
        "move", "Copies a whole shop from a file to a server or back, and proves the copy whole.");
    move->add_option("--from", asked->from, "the shop: a file or postgresql://…")->required();
    move->add_option("--to", asked->to, "a new file, or postgresql://owner@host/database")
        ->required();
    move->add_flag("--json", asked->json, JsonHelp);
    move->callback([asked, &outcome] { answerMove(*asked, outcome); });
}

} // namespace

void addServerCommand(CLI::App &app, CommandOutcome &outcome)
{
    CLI::App *server = app.add_subcommand("server", "A shop on a server, for several seats.");
    server->require_subcommand(1);
    addSetup(*server, outcome);
    addMove(*server, outcome);
}

} // namespace flarestock
