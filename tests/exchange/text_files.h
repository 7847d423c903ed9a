// SPDX-License-Identifier: MIT
//
// The demo shop's files, read for tests.

#pragma once

#include "model/exchange/catalogue_csv.h"

#include <filesystem>
#include <fstream>
#include <iterator>

namespace flarestock {

/// Every file below demo-data, by its name from there: "parts/adapters.csv".
inline TextFiles demoFiles()
{
    namespace fs = std::filesystem;
    const fs::path root = fs::path(FLARESTOCK_SOURCE_DIR) / "demo-data";
    TextFiles files;
    for (const fs::directory_entry &entry : fs::recursive_directory_iterator(root)) {
        if (!entry.is_regular_file())
            continue;
        std::ifstream in(entry.path(), std::ios::binary);
        files[fs::relative(entry.path(), root).string()] =
            std::string(std::istreambuf_iterator<char>(in), {});
    }
    return files;
}

} // namespace flarestock
