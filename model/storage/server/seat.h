// SPDX-License-Identifier: MIT
//
// Seat: who writes on a server, so that every seat has a chain of the journal for itself. Its id is
// made once and kept among the person's own data, a file for each server and database.

#pragma once

#include "model/storage/server/server_address.h"

#include <QByteArray>

namespace flarestock {

/// Sixteen bytes, made and kept where there are none yet. Throws StorageFailure: they cannot be
/// kept or read.
[[nodiscard]] QByteArray seatOf(const ServerAddress &address);

} // namespace flarestock
