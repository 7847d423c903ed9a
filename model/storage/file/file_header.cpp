// SPDX-License-Identifier: MIT

#include "model/storage/file/file_header.h"

#include "model/storage/failure.h"
#include "model/storage/server/server_address.h"
#include "model/storage/shop_sql.h"

#include <array>
#include <fstream>

namespace flarestock {

namespace {

constexpr std::string_view Magic{"SQLite format 3\0", 16};
using HeaderBytes = std::array<unsigned char, 100>;

[[noreturn]] void refuse(const std::filesystem::path &path, std::string wrong, std::string remedy)
{
    throw StorageFailure{{path.string(), std::move(wrong), std::move(remedy)}};
}

std::uint32_t bigEndian(const HeaderBytes &header, std::size_t offset, std::size_t bytes)
{
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < bytes; ++i)
        number = number << 8 | header[offset + i];
    return number;
}

/// The header, and the size of the file.
std::pair<HeaderBytes, std::uintmax_t> readHeader(const std::filesystem::path &path)
{
    std::error_code wrong;
    const auto status = std::filesystem::status(path, wrong);
    if (!std::filesystem::exists(status))
        refuse(path, "is not there", "Check the name, or make a shop: flarestock demo --to FILE.");
    if (!std::filesystem::is_regular_file(status))
        refuse(path, "is not a file", "Name a shop file.");
    const std::uintmax_t size = std::filesystem::file_size(path, wrong);
    if (wrong)
        refuse(path, "cannot be read", "Check who may read it.");
    if (size == 0)
        refuse(path, "is empty, so it is no shop file", "Name another file, or a backup.");
    HeaderBytes header{};
    std::ifstream file(path, std::ios::binary);
    if (!file)
        refuse(path, "cannot be read", "Check who may read it.");
    if (size < header.size())
        refuse(path, "is not a shop file", "Name another file.");
    file.read(reinterpret_cast<char *>(header.data()), header.size());
    if (!file)
        refuse(path, "cannot be read", "Check the disk that it lies on.");
    return {header, size};
}

} // namespace

bool hasLog(const std::filesystem::path &path)
{
    std::error_code wrong;
    const auto size = std::filesystem::file_size(path.string() + "-wal", wrong);
    return !wrong && size > 0;
}

bool hasRollback(const std::filesystem::path &path)
{
    std::error_code wrong;
    const auto size = std::filesystem::file_size(path.string() + "-journal", wrong);
    return !wrong && size > 0;
}

void throwIfServer(const std::filesystem::path &path)
{
    if (isServer(path))
        refuse(path, "names a server, and here a file is wanted",
               "Name a file; a shop on a server is made by flarestock server setup.");
}

void throwUnlessOurMarks(const std::filesystem::path &path, std::int64_t applicationId,
                         std::int64_t schemaVersion)
{
    if (applicationId != sql::ApplicationId)
        refuse(path, "is a database of another program", "Name a shop file.");
    if (schemaVersion > SchemaVersion)
        refuse(path,
               "was written by a newer Flarestock (schema " + std::to_string(schemaVersion) +
                   ", this one knows " + std::to_string(SchemaVersion) + ")",
               "Update Flarestock, then open it again.");
    if (schemaVersion < 1)
        refuse(path, "is a shop file that was never finished", "Make it again, or use a backup.");
}

void throwUnlessShopFile(const std::filesystem::path &path)
{
    throwIfServer(path);
    const auto [header, size] = readHeader(path);
    if (!std::equal(Magic.begin(), Magic.end(), header.begin(),
                    [](char a, unsigned char b) { return static_cast<unsigned char>(a) == b; }))
        refuse(path, "is not a shop file", "Name another file.");
    throwUnlessOurMarks(path, bigEndian(header, 68, 4),
                        static_cast<std::int32_t>(bigEndian(header, 60, 4)));
    if (hasLog(path) || hasRollback(path))
        return; // SQLite recovers first; its own count stands in the -wal.
    const std::uint32_t written = bigEndian(header, 16, 2);
    const std::uintmax_t pageSize = written == 1 ? 65536 : written;
    const std::uintmax_t pages = bigEndian(header, 28, 4);
    if (pages * pageSize != size)
        refuse(path,
               "is damaged: it has " + std::to_string(size) + " bytes and its header says " +
                   std::to_string(pages * pageSize),
               "Do not write to it: keep it aside and restore the newest backup.");
}

} // namespace flarestock
