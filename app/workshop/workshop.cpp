// SPDX-License-Identifier: MIT

#include "app/workshop/workshop.h"

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
        stock.pieces.insert(stock.pieces.begin(), got); // Cut to length before.
}

} // namespace

Shelf withLooks(Shelf shelf, const std::vector<BoxCheck> &looks)
{
    std::map<std::pair<std::string, std::string>, std::vector<std::string>> newest;
    for (const auto &look : looks)
        newest[{look.part, look.lot}] = look.missing;
    for (const auto &[box, missing] : newest) {
        const auto found = shelf.find(box.first);
        if (found != shelf.end() && found->second.free.amount.sign() > 0)
            found->second.missing.insert(found->second.missing.end(), missing.begin(),
                                         missing.end());
    }
    return shelf;
}

Result<std::shared_ptr<const Workshop>> Workshop::read(const ShopFile &file)
{
    const auto documents = file.documents();
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
    auto ledger = file.ledger();
    if (!ledger)
        return tl::unexpected(ledger.error());
    const auto looks = file.boxChecks();
    if (!looks)
        return tl::unexpected(looks.error());
    const auto records = file.records();
    if (!records)
        return tl::unexpected(records.error());
    auto notes = ShopNotes::of(*records);
    if (!notes)
        return tl::unexpected(notes.error());
    const auto barred = barredLots(notes->lots, {}, {});
    auto shelf = withLooks(ledger->shelf(*catalogue, {{}, &barred}), *looks);
    auto made = std::make_shared<Workshop>(
        Workshop{file.settings(), file.path(), std::move(*catalogue), std::move(*templates),
                 std::move(*builds), std::move(*ledger), std::move(shelf), nullptr,
                 std::move(*notes), *looks});
    made->closer = std::make_unique<const JointCloser>(made->catalogue);
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
    const auto barred = barredLots(notes.lots, plan.car, plan.by);
    Shelf free = ledger.shelf(catalogue, {plan.id, &barred});
    for (const auto &[key, claim] : ledger.claims()) {
        const Part *part = catalogue.find(key.part);
        if (key.build == plan.id && claim.issued > 0 && part)
            addIssued(free[part->number], *part, claim.issued, worthAt(ledger, *part, plan.car));
    }
    return withLooks(std::move(free), looks);
}

const BuildPlan *Workshop::build(std::string_view id) const noexcept
{
    const auto found = std::find_if(builds.begin(), builds.end(),
                                    [id](const BuildPlan &build) { return build.id == id; });
    return found == builds.end() ? nullptr : &*found;
}

} // namespace flarestock
