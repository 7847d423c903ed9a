// SPDX-License-Identifier: MIT

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/rewriting.h"
#include "app/desk/launch/working_out.h"
#include "app/desk/shop/aside.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/stockroom/deed.h"
#include "app/workshop/clock.h"
#include "app/workshop/demo_shop.h"
#include "app/workshop/workshop.h"
#include "model/storage/server/server_address.h"
#include "model/storage/shop_watch.h"
#include "model/storage/trailer/travelling.h"
#include "model/storage/upkeep/kept_backups.h"
#include "model/storage/upkeep/shop_state.h"

#include <QFileInfo>

#include <algorithm>

namespace flarestock {

namespace {

constexpr auto BuildsDocument = "builds.toml";
constexpr auto AtTheDesk = "desk";

/// The builds with this one changed. Problem: it is not as it was before.
Result<std::string> withChanged(const std::optional<std::string> &newest,
                                const ChangedPlan &changed)
{
    auto builds = readBuilds(newest.value_or(std::string()), BuildsDocument);
    if (!builds)
        return tl::unexpected(builds.error());
    const auto found = std::find_if(builds->begin(), builds->end(), [&](const BuildPlan &other) {
        return other.id == changed.plan.id;
    });
    const std::string name = "build " + changed.plan.id;
    if (found == builds->end())
        return problem(name, "was taken out of the shop just now, so that this change is not in it",
                       "Ask at the other seats, or plan it anew.");
    if (*found != changed.before)
        return problem(name,
                       "was changed at another seat just now, so that this change is not in it",
                       "It is shown as it is now: look at it, then change it again.");
    *found = changed.plan;
    return writeBuilds(*builds);
}

/// Changes this one build of those that the file has by then: another seat may change the others.
Result<void> keepIn(const std::filesystem::path &path, const ChangedPlan &changed)
{
    auto file = ShopFile::open(path, OpenMode::ReadWrite);
    if (!file)
        return tl::unexpected(file.error());
    return file->changeDocument(
        BuildsDocument,
        [&](const std::optional<std::string> &newest) { return withChanged(newest, changed); },
        AtTheDesk, nowMilliseconds());
}

std::string placeTitle(const Workshop &workshop, const std::string &id)
{
    const Place *place = workshop.ledger.place(id);
    return place == nullptr ? id : place->title;
}

/// `state`: what it was written up to before the snapshot was read.
ShopOnDesk shopOf(const std::shared_ptr<const Workshop> &snapshot, const std::string &state);

/// The shop of a file as it is now.
Result<ShopOnDesk> shopNow(const ShopFile &file)
{
    const auto state = shopState(file.path());
    if (!state)
        return tl::unexpected(state.error());
    const auto workshop = Workshop::read(file);
    if (!workshop)
        return tl::unexpected(workshop.error());
    const auto own = Travelling::ownTrip(file);
    if (!own)
        return tl::unexpected(own.error());
    ShopOnDesk shop = shopOf(*workshop, *state);
    if (*own) {
        shop.copy = (*own)->name;
        shop.along = (*own)->places;
    }
    return shop;
}

/// Opens the file anew: another seat may have written meanwhile.
Result<std::shared_ptr<const Wrote>> writeIn(const std::filesystem::path &path,
                                             const MakeAction &make)
{
    auto file = ShopFile::open(path, OpenMode::ReadWrite);
    if (!file)
        return tl::unexpected(file.error());
    const auto before = Workshop::read(*file);
    if (!before)
        return tl::unexpected(before.error());
    const auto made = make(*file, **before);
    if (!made)
        return tl::unexpected(made.error());
    for (const BoxCheck &look : made->looks) {
        if (const auto seen = file->record(look); !seen)
            return tl::unexpected(seen.error());
    }
    if (const auto done = file->append(made->action); !done)
        return tl::unexpected(done.error());
    auto after = shopNow(*file);
    if (!after)
        return tl::unexpected(after.error());
    return std::make_shared<const Wrote>(Wrote{made->action, std::move(*after)});
}

/// The same of a count: the writer itself says what it found.
Result<std::shared_ptr<const Wrote>> countIn(const std::filesystem::path &path,
                                             const MakeCount &make)
{
    auto file = ShopFile::open(path, OpenMode::ReadWrite);
    if (!file)
        return tl::unexpected(file.error());
    const auto before = Workshop::read(*file);
    if (!before)
        return tl::unexpected(before.error());
    const auto count = make(**before);
    if (!count)
        return tl::unexpected(count.error());
    const auto counted = file->append(*count, idWithin(count->id, 1));
    if (!counted)
        return tl::unexpected(counted.error());
    auto after = shopNow(*file);
    if (!after)
        return tl::unexpected(after.error());
    Action action{{count->asRecord()}, {}};
    if (counted->difference) { // Whoever takes it back asks the journal for the rest.
        Movement difference;
        difference.id = *counted->difference;
        action.movements.push_back(difference);
    }
    return std::make_shared<const Wrote>(Wrote{action, std::move(*after), *counted});
}

/// A snapshot, and what the shop was written up to before it was read.
struct Snapshot {
    std::shared_ptr<const Workshop> workshop;
    std::string state;
};

/// Reads the shop anew only where somebody has written since the snapshot.
Result<void> readIn(const Snapshot &known, const LookUp &look)
{
    const std::filesystem::path &path = known.workshop->path;
    auto file = ShopFile::open(path, OpenMode::ReadOnly);
    if (!file)
        return tl::unexpected(file.error());
    if (const auto state = shopState(path); state && *state == known.state)
        return look(*file, *known.workshop);
    const auto workshop = Workshop::read(*file);
    return workshop ? look(*file, **workshop) : tl::unexpected(workshop.error());
}

Result<std::vector<Movement>> historyIn(const std::filesystem::path &path, const std::string &part)
{
    const auto file = ShopFile::open(path, OpenMode::ReadOnly);
    if (!file)
        return tl::unexpected(file.error());
    return file->movements(part);
}

/// Beside the file SQLite writes its log, so that the folder counts too.
bool isReadOnly(const std::filesystem::path &path)
{
    const QFileInfo file(QString::fromStdString(path.string()));
    return !file.isWritable() || !QFileInfo(file.absolutePath()).isWritable();
}

ShopOnDesk::Backups backupsOf(const std::filesystem::path &path)
{
    return {[path]() -> std::optional<std::int64_t> {
                const auto kept = keptBackups(path);
                return kept.empty() ? std::nullopt : std::optional(kept.front().at);
            },
            [path]() -> Result<std::int64_t> {
                const auto file = ShopFile::open(path, OpenMode::ReadOnly);
                if (!file)
                    return tl::unexpected(file.error());
                const auto made = keepBackup(*file, nowMilliseconds());
                if (!made)
                    return tl::unexpected(made.error());
                return made->backup.at;
            }};
}

ShopOnDesk shopOf(const std::shared_ptr<const Workshop> &snapshot, const std::string &state)
{
    const auto workshop = goesAside(snapshot);
    ShopOnDesk shop;
    shop.state = state;
    shop.title = workshop->settings.title;
    shop.file = workshop->path.string();
    shop.builds = workshop->builds;
    for (const auto &[id, form] : *workshop->templates)
        shop.templates.push_back({id, form->title});
    shop.workOut = workOutIn(workshop);
    shop.placeTitle = [workshop](const std::string &id) { return placeTitle(*workshop, id); };
    shop.keep = [path = workshop->path](const ChangedPlan &plan) { return keepIn(path, plan); };
    shop.write = [path = workshop->path](const MakeAction &make) { return writeIn(path, make); };
    shop.count = [path = workshop->path](const MakeCount &make) { return countIn(path, make); };
    shop.rewrite = [path = workshop->path](const MakeTexts &make, const std::string &who) {
        return rewriteShop(path, make, who);
    };
    shop.documents = [path = workshop->path]() -> Result<TextFiles> {
        const auto file = ShopFile::open(path, OpenMode::ReadOnly);
        if (!file)
            return tl::unexpected(file.error());
        return file->documents();
    };
    shop.history = [path = workshop->path](const std::string &part) {
        return historyIn(path, part);
    };
    shop.read = [known = Snapshot{workshop, state}](const LookUp &look) {
        return readIn(known, look);
    };
    shop.change = [path = workshop->path] { return ShopFile::open(path, OpenMode::ReadWrite); };
    shop.workshop = workshop;
    shop.watch = [path = workshop->path](std::function<void()> changed) {
        return std::make_shared<ShopWatch>(path, std::move(changed));
    };
    if (isServer(workshop->path))
        return shop; // Whoever keeps the server keeps its backups and says who may write.
    shop.readOnly = isReadOnly(workshop->path);
    if (!shop.readOnly)
        shop.backups = backupsOf(workshop->path);
    return shop;
}

} // namespace

Result<ShopOnDesk> openShopFile(const std::string &file)
{
    const auto opened = ShopFile::open(file, OpenMode::ReadOnly);
    if (!opened)
        return tl::unexpected(opened.error());
    return shopNow(*opened);
}

Result<ShopOnDesk> makeDemoFile(const std::string &file)
{
    {
        const auto made = makeDemoShop(file, nowMilliseconds());
        if (!made)
            return tl::unexpected(made.error());
    } // Closed again, so that it is opened as any other shop file is.
    return openShopFile(file);
}

} // namespace flarestock
