// SPDX-License-Identifier: MIT

#include "app/desk/stock/stock_book.h"

#include "app/buyer/on_its_way.h"
#include "app/desk/shop/aside.h"
#include "app/desk/stock/found_by.h"
#include "app/stockroom/filling_up.h"

#include <algorithm>
#include <unordered_map>

namespace flarestock {

namespace {

void list(Listed &some, std::uint16_t one)
{
    if (std::find(some.begin(), some.end(), one) == some.end())
        some.push_back(one);
}

class Writing {
public:
    Writing(StockBook &book, const Workshop &shop) : m_book(book), m_shop(shop)
    {
        for (const Place &place : shop.ledger.places()) {
            if (isStock(place.kind)) {
                m_places.emplace(place.id, static_cast<std::uint16_t>(m_book.places.size()));
                m_book.places.push_back(place.id);
            }
        }
        for (const Part &part : shop.catalogue.parts())
            add(part);
        for (const auto &[tag, part] : shop.madeUp)
            add(part);
        for (const auto &[at, seen] : shop.notes.levels) {
            if (!m_book.numbers.contains(seen.part))
                addTin(seen);
        }
    }

    void lay(const StockLine &line)
    {
        StockEntry *entry = of(line.key.part);
        if (entry == nullptr)
            return;
        const bool isTrailer = m_shop.ledger.place(line.key.place)->kind == PlaceKind::Drawer;
        (isTrailer ? entry->trailer : entry->here) += line.onHand;
        entry->free += line.free;
        entry->promised += line.promised();
        entry->isPastDay = entry->isPastDay || !line.useBy.empty();
        entry->conditions.at(static_cast<std::size_t>(line.key.condition)) = true;
        list(entry->places, m_places.at(line.key.place));
        entry->sought += foldedWords(line.key.place) + foldedWords(line.key.lot);
    }
    void layElsewhere()
    {
        for (const auto &[key, held] : m_shop.ledger.balances()) {
            const Place *place = m_shop.ledger.place(key.place);
            StockEntry *entry =
                place && held.quantity > 0 && !isStock(place->kind) ? of(key.part) : nullptr;
            if (entry == nullptr)
                continue;
            const bool isAway =
                place->kind == PlaceKind::Borrower || place->kind == PlaceKind::Repair;
            entry->isAway = entry->isAway || isAway;
            entry->inCar = entry->inCar || place->kind == PlaceKind::Car;
            if (isAway || place->kind == PlaceKind::Car)
                entry->sought += foldedWords(key.place) + foldedWords(key.lot);
        }
    }
    void keep(const Keeping &keeping)
    {
        StockEntry *entry = of(keeping.part);
        const auto place = m_places.find(keeping.place);
        if (entry == nullptr || place == m_places.end())
            return;
        entry->kept += keeping.least;
        list(entry->places, place->second);
    }
    void see(const LevelSeen &seen)
    {
        StockEntry *entry = of(seen.part);
        const auto place = m_places.find(seen.place);
        if (entry == nullptr || place == m_places.end() || entry->here + entry->trailer > 0)
            return; // What is counted is counted.
        entry->level = entry->level ? std::max(*entry->level, seen.level) : seen.level;
        entry->isBelow = entry->isBelow || seen.level != StockLevel::Plenty;
        list(entry->places, place->second);
        entry->sought += foldedWords(seen.place) + foldedWords(seen.holds);
    }
    void lack(const FillLine &line)
    {
        if (StockEntry *entry = of(line.part->number))
            entry->isBelow = true;
    }
    void await(const OnOrder &coming)
    {
        StockEntry *entry = of(coming.part);
        if (entry == nullptr || entry->part == nullptr)
            return;
        const auto smallest = Quantity{coming.quantity, entry->part->unit}.smallest();
        entry->onOrder += smallest.value_or(0);
        entry->sought += foldedWords(coming.order);
        if (!coming.day.empty() && (entry->due.empty() || coming.day < entry->due))
            entry->due = coming.day;
    }
    void close()
    {
        for (StockEntry &entry : m_book.entries) {
            std::sort(entry.places.begin(), entry.places.end());
            m_book.below += entry.isBelow ? 1 : 0;
        }
    }

private:
    StockEntry *of(const std::string &number)
    {
        const auto found = m_book.numbers.find(number);
        return found == m_book.numbers.end() ? nullptr : &m_book.entries.at(found->second);
    }
    /// The place of a text in a list of the book.
    std::uint16_t listed(std::vector<std::string> &all, const std::string &text)
    {
        const auto [found, isNew] =
            m_lists[&all].try_emplace(text, static_cast<std::uint16_t>(all.size()));
        if (isNew)
            all.push_back(text);
        return found->second;
    }
    void add(const Part &part)
    {
        StockEntry entry;
        entry.part = &part;
        entry.number = part.number;
        entry.kind = listed(m_book.kinds, std::string(text(part.kind)));
        for (const std::string &dash : dashesOf(part))
            list(entry.dashes, listed(m_book.dashes, dash));
        for (const std::string &thread : threadsOf(part))
            list(entry.threads, listed(m_book.threads, thread));
        if (const std::string micron = micronOf(part); !micron.empty())
            list(entry.microns, listed(m_book.microns, micron));
        entry.sought = soughtOf(part);
        push(std::move(entry));
    }
    void addTin(const LevelSeen &seen)
    {
        StockEntry entry;
        entry.number = seen.part;
        entry.kind = listed(m_book.kinds, "not counted");
        entry.sought = foldedWords(seen.part) + foldedWords(seen.holds);
        push(std::move(entry));
    }
    void push(StockEntry entry)
    {
        m_book.numbers.emplace(entry.number, static_cast<std::uint32_t>(m_book.entries.size()));
        m_book.entries.push_back(std::move(entry));
    }

    StockBook &m_book;
    const Workshop &m_shop;
    std::unordered_map<std::string, std::uint16_t> m_places;
    std::unordered_map<const void *, std::unordered_map<std::string, std::uint16_t>> m_lists;
};

} // namespace

bool StockEntry::isOurs() const noexcept
{
    return here != 0 || trailer != 0 || onOrder != 0 || isAway || inCar || !places.empty();
}

std::shared_ptr<const StockBook> StockBook::of(const std::shared_ptr<const Workshop> &workshop,
                                               const std::string &day)
{
    auto book = std::make_shared<StockBook>();
    book->workshop = workshop;
    book->day = day;
    Writing writing(*book, *workshop);
    for (const StockLine &line : stockLines(*workshop, {}, day))
        writing.lay(line);
    writing.layElsewhere();
    for (const auto &[at, keeping] : workshop->notes.keepings)
        writing.keep(keeping);
    for (const auto &[at, seen] : workshop->notes.levels)
        writing.see(seen);
    for (const FillLine &line : belowMinimum(*workshop, day))
        writing.lack(line);
    for (const OnOrder &coming : onItsWay(*workshop))
        writing.await(coming);
    writing.close();
    return goesAside<StockBook>(std::move(book));
}

const StockEntry *StockBook::find(const std::string &number) const
{
    const auto found = numbers.find(number);
    return found == numbers.end() ? nullptr : &entries.at(found->second);
}

} // namespace flarestock
