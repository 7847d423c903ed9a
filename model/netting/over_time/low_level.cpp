// SPDX-License-Identifier: MIT

#include "model/netting/over_time/low_level.h"

#include <algorithm>

namespace flarestock {

namespace {

using Codes = std::map<std::string, int, std::less<>>;
using Items = std::map<std::string, const NettedItem *, std::less<>>;

Result<Items> itemsById(const std::vector<NettedItem> &items)
{
    Items all;
    for (const NettedItem &item : items)
        if (!all.emplace(item.id, &item).second)
            return problem("item " + item.id, "stands twice", "Give one of them another id.");
    for (const NettedItem &item : items)
        for (const NettedItem::Made &made : item.madeOf)
            if (!all.contains(made.of))
                return problem("item " + item.id,
                               "is made of \"" + made.of + "\", which is no item",
                               "Add an item " + made.of + ", or mend the name.");
    return all;
}

/// How many items still take each one.
std::map<std::string, int> takenBy(const Items &items)
{
    std::map<std::string, int> takers;
    for (const auto &[id, item] : items)
        for (const NettedItem::Made &made : item->madeOf)
            ++takers[made.of];
    return takers;
}

/// A circle among items that are all taken by another of them, from the first of the list.
std::string circle(const std::vector<NettedItem> &items, const Items &byId, const Codes &done)
{
    const auto isOpen = [&done](const std::string &id) { return !done.contains(id); };
    // Behind a circle hang items that are taken and lead nowhere: going down from one that can be
    // followed for ever ends in the circle.
    std::map<std::string, bool, std::less<>> leads;
    for (const auto &[id, item] : byId)
        leads[id] = isOpen(id);
    for (bool changed = true; changed;) {
        changed = false;
        for (const auto &[id, item] : byId) {
            const bool goesOn =
                std::any_of(item->madeOf.begin(), item->madeOf.end(),
                            [&leads](const NettedItem::Made &made) { return leads[made.of]; });
            if (leads[id] && !goesOn) {
                leads[id] = false;
                changed = true;
            }
        }
    }
    const auto first = std::find_if(items.begin(), items.end(),
                                    [&leads](const NettedItem &item) { return leads[item.id]; });
    std::vector<std::string> path{first->id};
    while (std::count(path.begin(), path.end(), path.back()) < 2) {
        const auto &made = byId.at(path.back())->madeOf;
        path.push_back(std::find_if(made.begin(), made.end(), [&leads](const auto &next) {
                           return leads[next.of];
                       })->of);
    }
    path.erase(path.begin(), std::find(path.begin(), path.end(), path.back()));
    std::string said;
    for (const std::string &id : path)
        said += (said.empty() ? "" : " > ") + id;
    return said;
}

} // namespace

Result<Codes> lowLevelCodes(const std::vector<NettedItem> &items)
{
    const auto byId = itemsById(items);
    if (!byId)
        return tl::unexpected(byId.error());
    auto takers = takenBy(*byId);
    std::vector<std::string> next;
    Codes codes;
    Codes deepest;
    for (const NettedItem &item : items)
        if (takers[item.id] == 0)
            next.push_back(item.id);
    while (!next.empty()) {
        const std::string id = next.back();
        next.pop_back();
        const int code = codes[id] = deepest[id];
        for (const NettedItem::Made &made : byId->at(id)->madeOf) {
            deepest[made.of] = std::max(deepest[made.of], code + 1);
            if (--takers[made.of] == 0)
                next.push_back(made.of);
        }
    }
    if (codes.size() < items.size())
        return problem("what items are made of", "goes in a circle: " + circle(items, *byId, codes),
                       "Take one of them out of the next.");
    return codes;
}

} // namespace flarestock
