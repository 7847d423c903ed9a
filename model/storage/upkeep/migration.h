// SPDX-License-Identifier: MIT
//
// Migration: a shop file of an older version becomes one of this version, in one transaction, after
// it was copied. Chains, hashes and ids stay as they are.

#pragma once

#include "model/storage/file/file_connection.h"

#include <memory>

namespace flarestock {

/// The schema version that the file says.
[[nodiscard]] std::int64_t versionOf(const FileConnection &connection);

/// Brings it to this version, after a copy "<file>.schema-1" was made beside it (or one with a
/// number behind, where that is taken); nothing where it is of this version. Throws StorageFailure;
/// then nothing has changed.
void migrate(FileConnection &connection);

/// A copy of an older file in a folder of its own, of this version, for those who only read. It is
/// removed with the object.
class MigratedCopy {
public:
    explicit MigratedCopy(const FileConnection &older);
    ~MigratedCopy();
    MigratedCopy(const MigratedCopy &) = delete;
    MigratedCopy &operator=(const MigratedCopy &) = delete;
    [[nodiscard]] std::unique_ptr<FileConnection> open() const;

private:
    std::filesystem::path m_folder;
};

} // namespace flarestock
