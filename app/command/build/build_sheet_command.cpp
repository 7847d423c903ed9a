// SPDX-License-Identifier: MIT
//
// `flarestock build-sheet`: a build step by step for the bench: what is cut, each joint with its
// pieces, rings and torques, the leak test.

#include "app/command/papers/paper_options.h"
#include "app/command/shop_options.h"
#include "app/command/text_table.h"
#include "app/sheet/build/build_sheet.h"
#include "app/stockroom/asked.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct BuildSheetAsked : ShopAsked {
    std::string build;
    PaperAsked papers;
};

std::string inOneLine(std::string text)
{
    for (auto at = text.find('\n'); at != std::string::npos; at = text.find('\n', at))
        text.replace(at, 1, "; ");
    return text;
}

std::string tableOf(const BuildSheet &sheet)
{
    using Side = TextTable::Side;
    TextTable table({{"work", Side::Left},
                     {"where", Side::Left},
                     {"what", Side::Left},
                     {"with", Side::Left, TextTable::Shown::WhereFilled},
                     {"torque", Side::Left, TextTable::Shown::WhereFilled}});
    for (const BenchStep &step : sheet.steps)
        table.add({std::string(text(step.work)), step.at, inOneLine(step.what),
                   inOneLine(step.with), inOneLine(step.torque)});
    std::string said = table.text();
    for (const std::string &torque : sheet.torques)
        said += "  " + torque + "\n";
    for (const std::string &source : sheet.sources)
        said += "  " + source + "\n";
    return said;
}

QJsonObject documentOf(const BuildSheet &sheet, const BuildPlan &plan)
{
    QJsonArray all;
    for (const BenchStep &step : sheet.steps)
        all.append(QJsonObject{{QStringLiteral("work"), jsonText(text(step.work))},
                               {QStringLiteral("at"), jsonText(step.at)},
                               {QStringLiteral("what"), jsonText(step.what)},
                               {QStringLiteral("with"), jsonText(step.with)},
                               {QStringLiteral("torque"), jsonText(step.torque)}});
    return {{QStringLiteral("build"), jsonText(plan.id)},
            {QStringLiteral("steps"), all},
            {QStringLiteral("torques"), textArray(sheet.torques)},
            {QStringLiteral("sources"), textArray(sheet.sources)}};
}

void answerBuildSheet(const BuildSheetAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto plan = buildAsked(asked.build, *shop.workshop);
    if (!plan)
        return outcome.refuse(plan.error());
    const auto worked = workBuild(*shop.workshop, **plan);
    if (!worked)
        return outcome.refuse(worked.error());
    const auto sheet = buildSheet(*worked, *shop.workshop, **plan);
    const std::string today = dayOf(shop.by.at);
    const auto written = writePapers(
        asked.papers, shop.file,
        {[&](PaperWords paper) { return buildSheetPaper(sheet, **plan, today, std::move(paper)); },
         [&] { return buildSheetRows(sheet, today); }});
    if (!written)
        return outcome.refuse(written.error());
    if (asked.json)
        return outcome.print(documentOf(sheet, **plan));
    outcome.out += tableOf(sheet);
}

} // namespace

void addBuildSheetCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<BuildSheetAsked>();
    CLI::App *command = app.add_subcommand(
        "build-sheet", "Says a build step by step for the bench, with torques and rings.");
    command->add_option("BUILD", asked->build, "its id")->required();
    addPaperOptions(*command, asked->papers, "the steps");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadOnly, outcome,
                 [&](OpenShop &shop) { answerBuildSheet(*asked, shop, outcome); });
    });
}

} // namespace flarestock
