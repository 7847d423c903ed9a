// SPDX-License-Identifier: MIT
//
// `flarestock carry`: how many spares to carry for so many events at so much certainty, with the
// sum behind it; of a shop's parts by their own history, of numbers, or of a kit at least money.

#include "app/command/command.h"
#include "app/command/trailer/carry_shop.h"
#include "app/command/trailer/carry_words.h"
#include "model/exchange/spares/kit_csv.h"

#include <CLI/CLI.hpp>

#include <fstream>
#include <iterator>
#include <memory>

namespace flarestock {

namespace {

struct CarryAsked {
    CarryNumbers numbers;
    CarryShopAsked shop;
    std::string kit;
};

Result<std::vector<KitRow>> kitAsked(const std::string &path)
{
    std::ifstream in(path, std::ios::binary);
    const std::string whole((std::istreambuf_iterator<char>(in)), {});
    if (!in.good() && whole.empty())
        return problem(path, "cannot be read", "Name a kit that is there.");
    return readKit(whole, path);
}

Result<std::vector<CarryLine>> linesOf(const std::vector<KitRow> &kit, const CarryNumbers &typed,
                                       double certainty)
{
    const auto per = runningAsked(typed);
    if (!per)
        return tl::unexpected(per.error());
    std::vector<CarryLine> lines;
    for (const KitRow &row : kit) {
        const auto coming = comingAsked(typed, *per, row.each);
        if (!coming)
            return tl::unexpected(coming.error());
        auto line = carryByRate(Rational(row.rate), *per, *coming, certainty);
        if (!line)
            return tl::unexpected(line.error());
        line->part = row.part;
        lines.push_back(std::move(*line));
    }
    return lines;
}

void answerKit(const CarryAsked &asked, CommandOutcome &outcome)
{
    const auto certainty = certaintyAsked(asked.numbers.confidence, "--confidence");
    if (!certainty)
        return outcome.refuse(certainty.error());
    const auto kit = kitAsked(asked.kit);
    if (!kit)
        return outcome.refuse(kit.error());
    const auto lines = linesOf(*kit, asked.numbers, *certainty);
    if (!lines)
        return outcome.refuse(lines.error());
    std::vector<KitPart> parts;
    for (std::size_t i = 0; i < kit->size(); ++i)
        parts.push_back({kit->at(i).part, *lines->at(i).demand,
                         (kit->at(i).price * Decimal(1'000'000)).toInt64().value_or(0)});
    const KitPlan plan = planKit(parts, *certainty);
    const SaidKit said{plan, parts, *lines, {}, *certainty, 0};
    if (asked.shop.json)
        return outcome.print(kitDocument(said));
    outcome.out += kitSentences(said);
}

void answer(const CarryAsked &asked, CommandOutcome &outcome)
{
    if (!asked.shop.shop.empty())
        return answerCarryOfShop(asked.shop, asked.numbers, outcome);
    if (!asked.shop.parts.empty())
        return outcome.refuse(
            {asked.shop.parts.front(), "is a part of no shop that was named", "Add --shop FILE."});
    if (!asked.kit.empty())
        return answerKit(asked, outcome);
    const auto line = lineOfNumbers(asked.numbers);
    if (!line)
        return outcome.refuse(line.error());
    if (asked.shop.json)
        return outcome.print(carryDocument(*line));
    outcome.out += carrySentences(*line);
}

void addNumbers(CLI::App &command, CarryNumbers &numbers)
{
    command.add_option("--rate", numbers.rate, "uses of one piece per event: 0.35, 1/10000");
    command.add_option("--failures", numbers.failures,
                       "instead of a rate: so many uses were seen …");
    command.add_option("--in-events", numbers.inEvents,
                       "… in so many events, each piece counted (runs or hours with --per)");
    command.add_option("--model", numbers.model,
                       "poisson or predictive; by how thin the history is where not said");
    command.add_option("--per", numbers.per, "what the rate counts: event, run or hour");
    command.add_option("--events", numbers.events, "so many events are to come");
    command.add_option("--delivery", numbers.delivery,
                       "what was used has come again after so many events (of a shop: days)");
    command.add_option("--runs", numbers.runs, "of a car at an event");
    command.add_option("--hours", numbers.hours, "of a car at an event");
    command.add_option("--cars", numbers.cars, "so many cars share the spares; 1 where not said");
    command.add_option("--each", numbers.each, "so many of it in a car; 1 where not said");
    command.add_option("--lasts", numbers.lasts, "of what wears out: after so much it is replaced");
    command.add_option("--used", numbers.used, "what each fitted piece has run so far: 3,5");
    command.add_option("--crash", numbers.crash,
                       "of what a crash breaks: so many at once; --rate is then of crashes");
    command.add_option("--sets", numbers.sets, "where nobody knows that rate: so many sets");
    command.add_option("--confidence,--certainty", numbers.confidence,
                       "that nothing lacks: 95% (which it is where not said), 0.95");
}

void addShop(CLI::App &command, CarryShopAsked &shop)
{
    command.add_option("PART", shop.parts,
                       "parts of a shop; where none is named those of its spares.csv");
    addShopOptions(command, shop);
    auto *file = command.get_option("--shop")->required(false);
    command.add_option("--until", shop.until, "the events that begin by this day")->needs(file);
    command.add_option("--event", shop.event, "this event alone")->needs(file);
    command.add_option("--on", shop.on, "as of this day; today where not said")->needs(file);
    auto *keep = command.add_option("--keep", shop.keep,
                                    "this drawer is to hold so much from now on: trailer-1");
    keep->needs(file);
    auto *together = command.add_flag("--together", shop.together,
                                      "that nothing of all of them lacks, at least money");
    together->needs(file)->excludes(keep);
    command.add_flag("--csv", shop.csv, "print the parts as CSV")
        ->needs(file)
        ->excludes(keep)
        ->excludes(together);
}

} // namespace

void addCarryCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<CarryAsked>();
    CLI::App *command = app.add_subcommand(
        "carry", "Says how many spares to carry, at so much certainty, with the sum behind it.");
    addNumbers(*command, asked->numbers);
    command->add_option("--kit", asked->kit,
                        "a table of parts (part, rate, price, each): all of them together, at "
                        "least money");
    addShop(*command, asked->shop);
    command->callback([asked, &outcome] { answer(*asked, outcome); });
}

} // namespace flarestock
