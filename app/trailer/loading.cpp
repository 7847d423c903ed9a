// SPDX-License-Identifier: MIT

#include "app/trailer/loading.h"

#include "app/stockroom/stock_line.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

bool isDrawer(const Workshop &workshop, const std::string &place)
{
    const Place *found = workshop.ledger.place(place);
    return found && found->kind == PlaceKind::Drawer;
}

bool isAskedFor(const LoadAsked &asked, const std::string &place, const std::string &part)
{
    return (asked.drawer.empty() || asked.drawer == place) &&
           (asked.parts.empty() || asked.parts.contains(part));
}

std::int64_t leastAt(const Workshop &workshop, const std::string &part, const std::string &place)
{
    const auto kept = workshop.notes.keepings.find({part, place});
    return kept == workshop.notes.keepings.end() ? 0 : kept->second.least;
}

/// The order in which places stand in the shop: the nearest first.
std::size_t nearness(const Workshop &workshop, const std::string &place)
{
    const auto places = workshop.ledger.places();
    const auto found = std::find_if(places.begin(), places.end(),
                                    [&](const Place &one) { return one.id == place; });
    return static_cast<std::size_t>(found - places.begin());
}

class Loading {
public:
    Loading(const Workshop &workshop, const LoadAsked &asked)
        : m_workshop(workshop), m_asked(asked), m_stock(stockLines(workshop, {}, asked.day))
    {
        std::stable_sort(
            m_stock.begin(), m_stock.end(), [this](const StockLine &a, const StockLine &b) {
                return nearness(m_workshop, a.key.place) < nearness(m_workshop, b.key.place);
            });
    }

    std::vector<LoadLine> lines()
    {
        std::vector<LoadLine> all;
        for (const auto &[at, keeping] : m_workshop.notes.keepings) {
            const Part *part = m_workshop.part(at.first);
            if (!part || !isDrawer(m_workshop, at.second))
                continue;
            LoadLine line{part, keeping, freeAt(part->number, at.second), 0, {}, 0, {}};
            if (line.has < keeping.least)
                line.lacks = keeping.most - line.has;
            all.push_back(std::move(line));
        }
        std::stable_sort(all.begin(), all.end(), [this](const LoadLine &a, const LoadLine &b) {
            return nearness(m_workshop, a.keeping.place) < nearness(m_workshop, b.keeping.place);
        });
        for (LoadLine &line : all) // Those that are not asked for, too: they come first.
            bring(line);
        std::erase_if(all, [this](const LoadLine &line) {
            return !isAskedFor(m_asked, line.keeping.place, line.part->number);
        });
        return all;
    }

private:
    [[nodiscard]] std::int64_t freeAt(const std::string &part, const std::string &place) const
    {
        std::int64_t sum = 0;
        for (const StockLine &line : m_stock)
            if (line.part->number == part && line.key.place == place)
                sum += line.free;
        return sum;
    }

    void bring(LoadLine &line)
    {
        std::int64_t lacking = line.lacks;
        for (StockLine &from : m_stock) {
            if (from.part != line.part || isDrawer(m_workshop, from.key.place))
                continue;
            if (line.lacks > 0 && from.free < from.onHand)
                line.held +=
                    (line.held.empty() ? "" : "; ") + from.key.place + ": " + from.notFreeBecause();
            const std::int64_t spare = freeAt(line.part->number, from.key.place) -
                                       leastAt(m_workshop, line.part->number, from.key.place);
            // A piece of hose is brought whole, or it would have to be cut first.
            const bool isWhole = isLength(line.part->unit);
            const std::int64_t take = isWhole ? from.free : std::min({lacking, spare, from.free});
            if (lacking <= 0 || take <= 0 || take > spare || (isWhole && take < from.onHand))
                continue;
            line.bring.push_back({from.key, take});
            from.free -= take;
            from.onHand -= take;
            lacking -= take;
        }
        line.toBuy = std::max<std::int64_t>(0, lacking);
    }

    const Workshop &m_workshop;
    const LoadAsked &m_asked;
    std::vector<StockLine> m_stock; ///< Nearest first; what is brought is gone of it.
};

/// Lots of which a box was opened, or found incomplete, by the newest look.
std::set<LotKey> openBoxes(const Workshop &workshop)
{
    std::set<LotKey> open;
    for (const OpenedBox &box : workshop.notes.opened)
        if (!box.lot.empty() && !box.taken.empty())
            open.insert({box.part, box.lot});
    std::map<LotKey, bool> lacks;
    for (const BoxCheck &look : workshop.looks)
        lacks[{look.part, look.lot}] = !look.missing.empty();
    for (const auto &[box, isIncomplete] : lacks)
        if (isIncomplete)
            open.insert(box);
    return open;
}

std::string homeOf(const Workshop &workshop, const Part &part)
{
    std::string holding;
    for (const Place &place : workshop.ledger.places()) {
        if (!isStock(place.kind) || place.kind == PlaceKind::Drawer)
            continue;
        if (workshop.notes.keepings.contains({part.number, place.id}))
            return place.id;
        for (const auto &[key, held] : workshop.ledger.balancesOf(part.number))
            if (holding.empty() && key.place == place.id && held.quantity > 0)
                holding = place.id;
    }
    return holding;
}

std::optional<Misplaced> whyMisplaced(const StockLine &line, const std::set<LotKey> &open)
{
    if (line.key.condition == PieceCondition::NotToBeUsed)
        return Misplaced::NotToBeUsed;
    if (line.key.condition == PieceCondition::ToBeChecked)
        return Misplaced::ToBeChecked;
    if (!line.useBy.empty())
        return Misplaced::PastItsDay;
    if (open.contains({line.key.part, line.key.lot}))
        return Misplaced::OpenBox;
    return std::nullopt;
}

} // namespace

std::vector<LoadLine> loadLines(const Workshop &workshop, const LoadAsked &asked)
{
    return Loading(workshop, asked).lines();
}

std::vector<Movement> loadMovements(const std::vector<LoadLine> &lines)
{
    std::vector<Movement> movements;
    for (const LoadLine &line : lines)
        for (const LoadTake &take : line.bring)
            movements.push_back(
                movementOf(take.from, take.quantity, line.keeping.place, Deed::Move));
    return movements;
}

std::string_view text(Misplaced why) noexcept
{
    constexpr std::array<std::string_view, 6> words = {
        "does not belong here", "more than it is to hold", "to be checked", "not to be used",
        "past its day",         "its box is open"};
    return words[static_cast<std::size_t>(why)];
}

std::vector<UnloadLine> unloadLines(const Workshop &workshop, const LoadAsked &asked)
{
    const auto open = openBoxes(workshop);
    std::map<PartAt, std::int64_t> stays; // What a drawer may still hold of it.
    for (const auto &[at, keeping] : workshop.notes.keepings)
        stays[at] = keeping.most;
    std::vector<UnloadLine> lines;
    for (const StockLine &line : stockLines(workshop, {}, asked.day)) {
        if (!isDrawer(workshop, line.key.place) ||
            !isAskedFor(asked, line.key.place, line.part->number))
            continue;
        UnloadLine out{
            line.part, {line.key, line.onHand}, Misplaced::NotKept, homeOf(workshop, *line.part)};
        const auto kept = stays.find({line.part->number, line.key.place});
        if (const auto why = whyMisplaced(line, open)) {
            out.why = *why;
        } else if (kept != stays.end()) {
            const std::int64_t here = std::min(kept->second, line.onHand);
            kept->second -= here;
            out.take.quantity = line.onHand - here;
            out.why = Misplaced::Surplus;
            if (out.take.quantity == 0 || isLength(line.part->unit))
                continue; // A longer piece is no surplus.
        }
        lines.push_back(std::move(out));
    }
    std::stable_sort(lines.begin(), lines.end(), [&](const UnloadLine &a, const UnloadLine &b) {
        return nearness(workshop, a.take.from.place) < nearness(workshop, b.take.from.place);
    });
    return lines;
}

std::vector<Movement> unloadMovements(const std::vector<UnloadLine> &lines,
                                      const std::string &otherwise)
{
    std::vector<Movement> movements;
    for (const UnloadLine &line : lines) {
        const std::string &to = line.home.empty() ? otherwise : line.home;
        if (!to.empty())
            movements.push_back(movementOf(line.take.from, line.take.quantity, to, Deed::Move));
    }
    return movements;
}

} // namespace flarestock
