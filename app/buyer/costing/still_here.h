// SPDX-License-Identifier: MIT
//
// Still here: what of a receipt lies in stock yet, and in which layers. The oldest are taken to
// have left first, also where the shop costs by a moving average.

#pragma once

#include "app/stockroom/deed.h"
#include "model/buying/bought.h"

namespace flarestock {

/// So much of what came, where it lies. `rank` is that of its layer; 0 by a moving average.
struct HereAt {
    BalanceKey key;
    std::int64_t rank = 0;
    std::int64_t quantity = 0;
};

/// Of each receipt, in their order. They are of one part. Problem: the journal cannot be read.
[[nodiscard]] Result<std::vector<std::vector<HereAt>>>
stillHere(const std::vector<Receipt> &receipts, const ShopFile &file, const Workshop &workshop);

/// What a movement says over the bench, by a moving average, that is no more or less afterwards.
[[nodiscard]] std::string worthAnew(const std::string &document);
/// What a movement says that brings a layer back which another had brought first.
[[nodiscard]] std::string ofLayer(const std::string &document, const MovementId &origin);

/// What such a movement says besides; nothing where it is no such one.
[[nodiscard]] std::optional<std::string> onlyCostIsAnother(const std::string &document);

/// The movement that first brought each layer of a part, by its rank.
[[nodiscard]] std::map<std::int64_t, MovementId> origins(const std::vector<Movement> &ofPart);

} // namespace flarestock
