// SPDX-License-Identifier: MIT
//
// `flarestock stock`: what lies where, and what of it is free.

#include "app/command/command.h"
#include "app/command/text_table.h"

#include "app/workshop/workshop.h"
#include "model/exact/case_fold.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct StockAsked {
    std::string shop;
    std::string find;
    bool json = false;
};

struct StockLine {
    const Part *part = nullptr;
    BalanceKey key;
    Quantity onHand;
    Quantity promised; ///< To builds.
    Quantity free;
};

/// Every word that is looked for stands somewhere in the part's number, description, kind, words,
/// ports or place.
bool answers(const StockLine &line, std::string_view wanted)
{
    std::string all = line.part->number + " " + line.part->description + " " +
                      std::string(text(line.part->kind)) + " " + line.key.place + " " +
                      line.key.lot;
    for (const auto &port : line.part->ports)
        all += " " + port.port.text();
    all = folded(all);
    while (!(wanted = trimmed(wanted)).empty()) {
        const auto blank = std::min(wanted.find(' '), wanted.size());
        if (all.find(folded(wanted.substr(0, blank))) == std::string::npos)
            return false;
        wanted.remove_prefix(blank);
    }
    return true;
}

std::vector<StockLine> linesOf(const Workshop &workshop, const std::string &find)
{
    std::vector<StockLine> lines;
    const auto served =
        barredLots(workshop.notes.lots, {}, {}); // A customer's: free to nobody else.
    for (const auto &[key, balance] : workshop.ledger.balances()) {
        const Part *part = workshop.catalogue.find(key.part);
        const Place *place = workshop.ledger.place(key.place);
        if (part == nullptr || place == nullptr || !isStock(place->kind) || balance.quantity <= 0)
            continue;
        const auto at = workshop.ledger.promisedAt(*part);
        const auto promised = at.find(key);
        const std::int64_t given = promised == at.end() ? 0 : promised->second;
        const bool barred = served.contains({key.part, key.lot}) || !isFree(key.condition);
        StockLine line{part, key, Quantity::ofSmallest(balance.quantity, part->unit),
                       Quantity::ofSmallest(given, part->unit),
                       Quantity::ofSmallest(barred ? 0 : balance.quantity - given, part->unit)};
        if (answers(line, find))
            lines.push_back(std::move(line));
    }
    return lines;
}

QJsonObject stockDocument(const std::vector<StockLine> &lines)
{
    QJsonArray stock;
    for (const auto &line : lines)
        stock.append(QJsonObject{
            {QStringLiteral("part"), jsonText(line.part->number)},
            {QStringLiteral("place"), jsonText(line.key.place)},
            {QStringLiteral("onHand"), jsonText(line.onHand.amount.text())},
            {QStringLiteral("promised"), jsonText(line.promised.amount.text())},
            {QStringLiteral("free"), jsonText(line.free.amount.text())},
            {QStringLiteral("unit"), jsonText(text(line.part->unit))},
            {QStringLiteral("lot"), line.key.lot.empty() ? QJsonValue() : jsonText(line.key.lot)},
            {QStringLiteral("condition"), jsonText(text(line.key.condition))}});
    return {{QStringLiteral("stock"), stock}};
}

std::string stockTable(const std::vector<StockLine> &lines)
{
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"place", Side::Left},
                     {"on hand", Side::Right},
                     {"promised", Side::Right},
                     {"condition", Side::Left},
                     {"what it is", Side::Left},
                     {"lot", Side::Left}});
    for (const auto &line : lines)
        table.add({line.part->number, line.key.place, line.onHand.spoken(),
                   line.promised.amount.isZero() ? "-" : line.promised.spoken(),
                   std::string(text(line.key.condition)) +
                       (isFree(line.key.condition) ? "" : ", not free"),
                   line.part->description, line.key.lot});
    return table.text();
}

void answerStock(const StockAsked &asked, CommandOutcome &outcome)
{
    const auto workshop = Workshop::open(asked.shop);
    if (!workshop)
        return outcome.refuse(workshop.error());
    const auto lines = linesOf(**workshop, asked.find);
    if (asked.json)
        return outcome.print(stockDocument(lines));
    if (!lines.empty())
        outcome.out += stockTable(lines);
    outcome.print(std::to_string(lines.size()) + " lines");
}

} // namespace

void addStockCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<StockAsked>();
    CLI::App *command =
        app.add_subcommand("stock", "Lists what lies where, and what of it is free.");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_option("--find", asked->find,
                        "words, all of which must stand in the line: \"orb -8\"");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerStock(*asked, outcome); });
}

} // namespace flarestock
