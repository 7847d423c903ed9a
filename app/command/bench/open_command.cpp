// SPDX-License-Identifier: MIT
//
// `flarestock open`: a box into what lies in it, its value shared out.

#include "app/command/shop_options.h"
#include "app/command/text_table.h"
#include "app/stockroom/bench/opening_box.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct OpenAsked : ShopAsked, OpeningWords {};

std::string tableOf(const OpenedAction &opened)
{
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"came off", Side::Right},
                     {"to", Side::Left},
                     {"value", Side::Right},
                     {"shared by", Side::Left},
                     {"lot", Side::Left}});
    for (const CameOff &piece : opened.pieces)
        table.add({piece.part->number, spoken(piece.quantity, *piece.part), piece.to,
                   valueText(piece.value), piece.by, piece.lot});
    std::string said = table.text();
    for (const std::string &missing : opened.missing)
        said += "  was found missing before: " + missing + "\n";
    return said;
}

QJsonArray piecesOf(const OpenedAction &opened)
{
    QJsonArray pieces;
    for (const CameOff &piece : opened.pieces)
        pieces.append(QJsonObject{
            {QStringLiteral("part"), jsonText(piece.part->number)},
            {QStringLiteral("quantity"), jsonText(amountText(piece.quantity, *piece.part))},
            {QStringLiteral("unit"), jsonText(text(piece.part->unit))},
            {QStringLiteral("to"), jsonText(piece.to)},
            {QStringLiteral("lot"), piece.lot.empty() ? QJsonValue() : jsonText(piece.lot)},
            {QStringLiteral("value"), jsonText(valueText(piece.value))},
            {QStringLiteral("sharedBy"), jsonText(piece.by)}});
    return pieces;
}

void answerOpen(const OpenAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    if (wasDone(shop, Deed::Open, asked.part))
        return;
    const auto opened = openedBox(asked, *shop.workshop, shop.by);
    if (!opened)
        return outcome.refuse(opened.error());
    QJsonArray missing;
    for (const std::string &one : opened->missing)
        missing.append(jsonText(one));
    appendAction(
        shop, opened->action,
        tableOf(*opened) + "opened: " + asked.part +
            (opened->build ? ", its contents are issued to " + opened->build->id : ""),
        {{QStringLiteral("pieces"), piecesOf(*opened)}, {QStringLiteral("missing"), missing}});
}

} // namespace

void addOpenCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<OpenAsked>();
    CLI::App *command = app.add_subcommand(
        "open", "Opens one box: what lies in it goes to stock, the value shared out.");
    command->add_option("PART", asked->part, "the part whose box it is")->required();
    command->add_option("--from", asked->from, "where it lies: H5; a car, of what was left over")
        ->required();
    command->add_option("--to", asked->to, "where the contents go; where the box lay if not said");
    command->add_option("--lot", asked->lot, "lot or serial, where several lie there");
    command->add_option("--condition", asked->condition,
                        "new, used and good, to be checked, not to be used");
    command->add_option("--only", asked->only, "only this part of the contents; may stand again")
        ->allow_extra_args(false);
    command
        ->add_option("--price", asked->prices,
                     "BK-460=12.50: the price of one, to share by in place of the offered one")
        ->allow_extra_args(false);
    command
        ->add_option("--cost", asked->costs,
                     "BK-460=12.50: what all of it carries; the others share the rest")
        ->allow_extra_args(false);
    command->add_flag("--nothing-left", asked->nothingLeft,
                      "a pack or a kit: the box is no piece by itself");
    command->add_option("--build", asked->build,
                        "the build that gets the contents; the one that has the box if not said");
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerOpen(*asked, shop, outcome); });
    });
}

} // namespace flarestock
