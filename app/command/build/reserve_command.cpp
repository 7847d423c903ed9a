// SPDX-License-Identifier: MIT
//
// `flarestock reserve`: promises to a build what is free for it, or lets go of it.

#include "app/command/shop_options.h"
#include "app/stockroom/handing_out.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <cstdlib>
#include <memory>

namespace flarestock {

namespace {

struct ReserveAsked : ShopAsked {
    std::string build;
    std::string part;
    std::string quantity;
    bool letGo = false;
};

/// Everything that the build lacks and that is free, or all that it is promised and has not got.
Result<std::vector<Promise>> promisesOfAll(const ReserveAsked &asked, const BuildPlan &plan,
                                           const Workshop &workshop)
{
    if (asked.letGo)
        return promisesLetGo(workshop.ledger, plan.id);
    const auto worked = workBuild(workshop, plan);
    if (!worked)
        return tl::unexpected(worked.error());
    return promisesLacking(*worked, workshop, plan);
}

Result<std::vector<Promise>> promisesAsked(const ReserveAsked &asked, const BuildPlan &plan,
                                           const Workshop &workshop)
{
    if (asked.part.empty())
        return promisesOfAll(asked, plan, workshop);
    const auto part = partAsked(asked.part, workshop);
    if (!part)
        return tl::unexpected(part.error());
    const bool isTagged = !workshop.catalogue.find((*part)->number); // A made-up hose.
    if (asked.quantity.empty() && (asked.letGo || !isTagged)) {
        auto all = promisesOfAll(asked, plan, workshop);
        if (all)
            std::erase_if(*all,
                          [&part](const Promise &one) { return one.part != (*part)->number; });
        return all;
    }
    const auto quantity = quantityAsked(asked.quantity.empty() ? "1" : asked.quantity, **part);
    if (!quantity)
        return tl::unexpected(quantity.error());
    Promise promise;
    promise.build = plan.id;
    promise.part = (*part)->number;
    promise.quantity = asked.letGo ? -*quantity : *quantity;
    return std::vector<Promise>{promise};
}

/// Why nothing was done.
std::string nothingToDo(const ReserveAsked &asked, const std::string &build)
{
    const std::string what = asked.part.empty() ? std::string() : " of " + asked.part;
    if (asked.letGo)
        return "nothing to let go of: " + build + " is promised nothing" + what +
               " that it has not got";
    return "nothing to promise to " + build + ": what it lacks" + what + " is not free";
}

void answerReserve(const ReserveAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto plan = buildAsked(asked.build, *shop.workshop);
    if (!plan)
        return outcome.refuse(plan.error());
    const std::string &build = (*plan)->id;
    if (wasWritten(shop, [&build](const Record &one) {
            return one.kind == RecordKind::Promise && one.subject == build;
        }))
        return;
    const auto promises = promisesAsked(asked, **plan, *shop.workshop);
    if (!promises)
        return outcome.refuse(promises.error());
    const Action action = promised(*promises, shop.by);
    QJsonArray said;
    std::string lines;
    for (const Promise &promise : *promises) {
        const Part *part = shop.workshop->part(promise.part);
        const std::int64_t much = std::abs(promise.quantity); // Less than zero is let go of.
        const auto amount = part ? amountText(promise.quantity, *part) : std::string();
        said.append(QJsonObject{{QStringLiteral("part"), jsonText(promise.part)},
                                {QStringLiteral("quantity"), jsonText(amount)}});
        lines += "  " + promise.part + "  " + (part ? spoken(much, *part) : "") + "\n";
    }
    const QJsonObject more{{QStringLiteral("build"), jsonText((*plan)->id)},
                           {QStringLiteral("promises"), said}};
    if (action.records.empty()) {
        if (asked.json)
            return outcome.print(more);
        return outcome.print(nothingToDo(asked, (*plan)->id));
    }
    appendAction(shop, action,
                 lines + (asked.letGo ? "let go of by " : "promised to ") + (*plan)->id, more);
}

} // namespace

void addReserveCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ReserveAsked>();
    CLI::App *command =
        app.add_subcommand("reserve", "Promises to a build what is free for it, or lets go of it.");
    command->add_option("BUILD", asked->build, "its id")->required();
    command->add_option("PART", asked->part, "one part; all that the build lacks where not said");
    command->add_option("QUANTITY", asked->quantity, "how much of it; all where not said");
    command->add_flag("--let-go", asked->letGo, "the build does not want it any more");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerReserve(*asked, shop, outcome); });
    });
}

} // namespace flarestock
