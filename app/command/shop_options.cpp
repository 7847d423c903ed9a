// SPDX-License-Identifier: MIT

#include "app/command/shop_options.h"

#include "app/workshop/clock.h"

#include <CLI/CLI.hpp>
#include <QDateTime>

namespace flarestock {

void addShopOptions(CLI::App &command, ShopAsked &asked)
{
    command.add_option("--shop", asked.shop, ShopHelp)->required();
    command.add_option("--who", asked.who, "who does it");
    command.add_option("--why", asked.why, "why");
    command.add_option("--id", asked.id, "the action's own UUID: repeating it does nothing twice");
    command.add_flag("--json", asked.json, JsonHelp);
}

void withShopFile(const ShopAsked &asked, OpenMode mode, CommandOutcome &outcome,
                  const std::function<void(OpenShopFile &)> &answer)
{
    auto file = ShopFile::open(asked.shop, mode);
    if (!file)
        return outcome.refuse(file.error());
    By by{asked.who, asked.why, nowMilliseconds(), freshId()};
    if (!asked.id.empty()) {
        const auto id = MovementId::parse(asked.id);
        if (!id)
            return outcome.refuse(id.error());
        by.action = *id;
    }
    OpenShopFile shop{std::move(*file), std::move(by), asked, outcome};
    answer(shop);
}

void withShop(const ShopAsked &asked, OpenMode mode, CommandOutcome &outcome,
              const std::function<void(OpenShop &)> &answer)
{
    withShopFile(asked, mode, outcome, [&](OpenShopFile &open) {
        auto workshop = Workshop::read(open.file);
        if (!workshop)
            return outcome.refuse(workshop.error());
        OpenShop shop{std::move(open.file), std::move(*workshop), std::move(open.by), asked,
                      outcome};
        answer(shop);
    });
}

void sayDone(const OpenShop &shop, bool sameAction, const QString &key)
{
    const std::string &id = shop.asked.id;
    if (!sameAction)
        return shop.outcome.refuse({"entry " + id,
                                    "stands in the journal already and says something else",
                                    "Give this one an id of its own."});
    if (!shop.asked.json)
        return shop.outcome.print("was done already: " + key.toStdString() + " " + id);
    shop.outcome.print(QJsonObject{{key, jsonText(id)}, {QStringLiteral("already"), true}});
}

bool wasDone(const OpenShop &shop, const std::function<bool(const Movement &)> &isSame)
{
    if (shop.asked.id.empty())
        return false;
    const auto before = shop.file.movement(*shop.by.action);
    if (!before) {
        shop.outcome.refuse(before.error());
        return true;
    }
    if (!*before)
        return false;
    sayDone(shop, isSame(**before), QStringLiteral("movement"));
    return true;
}

bool wasDone(const OpenShop &shop, Deed deed, const std::string &part)
{
    const Part *const named = part.empty() ? nullptr : shop.workshop->part(part);
    return wasDone(shop, [&](const Movement &before) {
        return before.deed == deed && (!named || named->number == before.part);
    });
}

bool wasWritten(const OpenShop &shop, const std::function<bool(const Record &)> &isSame)
{
    if (shop.asked.id.empty())
        return false;
    const auto before = shop.file.recordOf(*shop.by.action);
    if (!before) {
        shop.outcome.refuse(before.error());
        return true;
    }
    if (!*before)
        return false;
    sayDone(shop, isSame(**before), QStringLiteral("record"));
    return true;
}

std::string valueText(std::int64_t micros)
{
    return Decimal::scaled(micros, 6).text();
}

std::string moneyText(std::int64_t micros, const Currency &currency)
{
    const Decimal exact = Decimal::scaled(micros, 6);
    const Decimal said = exact.rescaled(currency.minorDigits(), Rounding::HalfEven);
    return (said == exact ? said : exact.stripped()).text() + " " + std::string(currency.code());
}

void appendAction(OpenShop &shop, const Action &action, const std::string &said, QJsonObject more)
{
    CommandOutcome &outcome = shop.outcome;
    const auto done = shop.file.append(action);
    if (!done)
        return outcome.refuse(done.error());
    const bool onlyRecords = action.movements.empty();
    const auto &first = onlyRecords ? done->front() : done->at(action.records.size());
    const auto key = onlyRecords ? QStringLiteral("record") : QStringLiteral("movement");
    if (!shop.asked.json)
        return outcome.print((first.already ? "was done already: " : "") + said + ", " +
                             key.toStdString() + " " + first.movement.text());
    more.insert(key, jsonText(first.movement.text()));
    more.insert(QStringLiteral("already"), first.already);
    outcome.print(more);
}

QJsonObject movementDocument(const Movement &movement, const Workshop &workshop)
{
    const Part *part = workshop.part(movement.part);
    const auto quantity =
        part ? amountText(movement.quantity, *part) : std::to_string(movement.quantity);
    QJsonObject said{
        {QStringLiteral("movement"), jsonText(movement.id.text())},
        {QStringLiteral("deed"), jsonText(text(movement.deed))},
        {QStringLiteral("part"), jsonText(movement.part)},
        {QStringLiteral("quantity"), jsonText(quantity)},
        {QStringLiteral("unit"), part ? jsonText(text(part->unit)) : QJsonValue()},
        {QStringLiteral("value"), jsonText(Decimal::scaled(movement.value, 6).text())},
        {QStringLiteral("from"), jsonText(movement.from)},
        {QStringLiteral("to"), jsonText(movement.to)},
        {QStringLiteral("lot"), jsonText(movement.newLot.value_or(movement.lot))},
        {QStringLiteral("condition"),
         jsonText(text(movement.newCondition.value_or(movement.condition)))},
        {QStringLiteral("document"), jsonText(movement.document)},
        {QStringLiteral("who"), jsonText(movement.who)},
        {QStringLiteral("why"), jsonText(movement.why)},
        {QStringLiteral("at"),
         QDateTime::fromMSecsSinceEpoch(movement.at, Qt::UTC).toString(Qt::ISODateWithMs)}};
    if (movement.reverses)
        said.insert(QStringLiteral("takesBack"), jsonText(movement.reverses->text()));
    return said;
}

} // namespace flarestock
