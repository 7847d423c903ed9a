// SPDX-License-Identifier: MIT
//
// `flarestock order`: new, list, show, place, change, close, cancel: what is bought of one supplier
// at once, from its draft to its end, and its papers.

#include "app/command/buying/order_answers.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

using Answer = void (*)(const OrderAsked &asked, OpenShop &shop);

/// One of the words behind `flarestock order`.
struct OrderWord {
    const char *name;
    const char *says;
    OpenMode mode;
    Answer answer;
};

std::pair<CLI::App *, std::shared_ptr<OrderAsked>> addWord(CLI::App &order, const OrderWord &word,
                                                           CommandOutcome &outcome)
{
    const auto asked = std::make_shared<OrderAsked>();
    CLI::App *command = order.add_subcommand(word.name, word.says);
    addShopOptions(*command, *asked);
    command->callback([asked, word, &outcome] {
        withShop(*asked, word.mode, outcome, [&](OpenShop &shop) { word.answer(*asked, shop); });
    });
    return {command, asked};
}

void addNumber(CLI::App &command, OrderAsked &asked)
{
    command.add_option("NUMBER", asked.number, "the order's number: 2026-0007")->required();
}

void addDays(CLI::App &command, OrderAsked &asked)
{
    command.add_option("--day", asked.day, "the order's day, 2026-12-01; else today (UTC)");
    command.add_option("--due", asked.due, "when it is to be here: 2026-12-01");
}

void addLines(CLI::App &command, OrderAsked &asked)
{
    command
        .add_option("--line", asked.lines,
                    "\"PART QUANTITY\", or \"PART QUANTITY at PRICE\"; may stand several times")
        ->allow_extra_args(false);
    command.add_option("--freight", asked.freight, "what the supplier takes for freight");
    command.add_option("--discount", asked.discount, "what he takes off the goods");
    command.add_option("--note", asked.note, "for the supplier, on the paper");
}

void addPapers(CLI::App &command, OrderAsked &asked)
{
    addPaperOptions(command, asked, "the order");
}

void addChanges(CLI::App &order, CommandOutcome &outcome)
{
    const auto [change, changeAsked] =
        addWord(order,
                {"change", "Changes a draft, or the days and the note of a placed order.",
                 OpenMode::ReadWrite, answerChangeOrder},
                outcome);
    addNumber(*change, *changeAsked);
    addLines(*change, *changeAsked);
    change->add_option("--without", changeAsked->without, "a part that is ordered no more")
        ->allow_extra_args(false);
    addDays(*change, *changeAsked);
    addPapers(*change, *changeAsked);

    const auto [close, closeAsked] =
        addWord(order,
                {"close", "Closes an order: nobody waits for the rest.", OpenMode::ReadWrite,
                 answerCloseOrder},
                outcome);
    addNumber(*close, *closeAsked);
    const auto [cancel, cancelAsked] =
        addWord(order,
                {"cancel", "Cancels an order of which nothing has come.", OpenMode::ReadWrite,
                 answerCancelOrder},
                outcome);
    addNumber(*cancel, *cancelAsked);
}

} // namespace

void addOrderCommand(CLI::App &app, CommandOutcome &outcome)
{
    CLI::App *order = app.add_subcommand("order", "Makes, shows and places orders to suppliers.");
    order->require_subcommand(1);
    const auto [fresh, freshAsked] =
        addWord(*order, {"new", "Drafts an order.", OpenMode::ReadWrite, answerNewOrder}, outcome);
    fresh->add_option("--supplier", freshAsked->supplier, "the supplier's id");
    auto *fromPlan = fresh->add_flag("--from-plan", freshAsked->fromPlan,
                                     "drafts all that flarestock plan proposes, in one action; "
                                     "with --supplier only his");
    const auto before = fresh->get_options().size();
    addPlanOptions(*fresh, freshAsked->plan);
    const auto options = fresh->get_options();
    for (auto at = before; at < options.size(); ++at)
        options[at]->needs(fromPlan);
    fresh->add_option("--rate", freshAsked->rate,
                      "so much of the shop's currency for one of the order's");
    addLines(*fresh, *freshAsked);
    addDays(*fresh, *freshAsked);
    addPapers(*fresh, *freshAsked);

    const auto [list, listAsked] = addWord(
        *order, {"list", "Lists the orders.", OpenMode::ReadOnly, answerOrderList}, outcome);
    list->add_option(
        "--state", listAsked->state,
        "draft, placed, \"partly received\", closed, cancelled; or open: not at its end");

    const auto [show, showAsked] =
        addWord(*order, {"show", "Shows an order.", OpenMode::ReadOnly, answerShowOrder}, outcome);
    addNumber(*show, *showAsked);
    addPapers(*show, *showAsked);

    const auto [place, placeAsked] = addWord(
        *order, {"place", "Places a draft.", OpenMode::ReadWrite, answerPlaceOrder}, outcome);
    addNumber(*place, *placeAsked);
    addDays(*place, *placeAsked);
    addPapers(*place, *placeAsked);

    addChanges(*order, outcome);
}

} // namespace flarestock
