// SPDX-License-Identifier: MIT
//
// `flarestock bill`: a template with answers, or a planned build, becomes a priced, checked bill.

#include "app/command/build/bill_document.h"
#include "app/command/build/bill_sheet.h"
#include "app/command/command.h"
#include "app/command/text_table.h"
#include "app/stockroom/asked.h"
#include "model/exact/case_fold.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct BillAsked {
    std::string form;
    std::string build;
    std::string shop;
    std::string prefer;
    std::vector<std::string> answers;
    std::vector<std::string> picks;
    bool list = false;
    bool strict = false;
    bool json = false;
};

/// "question=answer" words into a map that may hold some already.
Result<void> readInto(std::map<std::string, std::string, std::less<>> &into,
                      const std::vector<std::string> &words, std::string_view option)
{
    for (const std::string &word : words) {
        const auto equals = word.find('=');
        const std::string name(trimmed(std::string_view(word).substr(0, equals)));
        if (equals == std::string::npos || name.empty())
            return problem(
                std::string(option), "\"" + word + "\" has no name before an equals sign",
                option == "--set" ? "Write --set fluid=E85." : "Write --pick prefilter=PF-100-10.");
        into[name] = trimmed(std::string_view(word).substr(equals + 1));
    }
    return {};
}

/// The planned build, or a plan of the template alone, with what was typed on top.
Result<BuildPlan> planOf(const BillAsked &asked, const Workshop &workshop)
{
    if (asked.form.empty() == asked.build.empty())
        return problem("flarestock bill", "takes a template or --build, and not both",
                       "Say flarestock bill --list --shop FILE for the templates.");
    BuildPlan plan;
    plan.templateId = asked.form;
    if (!asked.build.empty()) {
        const auto planned = buildAsked(asked.build, workshop);
        if (!planned)
            return tl::unexpected(planned.error());
        plan = **planned;
    }
    if (!asked.prefer.empty())
        plan.preference = asked.prefer;
    if (auto read = readInto(plan.answers, asked.answers, "--set"); !read)
        return tl::unexpected(read.error());
    if (auto read = readInto(plan.picks, asked.picks, "--pick"); !read)
        return tl::unexpected(read.error());
    return plan;
}

void listTemplates(const BillAsked &asked, const Workshop &workshop, CommandOutcome &outcome)
{
    QJsonArray templates;
    TextTable table({{"template", TextTable::Side::Left}, {"title", TextTable::Side::Left}});
    for (const auto &[id, form] : *workshop.templates) {
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
    const auto workshop = Workshop::open(asked.shop);
    if (!workshop)
        return outcome.refuse(workshop.error());
    if (asked.list)
        return listTemplates(asked, **workshop, outcome);
    const auto plan = planOf(asked, **workshop);
    if (!plan)
        return outcome.refuse(plan.error());
    const auto build = workBuild(**workshop, *plan);
    if (!build)
        return outcome.refuse(build.error());
    if (asked.json)
        outcome.print(billDocument(*build));
    else
        outcome.out += billSheet(*build, (*workshop)->catalogue);
    if (asked.strict && (build->stops() > 0 || !build->bill.complete))
        outcome.ending = Ending::Attention;
}

} // namespace

void addBillCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<BillAsked>();
    CLI::App *command = app.add_subcommand(
        "bill", "Works a template or a planned build out to a priced, checked bill.");
    command->add_option("TEMPLATE", asked->form, "a template of the shop");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_option("--build", asked->build, "a planned build of the shop, by its id");
    command->add_option("--set", asked->answers, "an answer: --set power=\"450 hp\"")
        ->allow_extra_args(false);
    command
        ->add_option("--pick", asked->picks,
                     "a part, line or way that is decided: --pick prefilter=PF-100-10")
        ->allow_extra_args(false);
    command->add_option("--prefer", asked->prefer, "shelf, joints or money");
    command->add_flag("--list", asked->list, "list the templates of the shop");
    command->add_flag("--strict", asked->strict, "exit status 1 on stops or shortages");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerBill(*asked, outcome); });
}

} // namespace flarestock
