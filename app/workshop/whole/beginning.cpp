// SPDX-License-Identifier: MIT

#include "app/workshop/whole/beginning.h"

#include "app/workshop/demo_shop.h"
#include "app/workshop/documents.h"

namespace flarestock {

Result<ShopFile> shopBegun(const std::filesystem::path &folder, const std::filesystem::path &file,
                           std::int64_t now)
{
    const auto documents = documentsIn(folder);
    if (!documents)
        return tl::unexpected(documents.error());
    if (const auto read = readCatalogueAndPlans(*documents); !read)
        return tl::unexpected(read.error());
    const auto shop = newShopOf(*documents, now);
    if (!shop)
        return tl::unexpected(shop.error());
    return ShopFile::create(file, *shop);
}

} // namespace flarestock
