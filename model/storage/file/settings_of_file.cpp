// SPDX-License-Identifier: MIT
//
// The settings of a connection to a file, that our promises rest on; each is read back.

#include "model/storage/file/file_connection.h"

#include "model/storage/trailer/own_trip.h"

#include <array>

namespace flarestock {

namespace {

/// Settings that hold for reading too; each is read back.
struct Setting {
    const char *set;
    const char *ask;
    int value;
};
constexpr std::array<Setting, 4> Settings = {{
    {"PRAGMA foreign_keys = ON", "PRAGMA foreign_keys", 1},
    {"PRAGMA trusted_schema = OFF", "PRAGMA trusted_schema", 0},
    {"PRAGMA cell_size_check = ON", "PRAGMA cell_size_check", 1},
    {"PRAGMA mmap_size = 0", "PRAGMA mmap_size", 0},
}};

} // namespace

void FileConnection::applySettings()
{
    bool taken = true;
    for (const Setting &setting : Settings) {
        run(setting.set);
        taken = taken && one(setting.ask).toInt() == setting.value;
    }
    run("PRAGMA cache_size = -65536");
    if (m_use != Use::Make)
        m_trip = tripIn(*this);
    if (m_use != Use::Read)
        taken = taken && takesJournal(!m_trip.empty());
    if (!taken)
        throw StorageFailure{{m_path.string(), "does not take the settings that keep it safe",
                              "Move it to a local disk that is not read-only."}};
}

bool FileConnection::takesJournal(bool travels) const
{
    struct Journal {
        const char *mode;
        const char *said;
        const char *synchronous;
        int level;
    };
    const Journal journal =
        travels ? Journal{"PRAGMA journal_mode = DELETE", "delete", "PRAGMA synchronous = EXTRA", 3}
                : Journal{"PRAGMA journal_mode = WAL", "wal", "PRAGMA synchronous = FULL", 2};
    const bool taken = one(journal.mode).toString() == QLatin1String(journal.said);
    run(journal.synchronous);
    return taken && one("PRAGMA synchronous").toInt() == journal.level;
}

} // namespace flarestock
