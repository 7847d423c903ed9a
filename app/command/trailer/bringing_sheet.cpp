// SPDX-License-Identifier: MIT

#include "app/command/trailer/bringing_sheet.h"

#include "app/command/text_table.h"

#include <QDateTime>
#include <QJsonArray>

namespace flarestock {

namespace {

QString timeText(std::int64_t at)
{
    return QDateTime::fromMSecsSinceEpoch(at, Qt::UTC).toString(Qt::ISODate);
}

template <class Names>
QJsonArray texts(const Names &names)
{
    QJsonArray all;
    for (const std::string &name : names)
        all.append(jsonText(name));
    return all;
}

QJsonObject movementDocument(const Movement &movement)
{
    return {{QStringLiteral("movement"), jsonText(movement.id.text())},
            {QStringLiteral("deed"), jsonText(text(movement.deed))},
            {QStringLiteral("part"), jsonText(movement.part)},
            {QStringLiteral("smallestUnits"), jsonText(std::to_string(movement.quantity))},
            {QStringLiteral("from"), jsonText(movement.from)},
            {QStringLiteral("to"), jsonText(movement.to)},
            {QStringLiteral("lot"), jsonText(movement.lot)},
            {QStringLiteral("document"), jsonText(movement.document)},
            {QStringLiteral("who"), jsonText(movement.who)},
            {QStringLiteral("at"), timeText(movement.at)}};
}

QJsonObject disagreementDocument(const Disagreement &one)
{
    QJsonArray choices;
    for (const Choice &choice : one.choices)
        choices.append(QJsonObject{{QStringLiteral("word"), jsonText(choice.word)},
                                   {QStringLiteral("does"), jsonText(choice.does)}});
    QJsonObject document{{QStringLiteral("name"), jsonText(one.name)},
                         {QStringLiteral("what"), jsonText(one.what)},
                         {QStringLiteral("choices"), choices},
                         {QStringLiteral("decided"),
                          one.decided.empty() ? QJsonValue() : QJsonValue(jsonText(one.decided))}};
    if (one.tooMuch)
        document.insert(QStringLiteral("lacking"),
                        QJsonObject{{QStringLiteral("part"), jsonText(one.tooMuch->part)},
                                    {QStringLiteral("smallestUnits"),
                                     jsonText(std::to_string(one.tooMuch->lacking))}});
    return document;
}

} // namespace

QJsonObject bringingDocument(const BroughtBack &back)
{
    QJsonArray movements;
    for (const Movement &movement : back.movements)
        movements.append(movementDocument(movement));
    QJsonArray records;
    for (const Record &record : back.records)
        records.append(QJsonObject{{QStringLiteral("record"), jsonText(record.id.text())},
                                   {QStringLiteral("kind"), jsonText(text(record.kind))},
                                   {QStringLiteral("subject"), jsonText(record.subject)}});
    QJsonArray disagreements;
    for (const Disagreement &one : back.disagreements)
        disagreements.append(disagreementDocument(one));
    return {{QStringLiteral("copy"), jsonText(back.copy.taken.name)},
            {QStringLiteral("trip"), jsonText(back.copy.taken.trip)},
            {QStringLiteral("brought"), back.written},
            {QStringLiteral("already"), back.already},
            {QStringLiteral("movements"), movements},
            {QStringLiteral("records"), records},
            {QStringLiteral("documents"), texts(back.documents)},
            {QStringLiteral("places"), texts(back.places)},
            {QStringLiteral("looksIntoBoxes"), static_cast<qint64>(back.looks)},
            {QStringLiteral("disagreements"), disagreements},
            {QStringLiteral("needless"), texts(back.needless)},
            {QStringLiteral("settled"), texts(back.settled)},
            {QStringLiteral("unknownToCopy"), static_cast<qint64>(back.missing)}};
}

void printBringing(const BroughtBack &back, CommandOutcome &outcome)
{
    outcome.print("copy \"" + back.copy.taken.name + "\", " + standingOf(back.copy));
    if (back.already)
        outcome.print("was brought already: nothing new is in it");
    else
        outcome.print((back.written ? "brought: " : "would come: ") + cameWith(back));
    TextTable table({{"deed", TextTable::Side::Left},
                     {"part", TextTable::Side::Left},
                     {"from", TextTable::Side::Left},
                     {"to", TextTable::Side::Left},
                     {"for", TextTable::Side::Left, TextTable::Shown::WhereFilled},
                     {"who", TextTable::Side::Left, TextTable::Shown::WhereFilled}});
    for (const Movement &movement : back.movements)
        table.add({std::string(text(movement.deed)), movement.part, movement.from, movement.to,
                   movement.document, movement.who});
    if (!back.movements.empty())
        outcome.out += table.text();
    for (const Disagreement &one : back.disagreements) {
        outcome.print((one.decided.empty() ? "disagrees: " : "decided: ") + one.name +
                      (one.decided.empty() ? "" : "=" + one.decided));
        outcome.print("  " + one.what);
        for (const Choice &choice : one.choices) {
            if (one.decided.empty())
                outcome.print("    " + choice.word + (choice.word.ends_with(':') ? "…  " : "  ") +
                              choice.does);
        }
    }
    for (const std::string &needless : back.needless)
        outcome.print("decided on nothing that disagrees: " + needless);
    for (const std::string &settled : back.settled)
        outcome.print((back.written ? "settled: " : "would be settled: ") + settled);
    if (const auto open = openIn(back); !open.empty())
        outcome.print(open);
    if (const auto missing = missingIn(back); !missing.empty())
        outcome.print(missing);
}

QJsonObject tripsDocument(const Trips &trips, const std::optional<Trip> &own)
{
    QJsonArray all;
    for (const TravellingCopy &copy : trips.copies) {
        QJsonArray brought;
        for (const Trip &trip : copy.brought)
            brought.append(QJsonObject{{QStringLiteral("at"), timeText(trip.at)},
                                       {QStringLiteral("who"), jsonText(trip.who)}});
        all.append(QJsonObject{{QStringLiteral("copy"), jsonText(copy.taken.name)},
                               {QStringLiteral("trip"), jsonText(copy.taken.trip)},
                               {QStringLiteral("with"), jsonText(copy.taken.with)},
                               {QStringLiteral("taken"), timeText(copy.taken.at)},
                               {QStringLiteral("places"), texts(copy.places)},
                               {QStringLiteral("out"), copy.isOut},
                               {QStringLiteral("brought"), brought},
                               {QStringLiteral("ended"), copy.ended.has_value()}});
    }
    QJsonObject document{{QStringLiteral("copies"), all}};
    document.insert(QStringLiteral("thisIsTrip"),
                    own ? QJsonValue(jsonText(own->trip)) : QJsonValue());
    return document;
}

void printTrips(const Trips &trips, const std::optional<Trip> &own, CommandOutcome &outcome)
{
    if (own)
        outcome.print("this file is the copy \"" + own->name + '"');
    TextTable table({{"copy", TextTable::Side::Left},
                     {"state", TextTable::Side::Left},
                     {"with whom, since, places", TextTable::Side::Left}});
    for (const TravellingCopy &copy : trips.copies)
        table.add({copy.taken.name, stateOf(copy), standingOf(copy)});
    outcome.out += trips.copies.empty() ? "" : table.text();
    outcome.print(counted(trips.copies.size(), "trip"));
}

} // namespace flarestock
