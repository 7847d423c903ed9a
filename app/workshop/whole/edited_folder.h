// SPDX-License-Identifier: MIT
//
// Edited folder: of a folder of a shop's CSV and TOML files, those that were edited there and are
// to be taken in, for the command `import` and for the desk alike.
//
//   const auto edited = EditedFolder::of(folder, shop.documents().value());
//   takeIn(edited->changed, …);

#pragma once

#include "app/workshop/documents.h"

namespace flarestock {

struct EditedFolder {
    AsExported exported;
    TextFiles changed; ///< As they are in the folder; without those that a shop only begins with.

    /// `shop`: what the shop's documents are now. Problem: no folder, one that cannot be read, a
    /// document that was changed in the shop as well since the folder was written.
    [[nodiscard]] static Result<EditedFolder> of(const std::filesystem::path &folder,
                                                 const TextFiles &shop);
};

/// How many lines of a text are other ones than before: those with another beside them that is
/// gone, those alone, and those that are gone alone. Where a line stands does not matter.
struct ChangedLines {
    int changed = 0;
    int added = 0;
    int gone = 0;
};
[[nodiscard]] ChangedLines changedLines(std::string_view before, std::string_view now);

} // namespace flarestock
