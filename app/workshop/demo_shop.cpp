// SPDX-License-Identifier: MIT

#include "app/workshop/demo_shop.h"

#include "app/workshop/clock.h"
#include "model/exchange/shop_toml.h"
#include "model/exchange/spares/kept_csv.h"

#include <QDirIterator>
#include <QFile>

#include <algorithm>

namespace flarestock {

namespace {

const QString Root = QStringLiteral(":/flarestock/demo-data/");

Result<std::string> documentOf(const TextFiles &documents, std::string_view name)
{
    const auto found = documents.find(name);
    if (found == documents.end())
        return problem(std::string(name), "is missing", "A shop begins with it.");
    return found->second;
}

/// Value in whole millionths; readOpeningStock() has seen to it that it fits.
std::int64_t microsOf(const Decimal &value)
{
    return (value * Decimal(1'000'000)).toInt64().value_or(0);
}

Result<Movement> openingOf(const OpeningStock &row, const Catalogue &catalogue,
                           const std::pair<std::string, std::int64_t> &fromAndNow)
{
    const Part *part = catalogue.find(row.part);
    const auto smallest = Quantity{row.quantity, part->unit}.smallest();
    if (!smallest)
        return tl::unexpected(smallest.error());
    Movement movement;
    movement.id = freshId();
    movement.part = part->number;
    movement.quantity = *smallest;
    movement.value = microsOf(row.value);
    movement.from = fromAndNow.first;
    movement.to = row.place;
    movement.lot = row.lot;
    movement.condition = row.condition;
    movement.who = "opening count";
    movement.why = "what lay there on the first day";
    movement.document = "stock.csv";
    movement.at = fromAndNow.second;
    return movement;
}

/// What places are to hold from the first day on; nothing where there is no kept.csv.
Result<std::vector<Record>> keptOf(const TextFiles &documents, const Catalogue &catalogue,
                                   const std::vector<Place> &places, std::int64_t now)
{
    std::vector<Record> records;
    const auto text = documents.find("kept.csv");
    if (text == documents.end())
        return records;
    auto kept = readKept(text->second, text->first, catalogue, places);
    if (!kept)
        return tl::unexpected(kept.error());
    for (Keeping &keeping : *kept) {
        keeping.id = freshId();
        keeping.who = "opening count";
        keeping.at = now;
        records.push_back(keeping.asRecord());
    }
    return records;
}

} // namespace

TextFiles demoDocuments()
{
    TextFiles documents;
    QDirIterator files(Root, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const auto path = files.next();
        QFile file(path);
        if (file.open(QIODevice::ReadOnly))
            documents.emplace(path.mid(Root.size()).toStdString(), file.readAll().toStdString());
    }
    return documents;
}

Result<NewShop> newShopOf(const TextFiles &documents, std::int64_t now)
{
    const auto shopText = documentOf(documents, "shop.toml");
    if (!shopText)
        return tl::unexpected(shopText.error());
    auto plan = readShop(*shopText, "shop.toml");
    if (!plan)
        return tl::unexpected(plan.error());
    auto catalogue = readCatalogue(documents);
    if (!catalogue)
        return tl::unexpected(catalogue.error());
    const auto opening =
        std::find_if(plan->places.begin(), plan->places.end(),
                     [](const Place &place) { return place.kind == PlaceKind::Opening; });
    if (opening == plan->places.end())
        return problem("shop.toml", "has no place of kind opening",
                       "Add one, out of which the opening stock comes.");
    const auto stockText = documentOf(documents, "stock.csv");
    auto rows = readOpeningStock(stockText.value_or("part,place,quantity,value\n"), "stock.csv",
                                 *catalogue, plan->places);
    if (!rows)
        return tl::unexpected(rows.error());
    auto kept = keptOf(documents, *catalogue, plan->places, now);
    if (!kept)
        return tl::unexpected(kept.error());
    NewShop shop{{plan->title, plan->currency, plan->costing},
                 plan->places,
                 documents,
                 {},
                 {},
                 "opening count",
                 now,
                 std::move(*kept)};
    for (const auto &row : *rows) {
        auto movement = openingOf(row, *catalogue, {opening->id, now});
        if (!movement)
            return tl::unexpected(movement.error());
        shop.opening.push_back(std::move(*movement));
        if (!row.missing.empty())
            shop.boxChecks.push_back(
                {freshId(), row.part, row.lot, row.missing, "opening count", now});
    }
    return shop;
}

Result<ShopFile> makeDemoShop(const std::filesystem::path &path, std::int64_t now)
{
    const auto shop = newShopOf(demoDocuments(), now);
    if (!shop)
        return tl::unexpected(shop.error());
    return ShopFile::create(path, *shop);
}

} // namespace flarestock
