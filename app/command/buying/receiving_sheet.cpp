// SPDX-License-Identifier: MIT

#include "app/command/buying/receiving_sheet.h"

#include "app/buyer/receiving/receiving.h"
#include "app/command/text_table.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

namespace flarestock {

namespace {

std::string tableOf(const ReceivedAction &made)
{
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"came", Side::Right},
                     {"to", Side::Left},
                     {"value", Side::Right},
                     {"lot", Side::Left},
                     {"note", Side::Left}});
    for (std::size_t i = 0; i < made.pieces.size(); ++i) {
        const ComingPiece &piece = made.pieces[i];
        std::string note = made.receipts[i].note;
        if (piece.condition == PieceCondition::NotToBeUsed)
            note += note.empty() ? "damaged" : ", damaged";
        table.add({piece.part->number, spoken(piece.quantity, *piece.part), piece.to,
                   valueText(made.receipts[i].value), piece.lot, note});
    }
    return table.text();
}

QJsonArray piecesOf(const ReceivedAction &made)
{
    QJsonArray pieces;
    for (std::size_t i = 0; i < made.pieces.size(); ++i) {
        const ComingPiece &piece = made.pieces[i];
        QJsonArray missing;
        for (const std::string &one : piece.missing)
            missing.append(jsonText(one));
        pieces.append(QJsonObject{
            {QStringLiteral("part"), jsonText(piece.part->number)},
            {QStringLiteral("quantity"), jsonText(amountText(piece.quantity, *piece.part))},
            {QStringLiteral("unit"), jsonText(text(piece.part->unit))},
            {QStringLiteral("to"), jsonText(piece.to)},
            {QStringLiteral("lot"), piece.lot.empty() ? QJsonValue() : jsonText(piece.lot)},
            {QStringLiteral("condition"), jsonText(text(piece.condition))},
            {QStringLiteral("value"), jsonText(valueText(made.receipts[i].value))},
            {QStringLiteral("insteadOf"),
             piece.insteadOf.empty() ? QJsonValue() : jsonText(piece.insteadOf)},
            {QStringLiteral("missing"), missing},
            {QStringLiteral("boxComplete"), piece.complete}});
    }
    return pieces;
}

QJsonObject documentOf(const ReceivedAction &made, const std::string &order,
                       const Workshop &workshop)
{
    QJsonArray claims;
    for (const SupplierClaim &claim : made.claims)
        claims.append(claimDocument({claim, {claim}, 0}, workshop));
    QJsonArray awaited;
    for (const OrderLine &line : made.awaited)
        awaited.append(
            QJsonObject{{QStringLiteral("part"), jsonText(line.part)},
                        {QStringLiteral("quantity"), jsonText(line.quantity.stripped().text())},
                        {QStringLiteral("unit"), jsonText(text(line.unit))}});
    return {{QStringLiteral("order"), jsonText(order)},
            {QStringLiteral("pieces"), piecesOf(made)},
            {QStringLiteral("claims"), claims},
            {QStringLiteral("awaited"), awaited},
            {QStringLiteral("closed"), made.awaited.empty()}};
}

std::string awaitedSentence(const OrderLine &line)
{
    return "still to come: " + Quantity{line.quantity.stripped(), line.unit}.text() + " of " +
           line.part;
}

std::string sentencesOf(const ReceivedAction &made, const std::string &order,
                        const Workshop &workshop)
{
    std::string said = made.pieces.empty() ? "" : tableOf(made);
    for (const SupplierClaim &claim : made.claims)
        said += "claim " + claimSentence({claim, {claim}, 0}, workshop) + "\n";
    for (const OrderLine &line : made.awaited)
        said += awaitedSentence(line) + "\n";
    return said + "received of order " + order +
           (made.awaited.empty() ? ", which is closed by it: all has come" : "");
}

SlipOfReceipt cameInOf(const ReceivedAction &made, const Coming &coming, const Workshop &workshop)
{
    const Order &order = coming.order->now();
    SlipOfReceipt came{order.supplier, order.number, coming.document, {}, {}, {}};
    for (std::size_t i = 0; i < made.pieces.size(); ++i) {
        const ComingPiece &piece = made.pieces[i];
        came.rows.push_back({piece.part, piece.quantity, piece.to, piece.lot, piece.condition,
                             made.receipts[i].value, made.receipts[i].note});
    }
    for (const SupplierClaim &claim : made.claims)
        came.besides.push_back("claim " + claimSentence({claim, {claim}, 0}, workshop));
    for (const OrderLine &line : made.awaited)
        came.besides.push_back(awaitedSentence(line));
    return came;
}

/// Writes the looks into boxes down. Problem: as ShopFile::record().
Result<void> writeLooks(const ReceivedAction &made, ShopFile &file)
{
    for (const BoxCheck &look : made.looks) {
        if (const auto written = file.record(look); !written)
            return tl::unexpected(written.error());
    }
    return {};
}

} // namespace

QJsonObject claimDocument(const ClaimStanding &claim, const Workshop &workshop)
{
    const SupplierClaim &now = claim.now;
    const Part *part = workshop.part(now.part);
    const auto amount = [&](std::int64_t quantity) {
        return jsonText(part ? amountText(quantity, *part) : std::to_string(quantity));
    };
    const auto orNull = [](const std::string &said) {
        return said.empty() ? QJsonValue() : jsonText(said);
    };
    const auto from = claim.coversFrom();
    return {{QStringLiteral("claim"), jsonText(now.claim.text())},
            {QStringLiteral("number"), jsonText(now.number)},
            {QStringLiteral("order"), orNull(now.order)},
            {QStringLiteral("supplier"), jsonText(now.supplier)},
            {QStringLiteral("part"), jsonText(now.part)},
            {QStringLiteral("quantity"), amount(now.quantity)},
            {QStringLiteral("came"), amount(claim.came)},
            {QStringLiteral("owed"), amount(claim.owed())},
            {QStringLiteral("unit"), part ? jsonText(text(part->unit)) : QJsonValue()},
            {QStringLiteral("fault"), jsonText(text(now.fault))},
            {QStringLiteral("boxOf"), orNull(now.boxOf)},
            {QStringLiteral("boxLot"), orNull(now.boxLot)},
            {QStringLiteral("state"), jsonText(text(now.state))},
            {QStringLiteral("day"), orNull(now.day)},
            {QStringLiteral("coversFrom"), from ? jsonText(*from) : QJsonValue()},
            {QStringLiteral("credit"),
             now.state == ClaimState::Credited ? jsonText(valueText(now.credit)) : QJsonValue()},
            {QStringLiteral("note"), jsonText(now.note)}};
}

std::string claimSentence(const ClaimStanding &claim, const Workshop &workshop)
{
    const SupplierClaim &now = claim.now;
    const Part *part = workshop.part(now.part);
    std::string said = now.number + ": " +
                       (part ? spoken(now.quantity, *part) : std::to_string(now.quantity)) +
                       " of " + now.part + ", " + std::string(text(now.fault));
    if (!now.boxOf.empty())
        said += " (box of " + now.boxOf + (now.boxLot.empty() ? "" : ", " + now.boxLot) + ")";
    said += ", " + std::string(text(now.state));
    if (now.state == ClaimState::Promised)
        said += " by " + now.day;
    if (now.state == ClaimState::Credited)
        said += " with " + moneyText(now.credit, workshop.settings.currency);
    return now.note.empty() ? said : said + "; " + now.note;
}

void addReceivingOptions(CLI::App &command, ReceivingWords &asked)
{
    command.add_option("--order", asked.order, "the order that it came of: 2026-0007");
    command.add_flag("--all", asked.all, "all that is awaited of the order");
    command.add_option("--line", asked.lines, "\"PART QUANTITY\" that came; may stand again")
        ->allow_extra_args(false);
    command.add_option("--scan", asked.scanned,
                       "codes as they are scanned: a part number or the supplier's, a piece each");
    command.add_flag("--over", asked.over, "more than was ordered is taken in");
    command
        .add_option("--wrong", asked.wrong,
                    "PART QUANTITY ORDERED: what came instead of what; may stand again")
        ->allow_extra_args(false);
    command
        .add_option("--damaged", asked.damaged,
                    "PART QUANTITY of what came that is not to be used; may stand again")
        ->allow_extra_args(false);
    command
        .add_option("--short", asked.lacking,
                    "PART QUANTITY that the paper says and that did not come; may stand again")
        ->allow_extra_args(false);
    command.add_option("--serial", asked.serials, "PART=SERIAL of one piece; may stand again")
        ->allow_extra_args(false);
    command
        .add_option("--unmarked", asked.unmarked,
                    "a pump without a serial, an element without a batch; may stand again")
        ->allow_extra_args(false);
    command
        .add_option("--missing", asked.missing,
                    "PART=CONTENT or PART=CONTENT=LOT: what its box lacks; may stand again")
        ->allow_extra_args(false);
    command
        .add_option("--complete", asked.complete,
                    "a part whose boxes were looked into and lack nothing; may stand again")
        ->allow_extra_args(false);
}

void receiveOrder(const ReceivingWords &asked, const std::string &without, const SlipAsked &slip,
                  OpenShop &shop)
{
    if (!without.empty())
        return shop.outcome.refuse({"--order", "says what comes, from whom and for how much",
                                    "Leave out PART, QUANTITY, --from and --cost; say --line."});
    if (wasDone(shop, Deed::Receive, {}) ||
        wasWritten(shop, // An action that only wrote a claim down.
                   [](const Record &one) { return one.kind == RecordKind::SupplierClaim; }))
        return;
    const Bought &bought = shop.workshop->bought;
    const auto coming = comingAsked(asked, bought, *shop.workshop);
    if (!coming)
        return shop.outcome.refuse(coming.error());
    const auto made = received(*coming, bought, *shop.workshop, shop.by);
    if (!made)
        return shop.outcome.refuse(made.error());
    if (const auto can = canWriteSlip(slip, shop); !can)
        return shop.outcome.refuse(can.error());
    if (const auto looked = writeLooks(*made, shop.file); !looked)
        return shop.outcome.refuse(looked.error());
    appendAction(shop, made->action, sentencesOf(*made, asked.order, *shop.workshop),
                 documentOf(*made, asked.order, *shop.workshop));
    writeSlip(slip, cameInOf(*made, *coming, *shop.workshop), shop);
}

} // namespace flarestock
