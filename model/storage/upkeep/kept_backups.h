// SPDX-License-Identifier: MIT
//
// Kept backups: the copies that a shop keeps of itself, in a folder beside its file, by number: the
// last ten, and of each month the last. A number, not a clock, says which is newer; the clock says
// only what a person reads, and which month it was.
//
//   shop.flarestock
//   shop.flarestock.backups/backup-0007-2026-11-28T14-02-33Z.flarestock

#pragma once

#include "model/storage/shop_file.h"

namespace flarestock {

struct KeptBackup {
    std::filesystem::path path;
    std::int64_t number = 0;
    std::int64_t at = 0; ///< Milliseconds since 1970, UTC, as the clock said; whole seconds.
};

/// How many of the newest are kept, whatever their month.
inline constexpr std::size_t NewestKept = 10;
/// How old the newest may be before a further one is offered: a day, in milliseconds.
inline constexpr std::int64_t BackupIsOldAfter = 86'400'000;

/// Newest first; none where there is no folder. Other files in it are passed over.
[[nodiscard]] std::vector<KeptBackup> keptBackups(const std::filesystem::path &shop);

/// Whether it is time for one: there is none, or the newest is older than a day, or was taken
/// after `now`, so that a clock was wrong.
[[nodiscard]] bool isBackupDue(const std::vector<KeptBackup> &newestFirst, std::int64_t now);

struct GoodBackup {
    KeptBackup backup;
    Verification found;
};

/// Makes one more, proves it whole, and then removes those that need not be kept. `now` is 0 to the
/// year 9999. Problem: as provenBackup(); then nothing is removed.
[[nodiscard]] Result<GoodBackup> keepBackup(const ShopFile &shop, std::int64_t now);
/// Backs up to a file anywhere and proves it whole. Problem: as ShopFile::backUp(), or the copy is
/// not whole, and then is not there.
[[nodiscard]] Result<Verification> provenBackup(const ShopFile &shop,
                                                const std::filesystem::path &to);

/// The newest that is whole now; nothing where none is. Verifies one after the other until then.
[[nodiscard]] std::optional<GoodBackup> newestGoodBackup(const std::filesystem::path &shop);

/// Makes a shop file out of a backup that is whole; the backup stays as it is. Problem: it is not
/// whole, or as ShopFile::open() and ShopFile::backUp().
[[nodiscard]] Result<Verification> restore(const std::filesystem::path &backup,
                                           const std::filesystem::path &to);

} // namespace flarestock
