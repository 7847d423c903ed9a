// SPDX-License-Identifier: MIT
//
// Books: what the buyer looks things up in.

#pragma once

#include "app/workshop/workshop.h"
#include "model/buying/bought.h"

namespace flarestock {

/// Of one moment; they have to outlive it.
struct Books {
    const Bought &bought;
    const ShopFile &file;
    const Workshop &workshop;
};

} // namespace flarestock
