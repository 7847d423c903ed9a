// SPDX-License-Identifier: MIT

#include "app/stockroom/filling_up.h"

#include <algorithm>

namespace flarestock {

namespace {

FreeAt freeAt(const Workshop &workshop, std::string_view day)
{
    FreeAt free;
    for (const StockLine &line : stockLines(workshop, {}, day))
        free[{line.part->number, line.key.place}] += line.free;
    return free;
}

/// Takes what is lacking out of `free`.
void fillFrom(const Workshop &workshop, FreeAt &free, FillLine &line)
{
    std::int64_t lacking = line.keeping.most - line.has;
    for (const Place &place : workshop.ledger.places()) {
        const auto there = free.find({line.part->number, place.id});
        if (lacking <= 0 || there == free.end() || place.id == line.keeping.place)
            continue;
        const auto kept = workshop.notes.keepings.find({line.part->number, place.id});
        const std::int64_t stays = kept == workshop.notes.keepings.end() ? 0 : kept->second.least;
        const std::int64_t spare = std::min(lacking, there->second - stays);
        if (spare <= 0)
            continue;
        line.from.push_back({place.id, spare});
        there->second -= spare;
        lacking -= spare;
    }
    line.toBuy = lacking;
}

} // namespace

std::vector<FillLine> belowMinimum(const Workshop &workshop, std::string_view day)
{
    return belowMinimum(workshop, freeAt(workshop, day));
}

std::vector<FillLine> belowMinimum(const Workshop &workshop, FreeAt free)
{
    std::vector<FillLine> lines;
    for (const auto &[at, keeping] : workshop.notes.keepings) {
        const Part *part = workshop.part(keeping.part);
        const auto there = free.find(at);
        const std::int64_t has = there == free.end() ? 0 : there->second;
        if (!part || has >= keeping.least)
            continue;
        lines.push_back({part, keeping, has, {}, 0});
        fillFrom(workshop, free, lines.back());
    }
    return lines;
}

std::vector<LevelSeen> lowLevels(const ShopNotes &notes)
{
    std::vector<LevelSeen> low;
    for (const auto &[at, seen] : notes.levels) {
        if (seen.level != StockLevel::Plenty)
            low.push_back(seen);
    }
    return low;
}

} // namespace flarestock
