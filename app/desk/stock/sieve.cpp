// SPDX-License-Identifier: MIT

#include "app/desk/stock/sieve.h"

#include "app/desk/stock/found_by.h"

#include <algorithm>
#include <limits>

namespace flarestock {

namespace {

/// The place of a text in its list; nothing where nothing is asked. What is not in the list is in
/// no entry either.
std::optional<std::uint16_t> placeOf(const std::vector<std::string> &all, const std::string &text)
{
    if (text.empty())
        return {};
    const auto found = std::find(all.begin(), all.end(), text);
    return found == all.end() ? std::numeric_limits<std::uint16_t>::max()
                              : static_cast<std::uint16_t>(found - all.begin());
}

bool holds(const Listed &some, const std::optional<std::uint16_t> &asked)
{
    return !asked || std::find(some.begin(), some.end(), *asked) != some.end();
}

bool isOneOf(const Port &port, const std::vector<Port> &ports)
{
    return std::any_of(ports.begin(), ports.end(), [&port](const Port &other) {
        return other.family == port.family && other.size == port.size &&
               other.gender == port.gender;
    });
}

class Sieve {
public:
    Sieve(const StockBook &book, const Narrowing &narrowing)
        : m_asked(narrowing), m_kind(placeOf(book.kinds, narrowing.kind)),
          m_dash(placeOf(book.dashes, narrowing.dash)),
          m_thread(placeOf(book.threads, narrowing.thread)),
          m_micron(placeOf(book.microns, narrowing.micron))
    {
        if (!narrowing.where.empty() && narrowing.where.front() != '|')
            m_place = placeOf(book.places, narrowing.where);
    }

    [[nodiscard]] bool lets(const StockEntry &entry) const
    {
        return (!m_kind || *m_kind == entry.kind) && isThere(entry) &&
               holds(entry.dashes, m_dash) && holds(entry.threads, m_thread) &&
               holds(entry.microns, m_micron) && (!m_asked.below || entry.isBelow) &&
               (!m_asked.pastDay || entry.isPastDay) &&
               (!m_asked.condition ||
                entry.conditions.at(static_cast<std::size_t>(*m_asked.condition))) &&
               hasPort(entry) && holdsAll(entry.sought, m_asked.words);
    }

private:
    [[nodiscard]] bool isThere(const StockEntry &entry) const
    {
        if (m_place)
            return holds(entry.places, m_place);
        if (m_asked.where == Narrowing::Shop)
            return entry.here != 0;
        if (m_asked.where == Narrowing::Trailer)
            return entry.trailer != 0;
        if (m_asked.where == Narrowing::Away)
            return entry.isAway;
        if (m_asked.where == Narrowing::Cars)
            return entry.inCar;
        return m_asked.where == Narrowing::Catalogue || entry.isOurs();
    }
    [[nodiscard]] bool hasPort(const StockEntry &entry) const
    {
        return m_asked.ports.empty() ||
               (entry.part && std::any_of(entry.part->ports.begin(), entry.part->ports.end(),
                                          [this](const PartPort &port) {
                                              return isOneOf(port.port, m_asked.ports);
                                          }));
    }

    const Narrowing &m_asked;
    std::optional<std::uint16_t> m_kind;
    std::optional<std::uint16_t> m_dash;
    std::optional<std::uint16_t> m_thread;
    std::optional<std::uint16_t> m_micron;
    std::optional<std::uint16_t> m_place;
};

std::int64_t figure(const StockEntry &entry, StockOrder order)
{
    switch (order) {
    case StockOrder::Here:
        return entry.here;
    case StockOrder::Free:
        return entry.free;
    case StockOrder::Trailer:
        return entry.trailer;
    case StockOrder::Kept:
        return entry.kept;
    case StockOrder::Number:
    case StockOrder::Due:
        break;
    }
    return 0;
}

} // namespace

bool liesAt(const BalanceKey &pieces, const std::string &where, const Ledger &ledger)
{
    if (where.empty() || where == Narrowing::Catalogue)
        return true;
    const Place *place = ledger.place(pieces.place);
    if (place == nullptr)
        return false;
    if (where == Narrowing::Shop)
        return isStock(place->kind) && place->kind != PlaceKind::Drawer;
    if (where == Narrowing::Trailer)
        return place->kind == PlaceKind::Drawer;
    if (where == Narrowing::Away)
        return place->kind == PlaceKind::Borrower || place->kind == PlaceKind::Repair;
    if (where == Narrowing::Cars)
        return place->kind == PlaceKind::Car;
    return place->id == where;
}

std::vector<std::uint32_t> sifted(const StockBook &book, const Narrowing &narrowing)
{
    const Sieve sieve(book, narrowing);
    std::vector<std::uint32_t> found;
    const auto look = [&](std::size_t at) {
        if (sieve.lets(book.entries[at]))
            found.push_back(static_cast<std::uint32_t>(at));
    };
    std::size_t next = 0;
    if (!narrowing.ports.empty()) { // Few of the catalogue's have them.
        const Catalogue &catalogue = book.workshop->catalogue;
        for (const PartIndex at : catalogue.withAny(narrowing.ports))
            look(at);
        next = catalogue.parts().size();
    }
    for (; next < book.entries.size(); ++next)
        look(next);
    const bool down = narrowing.downwards;
    if (narrowing.order == StockOrder::Number && down)
        std::reverse(found.begin(), found.end());
    else if (narrowing.order == StockOrder::Due) // What nobody expects comes last either way.
        std::stable_sort(found.begin(), found.end(), [&](std::uint32_t one, std::uint32_t other) {
            const std::string &a = book.entries[one].due;
            const std::string &b = book.entries[other].due;
            return a.empty() || b.empty() ? !a.empty() && b.empty() : down ? b < a : a < b;
        });
    else if (narrowing.order != StockOrder::Number)
        std::stable_sort(found.begin(), found.end(), [&](std::uint32_t one, std::uint32_t other) {
            const auto a = figure(book.entries[one], narrowing.order);
            const auto b = figure(book.entries[other], narrowing.order);
            return down ? b < a : a < b;
        });
    return found;
}

} // namespace flarestock
