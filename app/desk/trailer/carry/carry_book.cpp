// SPDX-License-Identifier: MIT

#include "app/desk/trailer/carry/carry_book.h"

#include "app/stockroom/stock_line.h"

#include <algorithm>

namespace flarestock {

namespace {

/// By part: what is free and good in all drawers on a day.
std::map<std::string, std::int64_t> inDrawers(const Workshop &shop, const std::string &day)
{
    std::map<std::string, std::int64_t> there;
    for (const StockLine &line : stockLines(shop, {}, day)) {
        const Place *place = shop.ledger.place(line.key.place);
        if (place != nullptr && place->kind == PlaceKind::Drawer)
            there[line.key.part] += line.free;
    }
    return there;
}

/// The last day for which any of it is to last.
std::string lastDayOf(const CarryBook &book)
{
    std::string last = book.wanted.today;
    for (const SparePart &part : book.parts)
        for (const Event *event : part.carry ? part.carry->events : std::vector<const Event *>())
            last = std::max(last, event->lastDay);
    return last;
}

void add(CarryBook &book, const std::string &number)
{
    const Part *part = book.workshop->part(number);
    const std::string known = part ? part->number : number;
    if (book.find(known) != nullptr)
        return;
    SparePart spare;
    spare.number = known;
    spare.part = part;
    if (part == nullptr) {
        spare.why = known + " is not in this shop's catalogue.";
    } else if (isLength(part->unit)) {
        spare.why = known + " is cut from the length, and not carried by the piece.";
    } else if (auto carry = carryOf(*part, *book.workshop, *book.spares, book.wanted)) {
        spare.carry = std::move(*carry);
    } else {
        spare.why = carry.error().sentence();
    }
    book.parts.push_back(std::move(spare));
}

void addKit(CarryBook &book)
{
    std::vector<PartCarry> carries;
    for (const SparePart &part : book.parts) {
        if (part.carry)
            carries.push_back(*part.carry);
    }
    auto kit = carriedKit(carries, *book.workshop, book.wanted.certainty);
    if (kit)
        book.kit = std::move(*kit);
    else
        book.noKit = kit.error().sentence();
}

} // namespace

std::vector<Occasion> occasionsOf(const Season &season, std::string_view today)
{
    const auto coming = season.from(today);
    std::vector<Occasion> all{Occasion{}};
    for (std::size_t i = 0; i < coming.size(); ++i)
        all.push_back(
            {{coming.begin(), coming.begin() + static_cast<std::ptrdiff_t>(i + 1)}, false});
    for (std::size_t i = 1; i < coming.size(); ++i)
        all.push_back({{coming[i]}, true});
    return all;
}

std::shared_ptr<const CarryBook> CarryBook::of(const std::shared_ptr<const Workshop> &workshop,
                                               const std::shared_ptr<const SpareBook> &spares,
                                               const Asked &asked)
{
    const auto book = std::make_shared<CarryBook>();
    book->workshop = workshop;
    book->spares = spares;
    book->wanted = asked.wanted;
    for (const PartSpending &spending : spares->spendings)
        add(*book, spending.part);
    for (const std::string &number : asked.parts)
        add(*book, number);
    const auto there = inDrawers(*workshop, lastDayOf(*book));
    for (SparePart &part : book->parts) {
        const auto found = there.find(part.number);
        part.there = found == there.end() ? 0 : found->second;
    }
    if (asked.together)
        addKit(*book);
    return book;
}

const SparePart *CarryBook::find(std::string_view number) const
{
    const auto found = std::find_if(parts.begin(), parts.end(), [number](const SparePart &part) {
        return part.number == number;
    });
    return found == parts.end() ? nullptr : &*found;
}

std::optional<std::int64_t> CarryBook::carried(const SparePart &part) const
{
    if (!part.carry)
        return std::nullopt;
    return kit ? kit->carried(part.number) : part.carry->line.carry;
}

} // namespace flarestock
