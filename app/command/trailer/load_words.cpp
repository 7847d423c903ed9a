// SPDX-License-Identifier: MIT

#include "app/command/trailer/load_words.h"

#include "app/command/command.h"
#include "app/command/text_table.h"

#include <QJsonArray>

namespace flarestock {

namespace {

using Side = TextTable::Side;
using Shown = TextTable::Shown;

std::string titleOf(const Workshop &workshop, const std::string &place)
{
    const Place *found = workshop.ledger.place(place);
    return found && !found->title.empty() ? place + ", " + found->title : place;
}

std::string bringText(const LoadLine &line)
{
    std::string said;
    for (const LoadTake &take : line.bring)
        said += (said.empty() ? "" : ", ") + spoken(take.quantity, *line.part) + " from " +
                take.from.place + (take.from.lot.empty() ? "" : " (" + take.from.lot + ")");
    if (line.toBuy > 0)
        said += (said.empty() ? "" : ", ") + spoken(line.toBuy, *line.part) + " to buy";
    return said;
}

QJsonObject takeDocument(const LoadTake &take, const Part &part)
{
    return {{QStringLiteral("from"), jsonText(take.from.place)},
            {QStringLiteral("quantity"), jsonText(amountText(take.quantity, part))},
            {QStringLiteral("lot"), textOrNull(take.from.lot)},
            {QStringLiteral("condition"), jsonText(text(take.from.condition))}};
}

QJsonObject lineDocument(const LoadLine &line)
{
    const auto amount = [&line](std::int64_t quantity) {
        return jsonText(amountText(quantity, *line.part));
    };
    QJsonArray bring;
    for (const LoadTake &take : line.bring)
        bring.append(takeDocument(take, *line.part));
    return {{QStringLiteral("part"), jsonText(line.part->number)},
            {QStringLiteral("description"), jsonText(line.part->description)},
            {QStringLiteral("min"), amount(line.keeping.least)},
            {QStringLiteral("max"), amount(line.keeping.most)},
            {QStringLiteral("has"), amount(line.has)},
            {QStringLiteral("lacks"), amount(line.lacks)},
            {QStringLiteral("bring"), bring},
            {QStringLiteral("buy"), amount(line.toBuy)},
            {QStringLiteral("stays"), textOrNull(line.held)},
            {QStringLiteral("unit"), jsonText(text(line.part->unit))}};
}

/// The lines of a drawer follow each other.
template <class Line, class PlaceOf>
std::vector<std::vector<const Line *>> byDrawer(const std::vector<Line> &lines, PlaceOf placeOf)
{
    std::vector<std::vector<const Line *>> drawers;
    for (const Line &line : lines) {
        if (drawers.empty() || placeOf(*drawers.back().front()) != placeOf(line))
            drawers.emplace_back();
        drawers.back().push_back(&line);
    }
    return drawers;
}

const std::string &drawerOf(const LoadLine &line)
{
    return line.keeping.place;
}
const std::string &drawerOfUnload(const UnloadLine &line)
{
    return line.take.from.place;
}

} // namespace

QJsonObject loadDocument(const Workshop &workshop, const std::vector<LoadLine> &lines)
{
    QJsonArray drawers;
    qint64 lacking = 0;
    qint64 buy = 0;
    for (const auto &drawer : byDrawer(lines, drawerOf)) {
        QJsonArray said;
        for (const LoadLine *line : drawer) {
            said.append(lineDocument(*line));
            lacking += line->lacks > 0 ? 1 : 0;
            buy += line->toBuy > 0 ? 1 : 0;
        }
        const std::string &id = drawer.front()->keeping.place;
        drawers.append(QJsonObject{{QStringLiteral("drawer"), jsonText(id)},
                                   {QStringLiteral("title"), jsonText(titleOf(workshop, id))},
                                   {QStringLiteral("lines"), said}});
    }
    return {{QStringLiteral("drawers"), drawers},
            {QStringLiteral("lacking"), lacking},
            {QStringLiteral("buy"), buy}};
}

std::string loadSheet(const Workshop &workshop, const std::vector<LoadLine> &lines)
{
    std::string said;
    std::size_t lacking = 0;
    for (const auto &drawer : byDrawer(lines, drawerOf)) {
        said += titleOf(workshop, drawer.front()->keeping.place) + "\n";
        TextTable table({{"part", Side::Left},
                         {"to hold", Side::Right},
                         {"is there", Side::Right},
                         {"bring", Side::Left},
                         {"done", Side::Left},
                         {"stays", Side::Left, Shown::WhereFilled},
                         {"what it is", Side::Left}});
        for (const LoadLine *line : drawer) {
            const Part &part = *line->part;
            const Keeping &keeping = line->keeping;
            table.add(
                {part.number,
                 spoken(keeping.least, part) +
                     (keeping.most == keeping.least ? "" : " to " + spoken(keeping.most, part)),
                 spoken(line->has, part), bringText(*line), line->bring.empty() ? "" : "[ ]",
                 line->held, part.description});
            lacking += line->lacks > 0 ? 1 : 0;
        }
        said += table.text() + "\n";
    }
    if (lines.empty())
        return "no drawer is to hold anything: say what, with keep or carry --keep\n";
    return said + counted(lacking, "line") + " to fill up\n";
}

QJsonObject unloadDocument(const std::vector<UnloadLine> &lines)
{
    QJsonArray all;
    for (const UnloadLine &line : lines) {
        QJsonObject said = takeDocument(line.take, *line.part);
        said.insert(QStringLiteral("part"), jsonText(line.part->number));
        said.insert(QStringLiteral("description"), jsonText(line.part->description));
        said.insert(QStringLiteral("unit"), jsonText(text(line.part->unit)));
        said.insert(QStringLiteral("why"), jsonText(text(line.why)));
        said.insert(QStringLiteral("to"), textOrNull(line.home));
        all.append(said);
    }
    return {{QStringLiteral("unload"), all}};
}

std::string unloadSheet(const Workshop &workshop, const std::vector<UnloadLine> &lines)
{
    std::string said;
    for (const auto &drawer : byDrawer(lines, drawerOfUnload)) {
        said += titleOf(workshop, drawer.front()->take.from.place) + "\n";
        TextTable table({{"part", Side::Left},
                         {"take out", Side::Right},
                         {"why", Side::Left},
                         {"to", Side::Left},
                         {"done", Side::Left},
                         {"lot", Side::Left, Shown::WhereFilled},
                         {"what it is", Side::Left}});
        for (const UnloadLine *line : drawer)
            table.add({line->part->number, spoken(line->take.quantity, *line->part),
                       std::string(text(line->why)), line->home.empty() ? "-" : line->home, "[ ]",
                       line->take.from.lot, line->part->description});
        said += table.text() + "\n";
    }
    return said + counted(lines.size(), "line") + " to take out\n";
}

} // namespace flarestock
