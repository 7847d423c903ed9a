// SPDX-License-Identifier: MIT

#include "made_shop.h"

#include "app/workshop/demo_shop.h"
#include "tests/storage/long_shop.h"

#include <set>

namespace flarestock {

namespace {

constexpr std::size_t AnAction = 1'000; ///< Movements that are written together.
/// A supplier's list has a fitting of each size in so many angles, finishes and makes.
constexpr int Makes = 25;

/// The rows of a list of parts once more under other numbers: "AD-8-8" becomes "AD-8-8.01".
std::string otherMakes(const std::string &list)
{
    const std::size_t head = list.find('\n') + 1;
    std::string made = list.substr(0, head);
    for (std::size_t at = head; at < list.size();) {
        const std::size_t end = std::min(list.find('\n', at), list.size() - 1) + 1;
        const std::string row = list.substr(at, end - at);
        const std::size_t comma = row.find(',');
        for (int make = 1; make <= Makes; ++make)
            made += row.substr(0, comma) + "." + std::to_string(make) + row.substr(comma);
        at = end;
    }
    return made;
}

/// Of one number for all that comes from the journal of years.
Result<NewShop> newShopOfYears(const tests::LongShop &size)
{
    NewShop years = tests::newLongShop(size);
    TextFiles documents = demoDocuments();
    for (const char *list : {"adapters", "hose-ends"})
        documents["parts/other-" + std::string(list) + ".csv"] =
            otherMakes(documents.at("parts/" + std::string(list) + ".csv"));
    for (const char *list : {"brackets", "hoses"})
        documents["parts/years-" + std::string(list) + ".csv"] =
            years.documents.at("parts/" + std::string(list) + ".csv");
    auto shop = newShopOf(documents, years.now);
    if (!shop)
        return shop;
    std::set<std::string> there;
    for (const Place &place : shop->places)
        there.insert(place.id);
    for (Place place : years.places) {
        if (place.kind == PlaceKind::Drawer) // A trailer holds hundreds, not tens of thousands.
            place.kind = PlaceKind::Shelf;
        if (!there.contains(place.id))
            shop->places.push_back(place);
    }
    return shop;
}

} // namespace

Result<void> makeShopOfYears(const std::string &file, const YearsAsked &asked)
{
    tests::LongShop size;
    size.parts = asked.parts;
    const auto begun = newShopOfYears(size);
    if (!begun)
        return tl::unexpected(begun.error());
    auto shop = ShopFile::create(file, *begun);
    if (!shop)
        return tl::unexpected(shop.error());
    tests::LongJournal journal(size);
    for (std::size_t done = 0; done < asked.movements;) {
        const Action action = journal.next(std::min(AnAction, asked.movements - done));
        if (const auto written = shop->append(action); !written)
            return tl::unexpected(written.error());
        done += action.movements.size();
    }
    return {};
}

} // namespace flarestock
