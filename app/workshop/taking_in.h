// SPDX-License-Identifier: MIT
//
// Taking in: changed documents (catalogue, offers, templates, builds) become the shop's, all or
// none of them, for the command `import` and for the desk alike. All documents are read as they
// would stand together before one is written.

#pragma once

#include "app/workshop/documents.h"
#include "model/storage/shop_file.h"

namespace flarestock {

/// Who takes them in, and when (milliseconds since 1970, UTC).
struct TakenInBy {
    std::string who;
    std::int64_t at = 0;
};

/// Whether they could be, without writing them. Problem: as takeIn().
[[nodiscard]] Result<void> canBeTakenIn(const TextFiles &changed, const TextFiles &before,
                                        const ShopFile &file);

/// A supplier who has no place yet gets one, as his parts come from it (isPlaceOf()).
/// `before`: what the shop's documents were when the changes were made. Problem: one that does not
/// read, with its place; a part that lies somewhere and would be gone or kept in another unit; a
/// build that would not work out by its changed template; a document that is another by now;
/// read-only, disk full.
[[nodiscard]] Result<void> takeIn(const TextFiles &changed, const TextFiles &before, ShopFile &file,
                                  const TakenInBy &by);

} // namespace flarestock
