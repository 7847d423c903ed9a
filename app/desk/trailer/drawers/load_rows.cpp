// SPDX-License-Identifier: MIT

#include "app/desk/trailer/drawers/load_rows.h"

#include "app/desk/language/sentences.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/trailer/drawers/drawer_rows.h"
#include "app/desk/trailer/drawers/drawer_words.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// With its quantity: where that is another by now, it is another line.
QString takeKey(const LoadTake &take, const std::string &drawer)
{
    const std::string condition(text(take.from.condition));
    return said(drawer + "|" + take.from.part + "|" + take.from.place + "|" + take.from.lot + "|" +
                condition + "|" + std::to_string(take.quantity));
}

QString titleOf(const Workshop &shop, const std::string &place)
{
    const Place *found = shop.ledger.place(place);
    return found == nullptr || found->title.empty()
               ? said(place)
               : DrawerWords::tr("%1, %2").arg(said(place), said(found->title));
}

struct TakeSaid {
    QString place;
    QString take;
    QString lot;
    QString note;
    bool isToBuy = false;
};

Row rowOf(const QString &key, const QString &section, const Part &part, const TakeSaid &words)
{
    QStringList says{words.isToBuy ? DrawerWords::tr("to buy") : words.place, words.take,
                     said(part.number), said(part.description)};
    for (const QString &more : {words.lot, words.note}) {
        if (!more.isEmpty())
            says.append(more);
    }
    return {key,
            {section, words.place, said(part.number), said(part.description), words.take, words.lot,
             words.note, words.isToBuy, false, says.join(QStringLiteral(", "))}};
}

void tick(std::vector<Row> &rows, const std::set<QString> &ticked)
{
    const auto at = loadCells().indexOf(QStringLiteral("ticked"));
    for (Row &row : rows)
        row.cells[at] = ticked.contains(row.key);
}

Problem otherByNow()
{
    return {"the list", "is another by now", "Look at it again, then tick what you have."};
}

} // namespace

QStringList loadCells()
{
    return {QStringLiteral("section"), QStringLiteral("place"),   QStringLiteral("part"),
            QStringLiteral("what"),    QStringLiteral("take"),    QStringLiteral("lot"),
            QStringLiteral("note"),    QStringLiteral("isToBuy"), QStringLiteral("ticked"),
            QStringLiteral("says")};
}

std::vector<Row> loadRows(const LoadShown &shown)
{
    std::vector<Row> rows;
    for (const LoadLine &line : shown.book.load) {
        const QString section = titleOf(*shown.book.workshop, line.keeping.place);
        for (const LoadTake &take : line.bring)
            rows.push_back(rowOf(takeKey(take, line.keeping.place), section, *line.part,
                                 {said(take.from.place),
                                  saidStock(take.quantity, *line.part, shown.units),
                                  said(take.from.lot),
                                  {}}));
        if (line.toBuy > 0)
            rows.push_back(rowOf(said("buy|" + line.keeping.place + "|" + line.part->number),
                                 section, *line.part,
                                 {{},
                                  saidStock(line.toBuy, *line.part, shown.units),
                                  {},
                                  inWords(line.held),
                                  true}));
    }
    tick(rows, shown.ticked);
    return rows;
}

std::vector<Row> unloadRows(const LoadShown &shown)
{
    std::vector<Row> rows;
    for (const UnloadLine &line : shown.book.unload)
        rows.push_back(
            rowOf(takeKey(line.take, line.take.from.place),
                  titleOf(*shown.book.workshop, line.take.from.place), *line.part,
                  {said(line.home), saidStock(line.take.quantity, *line.part, shown.units),
                   said(line.take.from.lot), saidMisplaced(line.why)}));
    tick(rows, shown.ticked);
    return rows;
}

Pen::MadeBy loadedBy(const LoadAsked &asked, const std::set<QString> &ticked)
{
    return [asked, ticked](const ShopFile &, const Workshop &shop, const By &by) -> Result<Action> {
        auto lines = loadLines(shop, asked);
        std::size_t found = 0;
        for (LoadLine &line : lines) {
            std::erase_if(line.bring, [&](const LoadTake &take) {
                return !ticked.contains(takeKey(take, line.keeping.place));
            });
            found += line.bring.size();
        }
        if (found != ticked.size() || found == 0)
            return tl::unexpected(otherByNow());
        return numbered(loadMovements(lines), by);
    };
}

Pen::MadeBy takenOutBy(const UnloadDeed &deed)
{
    return [deed](const ShopFile &, const Workshop &shop, const By &by) -> Result<Action> {
        auto lines = unloadLines(shop, deed.asked);
        std::erase_if(lines, [&deed](const UnloadLine &line) {
            return !deed.ticked.contains(takeKey(line.take, line.take.from.place));
        });
        if (lines.size() != deed.ticked.size() || lines.empty())
            return tl::unexpected(otherByNow());
        const auto homeless = std::find_if(
            lines.begin(), lines.end(), [](const UnloadLine &line) { return line.home.empty(); });
        if (homeless != lines.end() && deed.otherwise.empty())
            return problem(homeless->part->number, "has no bin or shelf of its own",
                           "Choose where it is to go.");
        return numbered(unloadMovements(lines, deed.otherwise), by);
    };
}

} // namespace flarestock
