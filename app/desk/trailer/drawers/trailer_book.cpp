// SPDX-License-Identifier: MIT

#include "app/desk/trailer/drawers/trailer_book.h"

#include <algorithm>

namespace flarestock {

namespace {

DrawerLine &lineOf(Drawer &drawer, const std::string &number, const Part *part)
{
    const auto at = std::lower_bound(
        drawer.lines.begin(), drawer.lines.end(), number,
        [](const DrawerLine &line, const std::string &wanted) { return line.number < wanted; });
    if (at != drawer.lines.end() && at->number == number)
        return *at;
    DrawerLine line;
    line.number = number;
    line.part = part;
    return *drawer.lines.insert(at, std::move(line));
}

class Filling {
public:
    explicit Filling(TrailerBook &book) : m_book(book) {}

    void fill()
    {
        const Workshop &shop = *m_book.workshop;
        for (const Place &place : shop.ledger.places()) {
            if (place.kind == PlaceKind::Drawer)
                m_book.drawers.push_back({place.id, place.title, {}});
        }
        for (const LoadLine &line : m_book.load) {
            if (Drawer *drawer = of(line.keeping.place))
                lineOf(*drawer, line.part->number, line.part).load = line;
        }
        for (const UnloadLine &line : m_book.unload) {
            if (Drawer *drawer = of(line.take.from.place))
                lineOf(*drawer, line.part->number, line.part).out.push_back(line);
        }
        for (const auto &[key, held] : shop.ledger.balances()) {
            Drawer *drawer = held.quantity > 0 ? of(key.place) : nullptr;
            if (drawer != nullptr)
                lineOf(*drawer, key.part, shop.part(key.part)).lies += held.quantity;
        }
        for (const auto &[at, seen] : shop.notes.levels) {
            if (Drawer *drawer = of(seen.place))
                lineOf(*drawer, seen.part, shop.part(seen.part)).level = seen.level;
        }
    }

private:
    Drawer *of(const std::string &id)
    {
        const auto found = std::find_if(m_book.drawers.begin(), m_book.drawers.end(),
                                        [&id](const Drawer &one) { return one.id == id; });
        return found == m_book.drawers.end() ? nullptr : &*found;
    }

    TrailerBook &m_book;
};

} // namespace

std::int64_t DrawerLine::over() const
{
    std::int64_t sum = 0;
    for (const UnloadLine &line : out)
        sum += line.take.quantity;
    return sum;
}

Drawer::Pieces Drawer::pieces() const
{
    Pieces sum;
    for (const DrawerLine &line : lines) {
        if (line.part == nullptr)
            continue;
        const bool isOne = isLength(line.part->unit);
        const std::int64_t over = line.over();
        sum.over += isOne ? static_cast<std::int64_t>(over > 0) : over;
        if (!line.load)
            continue;
        const std::int64_t there = std::min(line.load->has, line.load->keeping.most);
        sum.there += isOne ? static_cast<std::int64_t>(line.load->lacks == 0) : there;
        sum.lack += isOne ? static_cast<std::int64_t>(line.load->lacks > 0) : line.load->lacks;
    }
    return sum;
}

std::shared_ptr<const TrailerBook> TrailerBook::of(const std::shared_ptr<const Workshop> &workshop,
                                                   const When &when)
{
    const auto book = std::make_shared<TrailerBook>();
    book->workshop = workshop;
    book->today = when.today;
    const Event *event = when.event.empty() ? nullptr : workshop->season.event(when.event);
    book->event = event ? event->id : std::string();
    book->asked.day = event ? event->lastDay : when.today;
    book->load = loadLines(*workshop, book->asked);
    book->unload = unloadLines(*workshop, book->asked);
    Filling(*book).fill();
    return book;
}

const Drawer *TrailerBook::drawer(std::string_view id) const
{
    const auto found = std::find_if(drawers.begin(), drawers.end(),
                                    [id](const Drawer &one) { return one.id == id; });
    return found == drawers.end() ? nullptr : &*found;
}

} // namespace flarestock
