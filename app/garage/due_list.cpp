// SPDX-License-Identifier: MIT

#include "app/garage/due_list.h"

#include "app/stockroom/asked.h"
#include "app/stockroom/picking.h"
#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

Result<const Event *> eventAsked(const std::string &typed, const Garage &garage)
{
    std::vector<std::string_view> ids;
    for (const Event &one : garage.workshop->season.events()) {
        if (sameFolded(one.id, typed))
            return &one;
        ids.push_back(one.id);
    }
    const std::string_view near = nearestWord(typed, ids);
    return problem(typed, "is no event of the season",
                   near.empty() ? "Write it into season.csv, and import that."
                                : "Perhaps " + std::string(near) + " is meant.");
}

/// What is free of a part, as the lines of the list take it one after the other.
class FreeParts {
public:
    explicit FreeParts(const Workshop &workshop) : m_workshop(workshop) {}
    [[nodiscard]] DuePart take(const Part &part, std::int64_t need)
    {
        const auto [at, isNew] = m_left.try_emplace(part.number, 0);
        if (isNew) {
            for (const auto &[key, quantity] : freePieces(part, m_workshop, {}))
                at->second += quantity;
        }
        const DuePart taken{&part, need, std::min(need, at->second)};
        at->second -= taken.free;
        return taken;
    }

private:
    const Workshop &m_workshop;
    std::map<std::string, std::int64_t> m_left;
};

/// Of work that replaces it.
void addParts(DueLine &line, const Garage &garage, FreeParts &free)
{
    const FittedPiece &piece = *line.work.piece;
    if (const Part *part = garage.workshop->part(piece.piece.part))
        line.parts.push_back(free.take(*part, piece.quantity));
    const auto words = garage.words.find(piece.position);
    if (words == garage.words.end())
        return;
    for (const auto &[ring, count] : words->second.rings) {
        if (const Part *part = garage.workshop->part(ring))
            line.parts.push_back(free.take(*part, count));
    }
}

/// The day on which it has to be done.
std::string byOf(const DueWork &work, const std::vector<ComingEvent> &events,
                 const std::string &today)
{
    if (work.standing >= DueStanding::Now)
        return today;
    std::string by;
    for (const ComingEvent &event : events) {
        const bool stopped = !work.stops.empty() && work.stops.front() == event.id;
        if ((event.id == work.before || stopped) && (by.empty() || event.firstDay < by))
            by = event.firstDay;
    }
    return by.empty() ? work.lastDay : by;
}

/// The events of a car that were asked about.
std::vector<ComingEvent> eventsAsked(const Garage &garage, const std::string &car,
                                     const DueListAsked &asked, const Event *last)
{
    auto events = garage.eventsOf(car, asked.today);
    std::erase_if(events, [&](const ComingEvent &one) {
        return (last && one.firstDay > last->firstDay) ||
               (!asked.by.empty() && one.firstDay > asked.by);
    });
    return events;
}

Result<std::vector<std::string>> carsAsked(const Garage &garage, const DueListAsked &asked)
{
    if (!asked.car.empty()) {
        const auto car = carAsked(asked.car, garage.workshop->ledger);
        if (!car)
            return tl::unexpected(car.error());
        return std::vector<std::string>{(*car)->id};
    }
    std::vector<std::string> cars;
    for (const auto &[car, life] : garage.lives)
        cars.push_back(car);
    return cars;
}

} // namespace

Result<std::vector<DueLine>> dueList(const Garage &garage, const DueListAsked &asked)
{
    const auto cars = carsAsked(garage, asked);
    if (!cars)
        return tl::unexpected(cars.error());
    const Event *last = nullptr;
    if (!asked.event.empty()) {
        const auto event = eventAsked(asked.event, garage);
        if (!event)
            return tl::unexpected(event.error());
        last = *event;
    }
    std::vector<DueLine> lines;
    for (const std::string &car : *cars) {
        const CarLife &life = garage.life(car);
        const DueAsked due{&life, eventsAsked(garage, car, asked, last), asked.today, asked.by};
        for (const FittedPiece &piece : life.fitted) {
            for (DueWork &work :
                 dueOf(piece, garage.kindOf(piece), garage.intervalsOf(piece, car), due)) {
                if (work.standing == DueStanding::Fine && !asked.all)
                    continue;
                const std::string by = byOf(work, due.events, asked.today);
                lines.push_back({car, std::move(work), garage.said(piece), {}, by});
            }
        }
    }
    std::stable_sort(lines.begin(), lines.end(), [](const DueLine &a, const DueLine &b) {
        return a.work.standing != b.work.standing ? a.work.standing > b.work.standing : a.by < b.by;
    });
    FreeParts free(*garage.workshop);
    std::set<const FittedPiece *> replaced; // By day or by use: once.
    for (DueLine &line : lines) {
        if (line.work.todo == Work::Replaced && line.isDue() &&
            replaced.insert(line.work.piece).second)
            addParts(line, garage, free);
    }
    return lines;
}

Result<DueInShop> dueInShop(const Workshop &workshop, const ShopFile &file,
                            const std::string &today)
{
    auto read = Garage::of(workshop, file);
    if (!read)
        return tl::unexpected(read.error());
    DueInShop due{std::make_shared<const Garage>(std::move(*read)), {}};
    DueListAsked all;
    all.today = today;
    auto lines = dueList(*due.garage, all);
    if (!lines)
        return tl::unexpected(lines.error());
    due.lines = std::move(*lines);
    return due;
}

} // namespace flarestock
