// SPDX-License-Identifier: MIT
//
// `flarestock plan`: what is short becomes orders: from whom, how much, for how much, by when.

#include "app/buyer/on_its_way.h"
#include "app/command/papers/paper_options.h"
#include "app/command/purchase/plan_document.h"
#include "app/command/purchase/plan_words.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct PurchaseAsked : PlanWords, PaperAsked {
    std::string shop;
    bool strict = false;
    bool json = false;
};

void answerPurchasePlan(const PurchaseAsked &asked, CommandOutcome &outcome)
{
    const auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    if (!file)
        return outcome.refuse(file.error());
    const auto workshop = Workshop::read(*file);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto rates = ratesOf(*file);
    if (!rates)
        return outcome.refuse(rates.error());
    const auto wanted = planWanted(asked, **workshop, *file);
    if (!wanted)
        return outcome.refuse(wanted.error());
    if (const auto can = canWritePapers(asked, *file); !can)
        return outcome.refuse(can.error());
    const Planned planned = plannedAndCompared(**workshop, *rates, *wanted);
    const auto written = writePapers(
        asked, *file,
        {[&](PaperWords paper) {
             return planPaper(planned.plan, **workshop, wanted->today, std::move(paper));
         },
         [&] { return planRows(planned.plan, **workshop, wanted->today); }});
    if (!written)
        return outcome.refuse(written.error());
    const auto unsure = asked.needs.empty() ? unsureOnItsWay(**workshop, wanted->today)
                                            : std::vector<std::string>();
    if (asked.json) {
        QJsonObject document = planDocument(planned, **workshop);
        document.insert(QStringLiteral("notes"), textArray(unsure));
        outcome.print(document);
    } else {
        outcome.out += planSheet(planned, **workshop);
        for (const std::string &note : unsure)
            outcome.print(note);
    }
    const bool isLate = std::any_of(planned.plan.parts.begin(), planned.plan.parts.end(),
                                    [](const PlannedPart &part) { return !part.late.empty(); });
    if (asked.strict && (isLate || !planned.plan.unplaced.empty()))
        outcome.ending = Ending::Attention;
}

} // namespace

void addPlanCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<PurchaseAsked>();
    CLI::App *command = app.add_subcommand(
        "plan", "Says what to order from whom for all that is short, and what that costs.");
    addPlanOptions(*command, *asked);
    addPaperOptions(*command, *asked, "the orders that it proposes");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_flag("--strict", asked->strict,
                      "exit status 1 where something comes late or "
                      "nobody sells it");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerPurchasePlan(*asked, outcome); });
}

} // namespace flarestock
