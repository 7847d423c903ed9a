// SPDX-License-Identifier: MIT

#include "app/command/build/bill_document.h"

#include "app/command/build/size_words.h"
#include "app/command/command.h"
#include "app/command/findings/finding_sheet.h"

namespace flarestock {

namespace {

QJsonArray textsOf(const std::vector<std::string> &texts)
{
    QJsonArray array;
    for (const std::string &one : texts)
        array.append(jsonText(one));
    return array;
}

QJsonObject lineOf(const PricedLine &priced, const Lying &lying)
{
    const BillLine &line = *priced.line;
    return {
        {QStringLiteral("part"), jsonText(line.part->number)},
        {QStringLiteral("description"), jsonText(line.part->description)},
        {QStringLiteral("kind"), jsonText(text(line.part->kind))},
        {QStringLiteral("need"), jsonText(line.need.amount.stripped().text())},
        {QStringLiteral("unit"), jsonText(text(line.need.unit))},
        {QStringLiteral("free"), jsonText(priced.free.stripped().text())},
        {QStringLiteral("got"), jsonText(lying.got.stripped().text())},
        {QStringLiteral("here"), jsonText(lying.here.stripped().text())},
        {QStringLiteral("inTrailer"), jsonText(lying.inTrailer.stripped().text())},
        {QStringLiteral("onTheWay"), jsonText(lying.onTheWay.stripped().text())},
        {QStringLiteral("short"), jsonText(priced.shortBy.stripped().text())},
        {QStringLiteral("unitCost"),
         priced.unitCost ? QJsonValue(jsonText(priced.unitCostText())) : QJsonValue()},
        {QStringLiteral("cost"),
         priced.cost ? QJsonValue(jsonText(priced.cost->amount.text())) : QJsonValue()},
        {QStringLiteral("why"), textsOf(line.why)},
    };
}

/// Empty where there is no such port (nothing stands there, or its part has none of that name).
QString portText(const Port &port)
{
    return port.size.empty() ? QString() : jsonText(port.text());
}

QJsonObject jointOf(const PlacedJoint &joint)
{
    QJsonArray through;
    if (joint.way)
        for (const Piece &piece : joint.way->pieces)
            through.append(jsonText(piece.part->number));
    return {
        {QStringLiteral("at"), jsonText(joint.at)},
        {QStringLiteral("from"), portText(joint.from)},
        {QStringLiteral("to"), portText(joint.to)},
        {QStringLiteral("through"), through},
        {QStringLiteral("verdict"),
         joint.way ? jsonText(text(joint.way->verdict())) : QStringLiteral("open")},
        {QStringLiteral("short"), joint.way ? joint.way->toBuy : 0},
    };
}

QString amountOf(std::int64_t value, Criterion criterion)
{
    const bool isMoney = criterion == Criterion::CostMicro;
    return jsonText(isMoney ? Decimal::scaled(value, 6).stripped().text() : std::to_string(value));
}

/// What the joints come to together; null where they were not chosen so.
QJsonValue togetherOf(const std::optional<JointsTogether> &together)
{
    if (!together)
        return {};
    const auto &[rank, bound, isSearched] = *together;
    QJsonValue least;
    if (bound)
        least = QJsonObject{{QStringLiteral("of"), jsonText(text(bound->of))},
                            {QStringLiteral("atLeast"), amountOf(bound->atLeast, bound->of)}};
    return QJsonObject{{QStringLiteral("toBuy"), rank.toBuy},
                       {QStringLiteral("pieces"), rank.pieces},
                       {QStringLiteral("cost"), amountOf(rank.costMicro, Criterion::CostMicro)},
                       {QStringLiteral("searched"), isSearched},
                       {QStringLiteral("proven"), !bound},
                       {QStringLiteral("bound"), least}};
}

} // namespace

QJsonObject billDocument(const WorkedBuild &build)
{
    QJsonArray lines;
    for (std::size_t at = 0; at < build.bill.lines.size(); ++at)
        lines.append(lineOf(build.bill.lines[at], build.lyingAt(at)));
    QJsonArray joints;
    for (const PlacedJoint &joint : build.expansion.joints)
        joints.append(jointOf(joint));
    return {
        {QStringLiteral("template"), jsonText(build.expansion.templateId)},
        {QStringLiteral("answers"), answersDocument(build.expansion.answers)},
        {QStringLiteral("lines"), lines},
        {QStringLiteral("joints"), joints},
        {QStringLiteral("sizes"), sizesDocument(build.expansion)},
        {QStringLiteral("together"), togetherOf(build.expansion.together)},
        {QStringLiteral("findings"), findingsDocument(build.findings)},
        {QStringLiteral("total"), jsonText(build.bill.total.amount.text())},
        {QStringLiteral("currency"), jsonText(build.bill.total.currency.code())},
        {QStringLiteral("complete"), build.bill.complete},
        {QStringLiteral("stops"), build.count(Severity::Stop)},
        {QStringLiteral("unpriced"), textsOf(build.bill.unpriced)},
    };
}

} // namespace flarestock
