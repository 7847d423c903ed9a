// SPDX-License-Identifier: MIT
//
// File header: what the first hundred bytes of a file say before SQLite may touch it, so that a
// wrong file is refused without being changed (SQLite file format, "The Database Header").
//
// The bytes are read by plain means, which closes the file again, and closing drops the locks that
// SQLite holds on it in this process. So nobody may have it open here: see FileConnection.

#pragma once

#include <cstdint>
#include <filesystem>

namespace flarestock {

/// The newest schema that this program knows.
inline constexpr std::int64_t SchemaVersion = 3;

/// Throws StorageFailure: not there, not a file, cannot be read, empty, not SQLite, of another
/// program, of a newer schema, longer or shorter than its header says (where no -wal waits).
void throwUnlessShopFile(const std::filesystem::path &path);

/// Whether a log of SQLite (-wal) with something in it lies beside the file.
[[nodiscard]] bool hasLog(const std::filesystem::path &path);
/// The same of what a file that travels is rolled back by (-journal), when a program was killed.
[[nodiscard]] bool hasRollback(const std::filesystem::path &path);

/// Throws StorageFailure where the name is not a file's but a server's.
void throwIfServer(const std::filesystem::path &path);

/// The same judgement of the two marks, wherever they were read.
void throwUnlessOurMarks(const std::filesystem::path &path, std::int64_t applicationId,
                         std::int64_t schemaVersion);

} // namespace flarestock
