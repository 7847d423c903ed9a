// SPDX-License-Identifier: MIT

#include "app/desk/buying/buyers_book.h"

#include "app/buyer/away_with.h"
#include "app/buyer/on_its_way.h"
#include "app/buyer/planned.h"
#include "app/desk/shop/aside.h"
#include "model/storage/trailer/travelling.h"

namespace flarestock {

Result<NeededInShop> neededInShop(const Workshop &workshop, const ShopFile &file,
                                  const std::string &today)
{
    auto due = dueInShop(workshop, file, today);
    if (!due)
        return tl::unexpected(due.error());
    NeedsAsked asked{today};
    asked.due = std::move(due->lines);
    auto needs = needsOf(workshop, asked);
    if (!needs)
        return tl::unexpected(needs.error());
    return NeededInShop{std::move(*needs), std::move(due->garage)};
}

std::shared_ptr<const BuyersBook> BuyersBook::of(const std::shared_ptr<const Workshop> &workshop,
                                                 ShopFile &file, const std::string &today)
{
    auto needed = neededInShop(*workshop, file, today);
    if (!needed)
        return none(workshop, needed.error());
    const auto trips = Travelling::trips(file);
    if (!trips)
        return none(workshop, trips.error());
    const auto rates = ratesOf(file);
    if (!rates)
        return none(workshop, rates.error());
    auto book = std::make_shared<BuyersBook>();
    book->workshop = workshop;
    book->today = today;
    book->cars = std::move(needed->cars);
    book->needs = std::move(needed->needs);
    book->needs.taken = nullptr; // Large, and no other days are tried here.
    book->shortages = shortagesIn(book->needs);
    book->onNoSlip = flarestock::onNoSlip(*workshop, *rates, {book->shortages, today});
    book->coming = onItsWay(*workshop);
    book->unsure = unsureOnItsWay(*workshop, today);
    for (std::string &note : countedOnAway(book->needs, *workshop, *trips))
        book->unsure.push_back(std::move(note));
    return goesAside<BuyersBook>(std::move(book));
}

std::shared_ptr<const BuyersBook> BuyersBook::none(const std::shared_ptr<const Workshop> &workshop,
                                                   const Problem &problem)
{
    auto book = std::make_shared<BuyersBook>();
    book->workshop = workshop;
    book->problem = problem.sentence();
    return book;
}

std::vector<const NeedLine *> BuyersBook::wantsOf(const Shortage &shortage) const
{
    std::vector<const NeedLine *> wants;
    for (const NeedLine &line : needs.lines)
        if (line.part->number == shortage.part && line.day == shortage.day &&
            line.shortBy.sign() > 0)
            wants.push_back(&line);
    return wants;
}

} // namespace flarestock
