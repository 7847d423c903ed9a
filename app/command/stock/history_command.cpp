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

/// As the shop writes part, place and build. Problem: it has no such part or place.
Result<HistoryAsked> named(HistoryAsked asked, const Workshop &workshop)
{
    if (!asked.part.empty()) {
        const auto part = partAsked(asked.part, workshop);
        if (!part)
            return tl::unexpected(part.error());
        asked.part = (*part)->number;
    }
    if (!asked.place.empty()) {
        const auto place = placeAsked(asked.place, workshop.ledger);
        if (!place)
            return tl::unexpected(place.error());
        asked.place = (*place)->id;
    }
    if (const BuildPlan *plan = workshop.build(asked.build))
        asked.build = plan->id; // Of one that is planned no more the journal still knows.
    return asked;
}

/// Problem: nothing ever had that lot; a build that is none.
Result<std::vector<Movement>> movementsAsked(const HistoryAsked &asked, const OpenShop &shop)
{
    auto movements =
        asked.lot.empty() ? shop.file.movements(asked.part) : shop.file.movementsOfLot(asked.lot);
    if (!movements)
        return movements;
    if (movements->empty() && !asked.lot.empty())
        return problem(asked.lot, "is no lot or serial of this shop",
                       "Look up how it is written: flarestock stock --find " + asked.lot + ".");
    std::erase_if(*movements, [&](const Movement &one) {
        const bool otherPart = !asked.part.empty() && one.part != asked.part;
        const bool otherPlace =
            !asked.place.empty() && one.from != asked.place && one.to != asked.place;
        return otherPart || otherPlace || (!asked.build.empty() && one.document != asked.build);
    });
    if (movements->empty() && !asked.build.empty()) {
        if (const auto plan = buildAsked(asked.build, *shop.workshop); !plan)
            return tl::unexpected(plan.error());
    }
    return movements;
}

struct LyingNow {
    const Part *part = nullptr;
    BalanceKey key;
    Balance held;
};

/// What of it lies where now; of a lot also the pieces that were cut or opened off it.
std::vector<LyingNow> lyingNow(const HistoryAsked &asked, const Workshop &workshop)
{
    std::vector<LyingNow> now;
    for (const auto &[key, held] : workshop.ledger.balances()) {
        const Part *part = workshop.part(key.part);
        const Place *place = workshop.ledger.place(key.place);
        const bool real =
            place && (isStock(place->kind) || place->kind == PlaceKind::Car ||
                      place->kind == PlaceKind::Borrower || place->kind == PlaceKind::Repair);
        const bool isLot =
            asked.lot.empty() || key.lot == asked.lot || rootOf(key.lot) == asked.lot;
        if (part && real && isLot && held.quantity != 0 &&
            (asked.part.empty() || key.part == asked.part) &&
            (asked.place.empty() || key.place == asked.place))
            now.push_back({part, key, held});
    }
    return now;
}

QJsonArray documentOf(const std::vector<LyingNow> &now)
{
    QJsonArray all;
    for (const auto &[part, key, held] : now)
        all.append(QJsonObject{
            {QStringLiteral("part"), jsonText(key.part)},
            {QStringLiteral("place"), jsonText(key.place)},
            {QStringLiteral("lot"), key.lot.empty() ? QJsonValue() : jsonText(key.lot)},
            {QStringLiteral("condition"), jsonText(text(key.condition))},
            {QStringLiteral("quantity"), jsonText(amountText(held.quantity, *part))},
            {QStringLiteral("unit"), jsonText(text(part->unit))},
            {QStringLiteral("value"), jsonText(Decimal::scaled(held.value, 6).text())}});
    return all;
}

std::string tableOf(const std::vector<LyingNow> &now)
{
    using Side = TextTable::Side;
    TextTable table({{"lies now at", Side::Left},
                     {"part", Side::Left},
                     {"quantity", Side::Right},
                     {"condition", Side::Left},
                     {"lot", Side::Left},
                     {"what it is", Side::Left}});
    for (const auto &[part, key, held] : now)
        table.add({key.place, key.part, spoken(held.quantity, *part),
                   std::string(text(key.condition)), key.lot, part->description});
    return table.text();
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

void answerHistory(const HistoryAsked &typed, OpenShop &shop, CommandOutcome &outcome)
{
    const auto asked = named(typed, *shop.workshop);
    if (!asked)
        return outcome.refuse(asked.error());
    const auto movements = movementsAsked(*asked, shop);
    if (!movements)
        return outcome.refuse(movements.error());
    const auto now = lyingNow(*asked, *shop.workshop);
    if (asked->json) {
        QJsonArray all;
        for (const Movement &one : *movements)
            all.append(movementDocument(one, *shop.workshop));
        return outcome.print(QJsonObject{{QStringLiteral("movements"), all},
                                         {QStringLiteral("now"), documentOf(now)}});
    }
    if (!movements->empty())
        outcome.out += tableOf(*movements, *shop.workshop) + "\n";
    const bool isOfThings = !asked->part.empty() || !asked->lot.empty() || !asked->place.empty();
    if (isOfThings && !now.empty())
        outcome.out += tableOf(now) + "\n";
    else if (isOfThings)
        outcome.print("nothing of it lies anywhere now");
    outcome.print(counted(movements->size(), "movement"));
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
