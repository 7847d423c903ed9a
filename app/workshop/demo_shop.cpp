// SPDX-License-Identifier: MIT

#include "app/workshop/demo_shop.h"

#include "app/workshop/clock.h"
#include "app/workshop/documents.h"
#include "model/exchange/servicing/fitted_csv.h"
#include "model/exchange/servicing/outings_csv.h"
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

/// What stands in the shop's book from the first day on: what places are to hold, what is in the
/// cars and how far they ran, as far as there are such documents.
class FirstRecords {
public:
    FirstRecords(const TextFiles &documents, const std::vector<Place> &places, std::int64_t now)
        : m_documents(documents), m_places(places), m_now(now)
    {
    }

    Result<std::vector<Record>> of(const Catalogue &catalogue)
    {
        using Text = const std::string &;
        const auto begun =
            add("kept.csv",
                [&](Text text, Text name) { return readKept(text, name, catalogue, m_places); })
                .and_then([&] {
                    return add("fitted.csv", [&](Text text, Text name) {
                        return readFitted(text, name, catalogue, m_places);
                    });
                })
                .and_then([&] {
                    return add("outings.csv", [&](Text text, Text name) {
                        return readOutings(text, name, m_places);
                    });
                });
        if (!begun)
            return tl::unexpected(begun.error());
        return std::move(m_records);
    }

private:
    template <class Read>
    Result<void> add(const char *name, const Read &read)
    {
        const auto text = m_documents.find(name);
        if (text == m_documents.end())
            return {};
        auto rows = read(text->second, text->first);
        if (!rows)
            return tl::unexpected(rows.error());
        for (auto &row : *rows) {
            row.id = freshId();
            row.who = "opening count";
            row.at = m_now;
            m_records.push_back(row.asRecord());
        }
        return {};
    }

    const TextFiles &m_documents;
    const std::vector<Place> &m_places;
    std::int64_t m_now;
    std::vector<Record> m_records;
};

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
    if (auto fits = seasonFits(documents, plan->places); !fits)
        return tl::unexpected(fits.error());
    const auto stockText = documentOf(documents, "stock.csv");
    auto rows = readOpeningStock(stockText.value_or("part,place,quantity,value\n"), "stock.csv",
                                 *catalogue, plan->places);
    if (!rows)
        return tl::unexpected(rows.error());
    auto records = FirstRecords(documents, plan->places, now).of(*catalogue);
    if (!records)
        return tl::unexpected(records.error());
    NewShop shop{{plan->title, plan->currency, plan->costing},
                 plan->places,
                 documents,
                 {},
                 {},
                 "opening count",
                 now,
                 std::move(*records)};
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
