// SPDX-License-Identifier: MIT

#include "app/trailer/spare_book.h"

#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"
#include "model/exchange/spares/spares_csv.h"

#include <algorithm>

namespace flarestock {

namespace {

template <class Read>
auto readOr(const TextFiles &documents, std::string_view name, Read read)
    -> decltype(read(std::string_view(), std::string()))
{
    const auto found = documents.find(name);
    if (found == documents.end())
        return {};
    return read(found->second, found->first);
}

/// Whether what was used there is known: the journal was kept then, or used.csv tells of it.
bool isKnown(const Event &event, const SpareBook &book, std::string_view today)
{
    if (event.lastDay >= today)
        return false;
    if (!book.movements.empty() && dayOf(book.movements.front().at) <= event.firstDay)
        return true;
    return std::any_of(book.pastUses.begin(), book.pastUses.end(),
                       [&event](const PastUse &use) { return sameFolded(use.event, event.id); });
}

/// Whether it took a piece out of stock for good.
bool isSpent(const Movement &movement, const Ledger &ledger)
{
    const Place *from = ledger.place(movement.from);
    const Place *to = ledger.place(movement.to);
    return from && to && isStock(from->kind) && movement.deed != Deed::Issue &&
           (to->kind == PlaceKind::Car || to->kind == PlaceKind::UsedUp ||
            to->kind == PlaceKind::Scrap);
}

/// The event at which a movement used the part; nullptr where it is no use.
const Event *usedAt(const Movement &movement, const Workshop &workshop, const PartRunning &running)
{
    if (!isSpent(movement, workshop.ledger))
        return nullptr;
    if (const Event *named = workshop.season.event(movement.document))
        return named;
    const std::string day = dayOf(movement.at);
    const Event *last = nullptr;
    for (const Event &event : workshop.season.events())
        if (event.firstDay <= day && running.goesTo(event))
            last = &event;
    const Place *from = workshop.ledger.place(movement.from);
    const bool isThere = last && (day <= last->lastDay || from->kind == PlaceKind::Drawer);
    return isThere ? last : nullptr;
}

Decimal ranIn(const Use &use, RunningIn in)
{
    return in == RunningIn::Runs    ? Decimal(use.runs)
           : in == RunningIn::Hours ? use.hours
                                    : Decimal(use.eventCount());
}

} // namespace

Result<SpareBook> SpareBook::of(const ShopFile &file)
{
    const auto documents = file.documents();
    if (!documents)
        return tl::unexpected(documents.error());
    auto spendings = readOr(*documents, "spares.csv", readSpendings);
    if (!spendings)
        return tl::unexpected(spendings.error());
    auto uses = readOr(*documents, "used.csv", readPastUses);
    if (!uses)
        return tl::unexpected(uses.error());
    auto movements = file.movements();
    if (!movements)
        return tl::unexpected(movements.error());
    auto records = file.records();
    if (!records)
        return tl::unexpected(records.error());
    std::set<MovementId> back;
    for (const Movement &movement : *movements)
        if (movement.reverses)
            back.insert({movement.id, *movement.reverses});
    std::erase_if(*movements,
                  [&back](const Movement &movement) { return back.contains(movement.id); });
    std::erase_if(*records, [](const Record &record) { return record.kind != RecordKind::Outing; });
    return SpareBook{
        std::move(*spendings), std::move(*uses), std::move(*movements), std::move(*records), {}};
}

const PartSpending *SpareBook::spending(std::string_view part) const
{
    const auto found =
        std::find_if(spendings.begin(), spendings.end(), [part](const PartSpending &spending) {
            return sameFolded(spending.part, part);
        });
    return found == spendings.end() ? nullptr : &*found;
}

SeenUses seenUses(const Part &part, const LookedUpIn &in)
{
    SeenUses seen;
    for (const Event &event : in.workshop.season.events()) {
        const auto ran = in.running.allAt(event);
        if (!ran || !in.running.goesTo(event) || !isKnown(event, in.book, in.today))
            continue;
        seen.events.push_back(event.id);
        seen.history.seen += *ran;
        for (const PastUse &use : in.book.pastUses)
            if (sameFolded(use.event, event.id) && sameFolded(use.part, part.number))
                seen.history.uses += use.pieces;
        for (const Movement &movement : in.book.movements)
            if (movement.part == part.number && usedAt(movement, in.workshop, in.running) == &event)
                seen.history.uses += Quantity::ofSmallest(movement.quantity, part.unit).amount;
    }
    seen.history.uses = seen.history.uses.stripped();
    seen.history.seen = seen.history.seen.stripped();
    return seen;
}

std::vector<Decimal> runSoFar(const Part &part, const LookedUpIn &in)
{
    std::vector<Decimal> all;
    for (const auto &[car, count] : in.running.fitted()) {
        const std::size_t had = all.size();
        const auto life = in.book.lives.find(car);
        if (life != in.book.lives.end())
            for (const FittedPiece &piece : life->second.fitted)
                if (piece.piece.part == part.number && all.size() - had < std::size_t(count))
                    all.push_back(ranIn(piece.sinceFitted, in.running.per()));
        std::string since;
        for (const Movement &movement : in.book.movements)
            if (movement.part == part.number && movement.to == car)
                since = dayOf(movement.at);
        Decimal ran;
        for (const Event &event : in.workshop.season.events())
            if (event.takes(car) && event.lastDay < in.today && event.firstDay > since)
                ran += in.running.ranAt(event, car).value_or(0);
        all.resize(had + static_cast<std::size_t>(count), ran);
    }
    return all;
}

} // namespace flarestock
