// SPDX-License-Identifier: MIT

#include "model/storage/file/open_here.h"

#include "model/storage/file/file_header.h"

#include <mutex>
#include <optional>
#include <set>
#include <sys/stat.h>

namespace flarestock {

namespace {

/// The files that this process has open, each as often as it is open; the lock guards the set and
/// the look at a header.
struct OpenFiles {
    std::mutex lock;
    std::multiset<OpenHere::File> files;
};

OpenFiles &openFiles()
{
    static OpenFiles open;
    return open;
}

std::optional<OpenHere::File> fileAt(const std::filesystem::path &path)
{
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0)
        return std::nullopt;
    return OpenHere::File{status.st_dev, status.st_ino};
}

} // namespace

OpenHere::OpenHere(const std::filesystem::path &path)
{
    const std::lock_guard guard(openFiles().lock);
    auto file = fileAt(path);
    if (!file || !openFiles().files.contains(*file)) {
        throwUnlessShopFile(path);
        file = fileAt(path);
    }
    m_file = file.value_or(File{});
    openFiles().files.insert(m_file);
}

OpenHere::~OpenHere()
{
    const std::lock_guard guard(openFiles().lock);
    openFiles().files.erase(openFiles().files.find(m_file));
}

} // namespace flarestock
