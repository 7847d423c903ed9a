// SPDX-License-Identifier: MIT
//
// `flarestock mate`: what happens when two ports meet.

#include "app/command/command.h"

#include "model/ports/mating.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct MateAsked {
    std::string a;
    std::string b;
    bool json = false;
};

/// As the contract spells an end: the port, then its aids behind plus signs.
std::string endText(const End &end)
{
    std::string said = end.port.text();
    for (const Aid aid : end.aids)
        said += " + " + std::string(text(aid));
    return said;
}

QJsonObject mateDocument(const End &a, const End &b, const Mating &met)
{
    QJsonArray needs;
    for (const auto &need : met.needs)
        needs.append(jsonText(need.text()));
    return {
        {QStringLiteral("a"), jsonText(endText(a))},
        {QStringLiteral("b"), jsonText(endText(b))},
        {QStringLiteral("verdict"), jsonText(text(met.verdict))},
        {QStringLiteral("needs"), needs},
        {QStringLiteral("why"), jsonText(met.why)},
        {QStringLiteral("source"), jsonText(met.source)},
        {QStringLiteral("turns"), met.turns ? QJsonValue(*met.turns) : QJsonValue()},
    };
}

void sayMating(const End &a, const End &b, const Mating &met, CommandOutcome &outcome)
{
    outcome.print(endText(a) + " with " + endText(b) + ": " + std::string(text(met.verdict)));
    outcome.print(met.why);
    for (const auto &need : met.needs)
        outcome.print("needs:  " + need.text());
    outcome.print("source: " + met.source);
}

void answerMate(const MateAsked &asked, CommandOutcome &outcome)
{
    const auto a = parseEnd(asked.a);
    const auto b = parseEnd(asked.b);
    if (!a || !b)
        return outcome.refuse(a ? b.error() : a.error());
    auto aids = a->aids;
    aids.insert(aids.end(), b->aids.begin(), b->aids.end());
    const auto met = mating(a->port, b->port, aids);
    if (asked.json)
        return outcome.print(mateDocument(*a, *b, met));
    sayMating(*a, *b, met, outcome);
}

} // namespace

void addMateCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<MateAsked>();
    CLI::App *command = app.add_subcommand("mate", "Says what happens when two ports meet.");
    command->add_option("A", asked->a, "a port: \"AN -6 male\", \"ORB -6 male + o-ring\"")
        ->required();
    command->add_option("B", asked->b, "the other: \"NPT 3/8 female\", \"BARB 3/8\"")->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerMate(*asked, outcome); });
}

} // namespace flarestock
