// SPDX-License-Identifier: MIT
//
// Examination: what SQLite says about a shop file itself, and whether its tables and triggers are
// those that we made.

#pragma once

#include "model/storage/file/file_connection.h"

namespace flarestock {

/// SQLite's own whole check; at most 20 lines.
void examinePages(const FileConnection &connection,
                  const std::function<void(const std::string &)> &wrong);
/// A dropped trigger would let rows be changed. `version`: 1 to SchemaVersion.
void examineSchema(const FileConnection &connection, std::int64_t version,
                   const std::function<void(const std::string &)> &wrong);

} // namespace flarestock
