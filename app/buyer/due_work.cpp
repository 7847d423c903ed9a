// SPDX-License-Identifier: MIT

#include "app/buyer/due_work.h"

#include <algorithm>

namespace flarestock {

namespace {

/// As much as is there of what is wanted; the places that lie nearest give first.
Decimal taken(FreeStock &stock, const Decimal &wanted)
{
    Decimal most = std::min(stock.usable(), wanted);
    Decimal rest = most;
    for (FreeStock::AtPlace &at : stock.places) {
        const Decimal here = std::min(at.free.amount, rest);
        at.free.amount -= here;
        rest -= here;
    }
    stock.free.amount -= std::min(stock.free.amount, most);
    return most;
}

void meet(NeedLine &line, const Decimal &by)
{
    line.free += by;
    line.shortBy -= by;
}

} // namespace

std::vector<NeedLine> wantedForWork(const std::vector<DueLine> &due)
{
    std::vector<NeedLine> lines;
    for (const DueLine &one : due) {
        for (const DuePart &part : one.parts) {
            NeedLine line;
            line.part = part.part;
            line.whom = one.car;
            line.work = one.said;
            line.day = one.by;
            line.need = Quantity::ofSmallest(part.need, part.part->unit).amount;
            line.shortBy = line.need;
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

void takeForWork(std::vector<NeedLine> &lines, Shelf &left)
{
    for (auto line = lines.begin(); line != lines.end(); ++line) {
        if (line->work.empty())
            continue;
        if (const auto stock = left.find(line->part->number); stock != left.end())
            meet(*line, taken(stock->second, line->shortBy));
        for (auto later = lines.end(); line->shortBy.sign() > 0 && --later != line;) {
            if (!later->work.empty() || later->part != line->part)
                continue;
            const Decimal given = std::min(later->free, line->shortBy);
            meet(*line, given);
            meet(*later, -given);
        }
    }
}

} // namespace flarestock
