// SPDX-License-Identifier: MIT

#include "app/stockroom/byhand/new_place.h"

#include "model/exchange/shop_toml.h"

namespace flarestock {

Result<Place> placeOf(const PlaceWords &asked)
{
    const std::string &title = asked.title.empty() ? asked.id : asked.title;
    for (const std::string &name : {asked.id, title}) {
        if (!isPlaceName(name))
            return problem("place " + quotedStart(name),
                           "has a tab or another control character in its name",
                           "Write it on one line, with blanks.");
    }
    const auto kind = parsePlaceKind(asked.kind);
    if (!kind)
        return tl::unexpected(kind.error());
    return Place{asked.id, title, *kind};
}

} // namespace flarestock
