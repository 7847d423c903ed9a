// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/kept_backups.h"

#include <QDateTime>
#include <QRegularExpression>

#include <cassert>
#include <set>

namespace flarestock {

namespace {

constexpr std::int64_t AfterYear9999 = 253'402'300'800'000;
constexpr auto TimeInName = "yyyy-MM-ddTHH-mm-ssZ";

std::filesystem::path folderFor(const std::filesystem::path &shop)
{
    return shop.string() + ".backups";
}

QDateTime timeOf(std::int64_t at)
{
    return QDateTime::fromMSecsSinceEpoch(at, Qt::UTC);
}

std::string nameOf(std::int64_t number, std::int64_t at)
{
    return QStringLiteral("backup-%1-%2.flarestock")
        .arg(number, 4, 10, QLatin1Char('0'))
        .arg(timeOf(at).toString(QString::fromLatin1(TimeInName)))
        .toStdString();
}

std::optional<KeptBackup> backupNamed(const std::filesystem::path &path)
{
    static const QRegularExpression form(
        QStringLiteral(R"(\Abackup-(\d{4,15})-(\d{4}-\d\d-\d\dT\d\d-\d\d-\d\dZ)\.flarestock\z)"));
    const auto match = form.match(QString::fromStdString(path.filename().string()));
    if (!match.hasMatch())
        return {};
    auto time = QDateTime::fromString(match.captured(2), QString::fromLatin1(TimeInName));
    if (!time.isValid())
        return {};
    time.setTimeSpec(Qt::UTC);
    return KeptBackup{path, match.captured(1).toLongLong(), time.toMSecsSinceEpoch()};
}

/// Those that are neither among the newest nor the last of their month.
std::vector<KeptBackup> outgrown(const std::vector<KeptBackup> &newestFirst)
{
    std::vector<KeptBackup> old;
    std::set<std::pair<int, int>> months;
    for (std::size_t i = 0; i < newestFirst.size(); ++i) {
        const auto day = timeOf(newestFirst[i].at).date();
        const bool lastOfMonth = months.emplace(day.year(), day.month()).second;
        if (i >= NewestKept && !lastOfMonth)
            old.push_back(newestFirst[i]);
    }
    return old;
}

Result<Verification> provenWhole(const std::filesystem::path &path)
{
    auto found = ShopFile::verify(path);
    if (found && !found->whole)
        return tl::unexpected(Problem{path.string(), "is not whole: " + found->problems.front(),
                                      "Do not use it; run flarestock verify on the shop itself."});
    return found;
}

Result<void> haveFolder(const std::filesystem::path &folder)
{
    std::error_code wrong;
    std::filesystem::create_directory(folder, wrong);
    if (!std::filesystem::is_directory(folder))
        return tl::unexpected(Problem{folder.string(), "cannot be made",
                                      "Check who may write there, or name a file with --to."});
    return {};
}

} // namespace

std::vector<KeptBackup> keptBackups(const std::filesystem::path &shop)
{
    std::vector<KeptBackup> kept;
    std::error_code wrong;
    for (std::filesystem::directory_iterator at(folderFor(shop), wrong), end; !wrong && at != end;
         at.increment(wrong)) {
        if (auto backup = backupNamed(at->path()))
            kept.push_back(std::move(*backup));
    }
    std::sort(kept.begin(), kept.end(), [](const KeptBackup &a, const KeptBackup &b) {
        return std::tie(b.number, b.at) < std::tie(a.number, a.at);
    });
    return kept;
}

bool isBackupDue(const std::vector<KeptBackup> &newestFirst, std::int64_t now)
{
    if (newestFirst.empty())
        return true;
    const auto age = now - newestFirst.front().at;
    return age < 0 || age > BackupIsOldAfter;
}

Result<Verification> provenBackup(const ShopFile &shop, const std::filesystem::path &to)
{
    if (const auto made = shop.backUp(to); !made)
        return tl::unexpected(made.error());
    auto found = provenWhole(to);
    if (!found) {
        std::error_code ignored;
        std::filesystem::remove(to, ignored); // Made just now, and of no use to anybody.
    }
    return found;
}

Result<GoodBackup> keepBackup(const ShopFile &shop, std::int64_t now)
{
    assert(now >= 0 && now < AfterYear9999);
    const auto folder = folderFor(shop.path());
    if (const auto made = haveFolder(folder); !made)
        return tl::unexpected(made.error());
    const auto before = keptBackups(shop.path());
    const auto number = before.empty() ? 1 : before.front().number + 1;
    const KeptBackup backup{folder / nameOf(number, now), number, now - now % 1000};
    auto found = provenBackup(shop, backup.path);
    if (!found)
        return tl::unexpected(found.error());
    for (const auto &old : outgrown(keptBackups(shop.path()))) {
        std::error_code ignored; // It is tried again with the next one.
        std::filesystem::remove(old.path, ignored);
    }
    return GoodBackup{backup, std::move(*found)};
}

std::optional<GoodBackup> newestGoodBackup(const std::filesystem::path &shop)
{
    for (const auto &backup : keptBackups(shop)) {
        if (auto found = provenWhole(backup.path))
            return GoodBackup{backup, std::move(*found)};
    }
    return {};
}

Result<Verification> restore(const std::filesystem::path &backup, const std::filesystem::path &to)
{
    if (auto whole = provenWhole(backup); !whole)
        return whole;
    const auto shop = ShopFile::open(backup, OpenMode::ReadOnly);
    if (!shop)
        return tl::unexpected(shop.error());
    return provenBackup(*shop, to);
}

} // namespace flarestock
