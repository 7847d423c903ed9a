// SPDX-License-Identifier: MIT

#include "app/buyer/by_date/changed_needs.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isOfSameWant(const NeedLine &a, const NeedLine &b)
{
    return a.part == b.part && a.whom == b.whom && a.work == b.work;
}

const NeedLine *sameWantIn(const ShopNeeds &needs, const NeedLine &line)
{
    const auto found =
        std::find_if(needs.lines.begin(), needs.lines.end(),
                     [&line](const NeedLine &other) { return isOfSameWant(line, other); });
    return found == needs.lines.end() ? nullptr : &*found;
}

bool comesAlike(const NeedLine &a, const NeedLine &b)
{
    return std::equal(a.coming.begin(), a.coming.end(), b.coming.begin(), b.coming.end(),
                      [](const NeedLine::Coming &one, const NeedLine::Coming &other) {
                          return one.order == other.order && one.day == other.day &&
                                 one.quantity == other.quantity;
                      });
}

} // namespace

Decimal shortIn(const NeedLine *line)
{
    return line ? line->shortBy : Decimal();
}

Decimal fromStockIn(const NeedLine *line)
{
    return line ? line->own + line->free : Decimal();
}

NeedChange changeOf(const ChangedNeed &changed)
{
    if (!changed.after)
        return NeedChange::NotWanted;
    if (!changed.before)
        return NeedChange::Wanted;
    const Decimal before = shortIn(changed.before);
    const Decimal after = shortIn(changed.after);
    if (before == after && fromStockIn(changed.before) == fromStockIn(changed.after))
        return comesAlike(*changed.before, *changed.after) ? NeedChange::OtherDay
                                                           : NeedChange::OtherOrder;
    if (after.sign() > 0 && before.sign() <= 0)
        return NeedChange::BecomesShort;
    if (after.sign() <= 0 && before.sign() > 0)
        return NeedChange::Covered;
    return after > before   ? NeedChange::LacksMore
           : after < before ? NeedChange::LacksLess
                            : NeedChange::ChangesHands;
}

std::vector<ChangedNeed> changesBetween(const ShopNeeds &before, const ShopNeeds &after)
{
    std::vector<ChangedNeed> changes;
    for (const NeedLine &line : before.lines) {
        const NeedLine *then = sameWantIn(after, line);
        const bool isSame = then && then->shortBy == line.shortBy && then->need == line.need &&
                            fromStockIn(then) == fromStockIn(&line) && comesAlike(*then, line) &&
                            then->orderBy == line.orderBy;
        if (!isSame)
            changes.push_back({&line, then});
    }
    for (const NeedLine &line : after.lines)
        if (!sameWantIn(before, line))
            changes.push_back({nullptr, &line});
    return changes;
}

} // namespace flarestock
