// SPDX-License-Identifier: MIT
//
// Left begun: a transaction that could not be rolled back, as there was no memory for that either.

#pragma once

#include <sqlite3.h>

namespace flarestock {

/// Ends it, where there is one.
inline void endWhatIsLeft(sqlite3 *handle)
{
    if (sqlite3_get_autocommit(handle) == 0)
        sqlite3_exec(handle, "ROLLBACK", nullptr, nullptr, nullptr);
}

} // namespace flarestock
