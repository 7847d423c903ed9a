// SPDX-License-Identifier: MIT
//
// `flarestock history`: the journal of a part, of a lot wherever it went, or of a car; and what the
// car holds now.

#include "app/command/shop_options.h"
#include "app/command/text_table.h"

#include <CLI/CLI.hpp>
#include <QDateTime>
#include <QJsonArray>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct HistoryAsked : ShopAsked {
    std::string part;
    std::string lot;
    std::string place;
    std::string build;
};

Result<std::vector<Movement>> movementsAsked(const HistoryAsked &asked, const OpenShop &shop)
{
    std::string number;
    if (!asked.part.empty()) {
        const auto part = partAsked(asked.part, *shop.workshop);
        if (!part)
            return tl::unexpected(part.error());
        number = (*part)->number;
    }
    auto movements =
        asked.lot.empty() ? shop.file.movements(number) : shop.file.movementsOfLot(asked.lot);
    if (!movements)
        return movements;
    std::erase_if(*movements, [&](const Movement &one) {
        const bool otherPart = !number.empty() && one.part != number;
        const bool otherPlace =
            !asked.place.empty() && one.from != asked.place && one.to != asked.place;
        return otherPart || otherPlace || (!asked.build.empty() && one.document != asked.build);
    });
    return movements;
}

/// What of it lies where now.
QJsonArray nowOf(const HistoryAsked &asked, const Workshop &workshop)
{
    QJsonArray now;
    for (const auto &[key, held] : workshop.ledger.balances()) {
        const Part *part = workshop.part(key.part);
        const Place *place = workshop.ledger.place(key.place);
        const bool real =
            place && (isStock(place->kind) || place->kind == PlaceKind::Car ||
                      place->kind == PlaceKind::Borrower || place->kind == PlaceKind::Repair);
        if (!part || !real || held.quantity == 0 ||
            (!asked.part.empty() && part != workshop.part(asked.part)) ||
            (!asked.lot.empty() && key.lot != asked.lot) ||
            (!asked.place.empty() && key.place != asked.place))
            continue;
        now.append(QJsonObject{
            {QStringLiteral("part"), jsonText(key.part)},
            {QStringLiteral("place"), jsonText(key.place)},
            {QStringLiteral("lot"), key.lot.empty() ? QJsonValue() : jsonText(key.lot)},
            {QStringLiteral("condition"), jsonText(text(key.condition))},
            {QStringLiteral("quantity"), jsonText(amountText(held.quantity, *part))},
            {QStringLiteral("unit"), jsonText(text(part->unit))},
            {QStringLiteral("value"), jsonText(Decimal::scaled(held.value, 6).text())}});
    }
    return now;
}

std::string tableOf(const std::vector<Movement> &movements, const Workshop &workshop)
{
    using Side = TextTable::Side;
    TextTable table({{"when (UTC)", Side::Left},
                     {"deed", Side::Left},
                     {"part", Side::Left},
                     {"quantity", Side::Right},
                     {"from", Side::Left},
                     {"to", Side::Left},
                     {"lot", Side::Left},
                     {"who", Side::Left},
                     {"movement", Side::Left}});
    for (const Movement &one : movements) {
        const Part *part = workshop.part(one.part);
        table.add({QDateTime::fromMSecsSinceEpoch(one.at, Qt::UTC)
                       .toString(QStringLiteral("yyyy-MM-dd HH:mm"))
                       .toStdString(),
                   std::string(one.reverses ? "taken back: " : "") + std::string(text(one.deed)),
                   one.part, part ? spoken(one.quantity, *part) : std::to_string(one.quantity),
                   one.from, one.to, one.newLot.value_or(one.lot), one.who, one.id.text()});
    }
    return table.text();
}

void answerHistory(const HistoryAsked &asked, OpenShop &shop, CommandOutcome &outcome)
{
    const auto movements = movementsAsked(asked, shop);
    if (!movements)
        return outcome.refuse(movements.error());
    if (asked.json) {
        QJsonArray all;
        for (const Movement &one : *movements)
            all.append(movementDocument(one, *shop.workshop));
        return outcome.print(QJsonObject{{QStringLiteral("movements"), all},
                                         {QStringLiteral("now"), nowOf(asked, *shop.workshop)}});
    }
    if (!movements->empty())
        outcome.out += tableOf(*movements, *shop.workshop);
    outcome.print(std::to_string(movements->size()) + " movements");
}

} // namespace

void addHistoryCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<HistoryAsked>();
    CLI::App *command = app.add_subcommand(
        "history", "Shows what was moved: of a part, a lot, a place or car, a build.");
    command->add_option("PART", asked->part, "its part number");
    command->add_option("--lot", asked->lot, "a lot or serial: where it came from and went");
    command->add_option("--place", asked->place, "a place or car: what came and went there");
    command->add_option("--build", asked->build, "what was issued to it and given back");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] {
        withShop(*asked, OpenMode::ReadOnly, outcome,
                 [&](OpenShop &shop) { answerHistory(*asked, shop, outcome); });
    });
}

} // namespace flarestock
