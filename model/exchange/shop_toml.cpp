// SPDX-License-Identifier: MIT

#include "model/exchange/shop_toml.h"

#include "model/exact/case_fold.h"
#include "model/exchange/toml/fields.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 4> ShopKeys = {"title", "currency", "costing", "place"};
constexpr std::array<std::string_view, 3> PlaceKeys = {"id", "title", "kind"};

Place readShopPlace(const TomlFields &fields)
{
    Place place;
    place.id = fields.required("id");
    place.title = fields.required("title");
    for (const char *key : {"id", "title"}) {
        const std::string name = fields.text(key);
        if (!name.empty() && !isPlaceName(name))
            fields.wrong(key, {quotedStart(name) + " has a tab or another control character in it",
                               "Write it on one line, with blanks."});
    }
    const std::string word = fields.required("kind");
    if (const auto kind = parsePlaceKind(word))
        place.kind = *kind;
    else if (!word.empty())
        fields.wrong("kind", {kind.error().wrong, kind.error().remedy});
    return place;
}

/// Not said: the moving average.
Costing readCosting(const TomlFields &top)
{
    const std::string word = top.text("costing");
    if (word.empty())
        return Costing::MovingAverage;
    if (const auto costing = costingOf(word))
        return *costing;
    top.wrong("costing", {'"' + word + "\" is no way of costing",
                          "Write moving average, or first in, first out."});
    return Costing::MovingAverage;
}

} // namespace

bool isPlaceName(std::string_view name) noexcept
{
    return !name.empty() && std::none_of(name.begin(), name.end(), [](char letter) {
        return static_cast<unsigned char>(letter) < 0x20 || letter == 0x7F;
    });
}

Result<ShopPlan> readShop(std::string_view text, std::string file)
{
    const auto document = TomlDocument::read(text, std::move(file));
    if (!document)
        return tl::unexpected(document.error());
    Problems problems(1);
    const TomlFields::Source source{&*document, &problems};
    const TomlFields top(source, document->root(), "shop", ShopKeys);
    const std::string title = top.required("title");
    const std::string code = top.required("currency");
    const auto currency = Currency::parse(code);
    if (!currency)
        top.wrong("currency", {currency.error().wrong, currency.error().remedy});
    const Costing costing = readCosting(top);
    std::vector<Place> places;
    for (const TomlValue *const table : top.tables("place")) {
        const TomlFields fields(source, *table, "place", PlaceKeys);
        Place place = readShopPlace(fields);
        const bool isThere =
            std::any_of(places.begin(), places.end(),
                        [&place](const Place &other) { return sameFolded(other.id, place.id); });
        if (isThere)
            fields.wrong("id", {"the place \"" + place.id + "\" stands twice",
                                "Give one of them another id."});
        places.push_back(std::move(place));
    }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return ShopPlan{title, *currency, std::move(places), costing};
}

} // namespace flarestock
