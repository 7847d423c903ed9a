// SPDX-License-Identifier: MIT
//
// Backup: a copy of a shop as it is at one moment, by SQLite's own backup interface
// (sqlite.org/backup.html), while others may write. It is written under a name of its own, brought
// to the disk, and gets its name last, so that there is never half a backup under a good name.

#pragma once

#include "model/storage/file/file_connection.h"

namespace flarestock {

/// The file as it is, byte for byte, before it becomes of another version. Throws StorageFailure:
/// `to` exists already, cannot be written, the disk is full.
void makeCopy(const FileConnection &connection, const std::filesystem::path &to);

/// A copy that goes on as a replica of its own: what is written into it never bears the number of
/// an entry that the shop went on to write, wherever the copy is put. Throws as above.
void makeBackup(const FileConnection &connection, const std::filesystem::path &to);

/// Sixteen random bytes.
[[nodiscard]] QByteArray randomReplicaId();

/// Gives a finished file its name, never in the place of another, and sees that the folder knows
/// it. Throws StorageFailure.
void giveName(const std::filesystem::path &unnamed, const std::filesystem::path &path);

/// A name beside `path` that nobody has, for a file that is not finished.
[[nodiscard]] std::filesystem::path unfinishedName(const std::filesystem::path &path);
/// The file and what SQLite keeps beside it, if they are there.
void removeUnfinished(const std::filesystem::path &path) noexcept;

} // namespace flarestock
