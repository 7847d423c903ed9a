// SPDX-License-Identifier: MIT

#include "app/workshop/workshop.h"

#include "app/workshop/documents.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

/// The text of a document, or an empty one: a shop may have no builds yet.
std::string documentNamed(const TextFiles &documents, std::string_view name)
{
    const auto found = documents.find(name);
    return found == documents.end() ? std::string() : found->second;
}

/// All that lies of a part at a place.
Balance worthAt(const Ledger &ledger, const Part &part, const std::string &place)
{
    Balance sum;
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        if (key.place != place)
            continue;
        sum.quantity += held.quantity;
        sum.value += held.value;
    }
    return sum;
}

/// What a build has got already is on hand for it, with what it cost.
void addIssued(FreeStock &stock, const Part &part, std::int64_t issued, const Balance &atCar)
{
    const Quantity got = Quantity::ofSmallest(issued, part.unit);
    const auto add = [&got](Quantity &to) { to = {to.amount + got.amount, got.unit}; };
    add(stock.onHand);
    add(stock.free);
    stock.value = stock.value + Decimal::scaled(shareOf(atCar, issued), 6);
    if (isLength(part.unit))
        stock.cutBefore = got;
}

Bars barsOfBuilds(const LotBook &lots, const std::vector<BuildPlan> &builds)
{
    std::vector<Due> due;
    due.reserve(builds.size());
    for (const BuildPlan &plan : builds)
        due.push_back({plan.id, plan.car, plan.by});
    return barsOf(lots, due);
}

/// Whether something of a lot is in stock or at a car.
bool isHere(const LotKey &lot, const Ledger &ledger)
{
    for (const auto &[key, held] : ledger.balancesOf(lot.part)) {
        const Place *place = ledger.place(key.place);
        if (key.lot == lot.lot && held.quantity > 0 && place &&
            (isStock(place->kind) || place->kind == PlaceKind::Car))
            return true;
    }
    return false;
}

} // namespace

Shelf withLooks(Shelf shelf, const Boxes &boxes, const Ledger &ledger)
{
    std::map<LotKey, BoxCheck> newest;
    for (const auto &look : boxes.looks)
        newest.insert_or_assign(LotKey{look.part, look.lot}, look);
    for (const OpenedBox &opened : boxes.opened) {
        // That box is none any more; the others of its lot are as they were seen.
        const auto look = newest.find({opened.part, opened.boxLot});
        if (look == newest.end() || opened.lot == opened.boxLot || opened.at < look->second.at)
            continue;
        for (const std::string &missing : opened.missing) {
            auto &all = look->second.missing;
            if (const auto at = std::find(all.begin(), all.end(), missing); at != all.end())
                all.erase(at);
        }
    }
    const auto lacks = [&](const LotKey &box, const std::vector<std::string> &missing) {
        const auto found = shelf.find(box.part);
        if (found != shelf.end() && found->second.free.amount.sign() > 0 && isHere(box, ledger))
            found->second.missing.insert(found->second.missing.end(), missing.begin(),
                                         missing.end());
    };
    for (const auto &[box, look] : newest)
        lacks(box, look.missing);
    for (const OpenedBox &opened : boxes.opened) {
        const auto look = newest.find({opened.part, opened.lot});
        if (look == newest.end() || look->second.at <= opened.at)
            lacks({opened.part, opened.lot}, opened.taken);
    }
    return shelf;
}

bool isCounted(const Part &part, const FreeStock &stock)
{
    return !isUsedByMeasure(part.kind) && stock.onHand.amount.sign() > 0;
}

Shelf withLevels(Shelf shelf, const ShopNotes &notes, const Catalogue &catalogue)
{
    for (const auto &[at, seen] : notes.levels) {
        const Part *part = catalogue.find(seen.part);
        if (!part || isLength(part->unit))
            continue;
        const auto counted = shelf.find(part->number);
        if (counted != shelf.end() && isCounted(*part, counted->second))
            continue;
        FreeStock &stock = shelf[part->number];
        stock.onHand.unit = part->unit;
        stock.free.unit = part->unit;
        if (stock.level && *stock.level >= seen.level)
            continue;
        stock.level = seen.level;
        stock.seen = std::string(text(seen.level)) + " at " + seen.place + " on " + dayOf(seen.at);
    }
    return shelf;
}

Result<std::shared_ptr<const Workshop>> Workshop::read(const ShopFile &file)
{
    auto documents = file.documents();
    if (!documents)
        return tl::unexpected(documents.error());
    auto catalogue = readCatalogue(*documents);
    if (!catalogue)
        return tl::unexpected(catalogue.error());
    auto templates = readTemplates(*documents);
    if (!templates)
        return tl::unexpected(templates.error());
    auto builds = readBuilds(documentNamed(*documents, "builds.toml"), "builds.toml");
    if (!builds)
        return tl::unexpected(builds.error());
    auto season = readSeasonOf(*documents);
    if (!season)
        return tl::unexpected(season.error());
    auto ledger = file.ledger();
    if (!ledger)
        return tl::unexpected(ledger.error());
    const auto looks = file.boxChecks();
    if (!looks)
        return tl::unexpected(looks.error());
    const auto records = file.records();
    if (!records)
        return tl::unexpected(records.error());
    auto notes = ShopNotes::of(*records, *ledger);
    if (!notes)
        return tl::unexpected(notes.error());
    auto bought = Bought::of(*records, *ledger);
    if (!bought)
        return tl::unexpected(bought.error());
    const auto barred = barredLots(notes->lots, {}, {});
    auto bars = barsOfBuilds(notes->lots, *builds);
    auto shelf = withLevels(withLooks(ledger->shelf(*catalogue, {{}, &barred, &bars}),
                                      {*looks, notes->opened}, *ledger),
                            *notes, *catalogue);
    auto madeUp = madeUpParts(*notes, *catalogue);
    auto made = std::make_shared<Workshop>(
        Workshop{file.settings(), file.path(), std::move(*catalogue), std::move(*templates),
                 std::move(*builds), std::move(*ledger), std::move(shelf), nullptr,
                 std::move(*notes), *looks, std::move(bars), std::move(madeUp), std::move(*bought),
                 std::move(*season), photosOutOf(std::move(*documents))});
    made->closer = std::make_unique<const JointCloser>(made->catalogue);
    for (const auto &claim : made->ledger.claims())
        made->claimsBy[claim.first.build].push_back(&claim);
    return std::shared_ptr<const Workshop>(std::move(made));
}

Result<std::shared_ptr<const Workshop>> Workshop::open(const std::filesystem::path &path)
{
    const auto file = ShopFile::open(path, OpenMode::ReadOnly);
    if (!file)
        return tl::unexpected(file.error());
    return read(*file);
}

Shelf Workshop::shelfFor(const BuildPlan &plan) const
{
    return shelfFor(plan, ledger, bars);
}

Shelf Workshop::shelfFor(const BuildPlan &plan, const Ledger &now, const Bars &barsThen) const
{
    const auto barred = barredLots(notes.lots, plan.car, plan.by);
    Shelf free = now.shelf(catalogue, {plan.id, &barred, &barsThen});
    for (const auto &[key, claim] : now.claims()) {
        const Part *part = catalogue.find(key.part);
        if (key.build == plan.id && claim.issued > 0 && part)
            addIssued(free[part->number], *part, claim.issued, worthAt(now, *part, plan.car));
    }
    return withLevels(withLooks(std::move(free), {looks, notes.opened}, now), notes, catalogue);
}

std::vector<const Claims::value_type *> Workshop::claimsOf(std::string_view build) const
{
    const auto found = claimsBy.find(build);
    return found == claimsBy.end() ? std::vector<const Claims::value_type *>() : found->second;
}

const Part *Workshop::part(std::string_view number) const
{
    if (const Part *part = catalogue.find(number))
        return part;
    const auto found = madeUp.find(folded(number));
    return found == madeUp.end() ? nullptr : &found->second;
}

const BuildPlan *Workshop::build(std::string_view id) const noexcept
{
    const auto found = std::find_if(builds.begin(), builds.end(),
                                    [id](const BuildPlan &build) { return build.id == id; });
    return found == builds.end() ? nullptr : &*found;
}

} // namespace flarestock
