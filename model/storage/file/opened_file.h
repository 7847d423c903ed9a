// SPDX-License-Identifier: MIT
//
// Opened file: a shop file opened as the promises want it: its marks looked at, checked quickly and
// brought to this version where it is written, read in a copy where it is older; or verified whole.

#pragma once

#include "model/storage/file/file_connection.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// Throws StorageFailure: not there, not a shop file, of a newer program, locked; damaged as far as
/// its header says, the rest of it before something is written, so that what there is to see is
/// seen at once, however long the journal. Where a log was found beside the file, which may be the
/// log of another one, a second connection reads only until something was written. As long as it is
/// there, closing the connection that writes does not bring the log into the file; so it is also
/// closed last.
[[nodiscard]] std::unique_ptr<FileConnection> openFile(const std::filesystem::path &path,
                                                       OpenMode mode);
/// Never writes. Throws StorageFailure where it cannot be read as a shop file at all.
[[nodiscard]] Verification verifiedFile(const std::filesystem::path &path);

} // namespace flarestock
