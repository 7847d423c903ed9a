// SPDX-License-Identifier: MIT
//
// `flarestock cut-plan`: which lengths come off which pieces, remnants first and with least waste,
// side by side. It only looks; `flarestock cut --plan` cuts.

#include "app/command/command.h"
#include "app/command/text_table.h"
#include "app/stockroom/asked.h"
#include "app/stockroom/bench/cut_words.h"
#include "app/stockroom/bench/hose_materials.h"
#include "app/stockroom/cut_planning.h"
#include "app/workshop/clock.h"
#include "model/parts/cutting_plan/cut_length.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct CutPlanAsked : CutWords {
    std::string shop;
    std::string start;
    std::string far;
    std::string coil;
    std::string to;
    std::string on;
    bool json = false;
};

/// What was typed, less what the two ends take up where they are named.
Result<std::vector<std::int64_t>> cutLengths(const CutPlanAsked &asked, const Part &part,
                                             const Workshop &workshop)
{
    auto lengths = lengthsAsked(asked, part);
    if (!lengths || asked.start.empty())
        return lengths;
    const auto start = hoseEndAsked(asked.start, part, workshop);
    if (!start)
        return tl::unexpected(start.error());
    const auto far = hoseEndAsked(asked.far, part, workshop);
    if (!far)
        return tl::unexpected(far.error());
    for (std::int64_t &length : *lengths) {
        const auto cut = cutLength(length, **start, **far);
        if (!cut)
            return tl::unexpected(cut.error());
        length = *cut;
    }
    return lengths;
}

Result<CutWish> wishOf(const CutPlanAsked &asked, const Part &part, const Workshop &workshop)
{
    if (!isLength(part.unit))
        return problem(part.number, "is not cut from a length", "Name a hose or tubing.");
    auto lengths = cutLengths(asked, part, workshop);
    if (!lengths)
        return tl::unexpected(lengths.error());
    const auto loss = lossAsked(asked, part);
    if (!loss)
        return tl::unexpected(loss.error());
    CutFor cutFor;
    auto day = dayAsked(asked.on, nowMilliseconds());
    if (!day)
        return tl::unexpected(day.error());
    cutFor.day = std::move(*day);
    if (!asked.to.empty()) {
        const auto to = placeAsked(asked.to, workshop.ledger);
        if (!to)
            return tl::unexpected(to.error());
        cutFor.to = *to;
    }
    auto pieces = piecesToCut(part, asked, cutFor, workshop);
    if (!pieces)
        return tl::unexpected(pieces.error());
    CutWish wish{part, std::move(*lengths), std::move(*pieces), *loss, {}};
    if (!asked.coil.empty()) {
        const auto coil = quantityAsked(asked.coil, part, "--coil");
        if (!coil)
            return tl::unexpected(coil.error());
        if (*coil <= 0 || *coil > CutLengthMost)
            return problem("--coil " + asked.coil, "is no length of a coil",
                           "Write what one has, such as 20 ft.");
        wish.coil = *coil;
    }
    return wish;
}

/// One plan, ready to be said.
struct Said {
    const CutWish &wish;
    const NamedTask &named;
    CutAim aim;
    CutPlan plan;

    [[nodiscard]] std::string length(std::int64_t length) const
    {
        return spoken(length, wish.part);
    }
    [[nodiscard]] QString amount(std::int64_t length) const
    {
        return jsonText(amountText(length, wish.part));
    }
    [[nodiscard]] std::string list(const std::vector<std::size_t> &lengths) const
    {
        std::string text;
        for (const std::size_t one : lengths)
            text += (text.empty() ? "" : ", ") + length(wish.lengths[one]);
        return text;
    }
    [[nodiscard]] std::int64_t reached(CutMeasure of) const
    {
        const auto measures = measuresOf(aim);
        const auto at = std::find(measures.begin(), measures.end(), of) - measures.begin();
        return plan.measured(named.task(), aim).at(static_cast<std::size_t>(at));
    }
    [[nodiscard]] QJsonArray amounts(const std::vector<std::size_t> &lengths) const
    {
        QJsonArray all;
        for (const std::size_t one : lengths)
            all.append(amount(wish.lengths[one]));
        return all;
    }
};

/// "; not proven to be the best: waste at least 1 in, is 2 in"; nothing where it is proven.
std::string boundText(const Said &said)
{
    if (!said.plan.bound)
        return {};
    const CutBound &bound = *said.plan.bound;
    const auto spokenAmount = [&](std::int64_t amount) {
        return isLength(bound.of) ? said.length(amount) : std::to_string(amount);
    };
    return "; not proven to be the best: " + std::string(text(bound.of)) + " at least " +
           spokenAmount(bound.atLeast) + ", is " + spokenAmount(said.reached(bound.of));
}

std::string textOf(const Said &said)
{
    const CutPlan &plan = said.plan;
    std::string all = said.aim == CutAim::RemnantsFirst ? "remnants first" : "least waste";
    all += ": " + said.length(plan.waste()) + " of waste" + boundText(said) + "\n";
    using Side = TextTable::Side;
    TextTable table({{"off", Side::Left},
                     {"place", Side::Left},
                     {"has", Side::Right},
                     {"cut", Side::Left},
                     {"left", Side::Right},
                     {"waste", Side::Right}});
    for (const auto &from : plan.from) {
        const BalanceKey *name = from.piece ? &said.named.name(*from.piece) : nullptr;
        table.add({name ? name->lot : "a new coil", name ? name->place : "", said.length(from.had),
                   said.list(from.lengths), said.length(from.rest), said.length(from.waste)});
    }
    if (!plan.from.empty())
        all += table.text();
    if (!plan.lacking.empty())
        all += "  lacking: " + said.list(plan.lacking) + "; to be had from one piece of " +
               said.length(plan.lengthToBuy(said.named.task())) + "\n";
    return all;
}

QJsonValue boundOf(const Said &said)
{
    if (!said.plan.bound)
        return {};
    const CutBound &bound = *said.plan.bound;
    const auto value = [&](std::int64_t amount) {
        return isLength(bound.of) ? said.amount(amount) : QString::number(amount);
    };
    return QJsonObject{{QStringLiteral("of"), jsonText(text(bound.of))},
                       {QStringLiteral("atLeast"), value(bound.atLeast)},
                       {QStringLiteral("is"), value(said.reached(bound.of))}};
}

QJsonObject documentOf(const Said &said)
{
    const CutPlan &plan = said.plan;
    QJsonArray from;
    for (const auto &one : plan.from) {
        const BalanceKey *name = one.piece ? &said.named.name(*one.piece) : nullptr;
        from.append(QJsonObject{
            {QStringLiteral("lot"), name ? QJsonValue(jsonText(name->lot)) : QJsonValue()},
            {QStringLiteral("place"), name ? QJsonValue(jsonText(name->place)) : QJsonValue()},
            {QStringLiteral("has"), said.amount(one.had)},
            {QStringLiteral("cuts"), said.amounts(one.lengths)},
            {QStringLiteral("rest"), said.amount(one.rest)},
            {QStringLiteral("waste"), said.amount(one.waste)}});
    }
    return {{QStringLiteral("plan"), jsonText(text(said.aim))},
            {QStringLiteral("from"), from},
            {QStringLiteral("lacking"), said.amounts(plan.lacking)},
            {QStringLiteral("toBuy"), said.amount(plan.lengthToBuy(said.named.task()))},
            {QStringLiteral("coils"), static_cast<int>(plan.coils())},
            {QStringLiteral("waste"), said.amount(plan.waste())},
            {QStringLiteral("proven"), !plan.bound},
            {QStringLiteral("bound"), boundOf(said)}};
}

void answerPlan(const CutPlanAsked &asked, CommandOutcome &outcome)
{
    const auto workshop = Workshop::open(asked.shop);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto part = partAsked(asked.part, (*workshop)->catalogue);
    if (!part)
        return outcome.refuse(part.error());
    const auto wish = wishOf(asked, **part, **workshop);
    if (!wish)
        return outcome.refuse(wish.error());
    const NamedTask named(*wish);
    QJsonArray plans;
    for (const CutAim aim : {CutAim::RemnantsFirst, CutAim::LeastWaste}) {
        const Said said{*wish, named, aim, planCuts(named.task(), aim)};
        if (asked.json)
            plans.append(documentOf(said));
        else
            outcome.out += textOf(said);
    }
    if (asked.json)
        outcome.print(QJsonObject{{QStringLiteral("part"), jsonText((*part)->number)},
                                  {QStringLiteral("unit"), jsonText(text((*part)->unit))},
                                  {QStringLiteral("plans"), plans}});
}

} // namespace

void addCutPlanCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<CutPlanAsked>();
    CLI::App *command = app.add_subcommand(
        "cut-plan", "Says which lengths come off which pieces: remnants first, and least waste.");
    command->add_option("PART", asked->part, "the hose or tubing")->required();
    command->add_option("LENGTH", asked->lengths, "\"2 ft 4 in\"; several make one plan")
        ->required();
    auto *start = command->add_option(
        "--start", asked->start, "with --end: the lengths are between the seats of these two ends");
    auto *end = command->add_option("--end", asked->far, "the hose end at the other end");
    start->needs(end);
    end->needs(start);
    command->add_option("--coil", asked->coil,
                        "what a new coil has; where not said, none is bought");
    command->add_option("--to", asked->to, "the car they are for: what another's is is left out");
    command->add_option("--lot", asked->lot, "only this piece");
    command->add_option("--on", asked->on, "as of this day: 2026-12-12; today where not said");
    command->add_option("--kerf", asked->kerf, "what each cut costs; 1/16 in where not said");
    command->add_option("--least", asked->leastUseful,
                        "a shorter rest is waste; 4 in where not said");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerPlan(*asked, outcome); });
}

} // namespace flarestock
