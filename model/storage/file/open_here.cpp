// SPDX-License-Identifier: MIT

#include "model/storage/file/open_here.h"

#include "model/storage/file/file_header.h"

#include <map>
#include <mutex>
#include <optional>
#include <sys/stat.h>

namespace flarestock {

namespace {

struct Opened {
    int times = 0; ///< As often as it is open.
    bool isChecked = false;
};

/// The files that this process has open; the lock guards them and the look at a header.
struct OpenFiles {
    std::mutex lock;
    std::map<OpenHere::File, Opened> files;
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
    ++openFiles().files[m_file].times;
}

OpenHere::~OpenHere()
{
    const std::lock_guard guard(openFiles().lock);
    const auto file = openFiles().files.find(m_file);
    if (--file->second.times == 0)
        openFiles().files.erase(file);
}

bool OpenHere::isChecked() const
{
    const std::lock_guard guard(openFiles().lock);
    return openFiles().files.at(m_file).isChecked;
}

void OpenHere::setChecked()
{
    const std::lock_guard guard(openFiles().lock);
    openFiles().files.at(m_file).isChecked = true;
}

} // namespace flarestock
