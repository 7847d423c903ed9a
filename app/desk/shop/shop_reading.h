// SPDX-License-Identifier: MIT
//
// Shop reading: something looked up in the shop's file, as a value.

#pragma once

#include "app/desk/shop/shop_on_desk.h"

namespace flarestock {

/// How a shop is opened to read it; empty: it has no file.
using ReadShop = std::function<Result<void>(const LookUp &look)>;

/// What `look` makes of the shop's file; may be called from any thread.
template <class T>
[[nodiscard]] Result<T> readOf(const ReadShop &read,
                               const std::function<Result<T>(ShopFile &file)> &look)
{
    std::optional<Result<T>> made;
    const auto done = read([&](ShopFile &file, const Workshop &) -> Result<void> {
        made = look(file);
        return {};
    });
    if (!done)
        return tl::unexpected(done.error());
    return std::move(*made);
}

} // namespace flarestock
