// SPDX-License-Identifier: MIT
//
// `flarestock bill`: a template with answers, or a planned build, becomes a priced, checked bill.

#include "app/command/build/bill_document.h"
#include "app/command/build/bill_sheet.h"
#include "app/command/plan_asked.h"
#include "app/command/text_table.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct BillAsked : PlanAsked {
    bool list = false;
    bool strict = false;
};

void listTemplates(const BillAsked &asked, CommandOutcome &outcome)
{
    const auto workshop = Workshop::open(asked.shop);
    if (!workshop)
        return outcome.refuse(workshop.error());
    QJsonArray templates;
    TextTable table({{"template", TextTable::Side::Left}, {"title", TextTable::Side::Left}});
    for (const auto &[id, form] : *(*workshop)->templates) {
        templates.append(QJsonObject{{QStringLiteral("id"), jsonText(id)},
                                     {QStringLiteral("title"), jsonText(form->title)}});
        table.add({id, form->title});
    }
    if (asked.json)
        return outcome.print(QJsonObject{{QStringLiteral("templates"), templates}});
    outcome.out += table.text();
}

void answerBill(const BillAsked &asked, CommandOutcome &outcome)
{
    if (asked.list)
        return listTemplates(asked, outcome);
    answerBuild(asked, outcome, [&](const WorkedBuild &build, const Workshop &workshop) {
        if (asked.json)
            outcome.print(billDocument(build));
        else
            outcome.out += billSheet(build, workshop.catalogue);
        if (asked.strict && !build.isReady())
            outcome.ending = Ending::Attention;
    });
}

} // namespace

void addBillCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<BillAsked>();
    CLI::App *command = app.add_subcommand(
        "bill", "Works a template or a planned build out to a priced, checked bill.");
    addPlanOptions(*command, *asked);
    command->add_flag("--list", asked->list, "list the templates of the shop");
    command->add_flag("--strict", asked->strict, "exit status 1 on stops or shortages");
    command->callback([asked, &outcome] { answerBill(*asked, outcome); });
}

} // namespace flarestock
