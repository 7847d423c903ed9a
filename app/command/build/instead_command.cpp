// SPDX-License-Identifier: MIT
//
// `flarestock instead`: a build has another piece than was planned; the as-built record follows.

#include "app/command/shop_options.h"
#include "app/stockroom/as_built.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct InsteadAsked : ShopAsked, InsteadWords {};

std::string saidOf(const OtherJoint &joint)
{
    if (!joint.isWorse())
        return "  " + joint.at + ": " + std::string(text(joint.after)) + "\n";
    return "  " + joint.at + ": was " + std::string(text(joint.before)) + ", is now " +
           std::string(text(joint.after)) + ": " + joint.why + "\n";
}

void answerInstead(const InsteadAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    if (wasDone(shop, Deed::Return, asked.planned))
        return;
    const auto planned = partAsked(asked.planned, *shop.workshop);
    if (!planned)
        return outcome.refuse(planned.error());
    const auto history = shop.file.movements((*planned)->number);
    if (!history)
        return outcome.refuse(history.error());
    const auto made = builtInstead(asked, *shop.workshop, *history, shop.by);
    if (!made)
        return outcome.refuse(made.error());
    QJsonArray joints;
    std::string lines;
    for (const OtherJoint &joint : made->joints) {
        joints.append(QJsonObject{{QStringLiteral("joint"), jsonText(joint.joint)},
                                  {QStringLiteral("at"), jsonText(joint.at)},
                                  {QStringLiteral("before"), jsonText(text(joint.before))},
                                  {QStringLiteral("after"), jsonText(text(joint.after))},
                                  {QStringLiteral("worse"), joint.isWorse()},
                                  {QStringLiteral("why"), jsonText(joint.why)}});
        lines += saidOf(joint);
    }
    QJsonArray all;
    for (const Movement &movement : made->action.movements)
        all.append(movementDocument(movement, *shop.workshop));
    const std::string back = made->action.movements.front().to;
    appendAction(shop, made->action,
                 lines + asked.build + " has " + asked.used + " instead of " + asked.planned +
                     ", which went back to " + back,
                 {{QStringLiteral("joints"), joints}, {QStringLiteral("movements"), all}});
}

} // namespace

void addInsteadCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<InsteadAsked>();
    CLI::App *command = app.add_subcommand(
        "instead", "Puts another piece in than was planned: the planned one goes back.");
    command->add_option("BUILD", asked->build, "its id")->required();
    command->add_option("PLANNED", asked->planned, "the piece that was issued to it")->required();
    command->add_option("USED", asked->used, "the one that went in")->required();
    command->add_option("QUANTITY", asked->quantity, "1 where not said");
    command->add_option("--from", asked->from, "where the other was taken; else the nearest free");
    command->add_option("--back-to", asked->backTo,
                        "where the planned one goes; else where it came from");
    command->add_option("--lot", asked->usedLot, "lot or serial of the one that went in");
    command->add_option("--planned-lot", asked->plannedLot, "lot or serial of the planned one");
    command->add_option("--now", asked->now, "what the planned one is from now on: used and good");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerInstead(*asked, shop, outcome); });
    });
}

} // namespace flarestock
