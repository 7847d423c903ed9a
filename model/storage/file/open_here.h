// SPDX-License-Identifier: MIT
//
// Open here: that this process has a shop file open. The header of a file is looked at by plain
// means only while nobody here has it open, because closing a file drops all locks that the process
// holds on it, SQLite's too (sqlite.org/howtocorrupt.html, 2.2).

#pragma once

#include <cstdint>
#include <filesystem>
#include <utility>

namespace flarestock {

class OpenHere {
public:
    /// Throws StorageFailure where nobody has it open and throwUnlessShopFile() says no.
    explicit OpenHere(const std::filesystem::path &path);
    ~OpenHere();
    OpenHere(const OpenHere &) = delete;
    OpenHere &operator=(const OpenHere &) = delete;

    /// Whether a check has found the file in order since it is open here, whoever asked for it.
    [[nodiscard]] bool isChecked() const;
    void setChecked();

    using File = std::pair<std::uint64_t, std::uint64_t>; ///< Device and inode.

private:
    File m_file;
};

} // namespace flarestock
