// SPDX-License-Identifier: MIT
//
// Server words: what a server answers, in our words, and whether it may go well the next time
// (PostgreSQL 15, appendix A, "PostgreSQL Error Codes").

#pragma once

#include "model/storage/failure.h"

#include <string>

class QSqlError;

namespace flarestock {

/// `name`: what people call the server.
[[nodiscard]] StorageFailure failureOf(const QSqlError &error, const std::string &name);
/// Where a password was used that had been right before.
[[nodiscard]] StorageFailure notReached(const QSqlError &error, const std::string &name);
/// Where it could not be reached, or did not let us in.
[[nodiscard]] StorageFailure notConnected(const QSqlError &error, const std::string &name);

} // namespace flarestock
