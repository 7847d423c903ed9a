// SPDX-License-Identifier: MIT
//
// `flarestock issue`: the walk past the bins for a build, and what was promised going to its car.

#include "app/command/papers/paper_options.h"
#include "app/command/shop_options.h"
#include "app/command/text_table.h"
#include "app/garage/cautions.h"
#include "app/sheet/build/pick_rows.h"
#include "app/stockroom/bench/hoses_for_runs.h"
#include "app/stockroom/handing_out.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct IssueAsked : ShopAsked {
    std::string build;
    std::string part;
    bool listOnly = false;
    PaperAsked papers;
};

std::string lengthsOf(const Pick &pick)
{
    std::string said;
    for (const std::int64_t length : pick.lengths)
        said += (said.empty() ? "" : " + ") + spoken(length, *pick.part);
    return said;
}

std::string tableOf(const PickList &list)
{
    using Side = TextTable::Side;
    TextTable table({{"place", Side::Left},
                     {"part", Side::Left},
                     {"take", Side::Right},
                     {"cut to", Side::Left},
                     {"lot", Side::Left},
                     {"what it is", Side::Left}});
    for (const Pick &pick : list.picks)
        table.add({pick.key.place, pick.part->number, spoken(pick.quantity, *pick.part),
                   lengthsOf(pick), pick.key.lot, pick.part->description});
    std::string said = table.text();
    for (const auto &[part, quantity] : list.lacking)
        said += "  not found: " + spoken(quantity, *part) + " of " + part->number + "\n";
    return said;
}

std::string toTake(const PickList &list, const BuildPlan &plan, const Ledger &ledger)
{
    const bool isPromised =
        std::any_of(ledger.claims().begin(), ledger.claims().end(), [&plan](const auto &one) {
            return one.first.build == plan.id && one.second.promised > 0;
        });
    if (list.picks.empty() && isPromised)
        return "nothing to take for " + plan.id +
               (list.lacking.empty() ? ": it has got what it is promised" : "");
    if (list.picks.empty())
        return "nothing to take for " + plan.id +
               ": it is promised nothing; promise it first: flarestock reserve " + plan.id;
    return std::to_string(list.picks.size()) + " to take for " + plan.id;
}

QJsonObject documentOf(const PickList &list, const BuildPlan &plan)
{
    QJsonArray picks;
    for (const Pick &pick : list.picks) {
        QJsonArray lengths;
        for (const std::int64_t length : pick.lengths)
            lengths.append(jsonText(amountText(length, *pick.part)));
        picks.append(QJsonObject{
            {QStringLiteral("place"), jsonText(pick.key.place)},
            {QStringLiteral("part"), jsonText(pick.part->number)},
            {QStringLiteral("quantity"), jsonText(amountText(pick.quantity, *pick.part))},
            {QStringLiteral("unit"), jsonText(text(pick.part->unit))},
            {QStringLiteral("lengths"), lengths},
            {QStringLiteral("lot"), pick.key.lot.empty() ? QJsonValue() : jsonText(pick.key.lot)}});
    }
    QJsonArray lacking;
    for (const auto &[part, quantity] : list.lacking)
        lacking.append(
            QJsonObject{{QStringLiteral("part"), jsonText(part->number)},
                        {QStringLiteral("quantity"), jsonText(amountText(quantity, *part))}});
    return {{QStringLiteral("build"), jsonText(plan.id)},
            {QStringLiteral("picks"), picks},
            {QStringLiteral("lacking"), lacking}};
}

/// Made-up hoses that a run could take, for people and for programs.
struct MadeUpSaid {
    std::string lines;
    QJsonArray document;
};

MadeUpSaid madeUpFor(const WorkedBuild &worked, const Workshop &workshop, const BuildPlan &plan)
{
    MadeUpSaid said;
    for (const HoseForRun &one :
         hosesForRuns(worked.expansion, workshop, usualHoseTolerance(), plan.by)) {
        const std::string longer = one.longer == 0  ? "as long as it asks"
                                   : one.longer > 0 ? spoken(one.longer, *one.hose) + " longer"
                                                    : spoken(-one.longer, *one.hose) + " shorter";
        said.lines += "  made up already for " + one.run + ": " + one.tag + " at " + one.place +
                      ", " + longer + (one.clocking.empty() ? "" : ", clocked " + one.clocking) +
                      "\n";
        said.document.append(
            QJsonObject{{QStringLiteral("run"), jsonText(one.run)},
                        {QStringLiteral("tag"), jsonText(one.tag)},
                        {QStringLiteral("place"), jsonText(one.place)},
                        {QStringLiteral("longer"), jsonText(amountText(one.longer, *one.hose))},
                        {QStringLiteral("unit"), jsonText(text(one.hose->unit))},
                        {QStringLiteral("clocking"),
                         one.clocking.empty() ? QJsonValue() : jsonText(one.clocking)}});
    }
    return said;
}

Result<void> writeList(const IssueAsked &asked, const OpenShop &shop, const PickList &list,
                       const BuildPlan &plan)
{
    if (auto can = canWritePapers(asked.papers, shop.file); !can)
        return can;
    const std::string today = dayOf(shop.by.at);
    return writePapers(
        asked.papers, shop.file,
        {[&](PaperWords paper) { return pickPaper(list, plan, today, std::move(paper)); },
         [&] { return pickRows(list, today); }});
}

void answerIssue(const IssueAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto plan = buildAsked(asked.build, *shop.workshop);
    if (!plan)
        return outcome.refuse(plan.error());
    if (wasDone(shop, Deed::Issue, asked.part))
        return;
    const auto worked = workBuild(*shop.workshop, **plan);
    if (!worked)
        return outcome.refuse(worked.error());
    PickList list = pickList(*worked, *shop.workshop, **plan);
    if (!asked.part.empty()) {
        const auto part = partAsked(asked.part, *shop.workshop);
        if (!part)
            return outcome.refuse(part.error());
        std::erase_if(list.picks, [&](const Pick &pick) { return pick.part != *part; });
        std::erase_if(list.lacking, [&](const auto &one) { return one.first != *part; });
    }
    if (const auto written = writeList(asked, shop, list, **plan); !written)
        return outcome.refuse(written.error());
    const MadeUpSaid madeUp = madeUpFor(*worked, *shop.workshop, **plan);
    QJsonObject document = documentOf(list, **plan);
    document.insert(QStringLiteral("madeUp"), madeUp.document);
    document.insert(QStringLiteral("caution"), jsonText(OpeningCaution));
    const std::string table = (list.picks.empty() && list.lacking.empty()
                                   ? std::string()
                                   : tableOf(list) + "  " + std::string(OpeningCaution) + "\n") +
                              madeUp.lines;
    const auto movements = issueMovements(list, *shop.workshop, **plan);
    if (!movements)
        return outcome.refuse(movements.error());
    if (asked.listOnly || movements->empty())
        return asked.json ? outcome.print(document)
                          : outcome.print(table + toTake(list, **plan, shop.workshop->ledger));
    appendAction(shop, changed(*movements, *shop.workshop, shop.by),
                 table + "issued to " + (*plan)->id, document);
}

} // namespace

void addIssueCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<IssueAsked>();
    CLI::App *command = app.add_subcommand(
        "issue", "Brings what a build is promised to its car, in the order of the bins.");
    command->add_option("BUILD", asked->build, "its id")->required();
    command->add_option("--part", asked->part, "only this part of it");
    command->add_flag("--list", asked->listOnly, "only say what to take where");
    addPaperOptions(*command, asked->papers, "what to take");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, asked->listOnly ? OpenMode::ReadOnly : OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerIssue(*asked, shop, outcome); });
    });
}

} // namespace flarestock
