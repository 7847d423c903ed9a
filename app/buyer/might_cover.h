// SPDX-License-Identifier: MIT
//
// Might cover: what lies free and could serve something that is short, and on which nothing is
// reckoned: a made-up hose of the same hose (its ends and length have to suit), and what lies in
// the box of another part.

#pragma once

#include "app/buyer/needs.h"

namespace flarestock {

/// A sentence for each. `left` is what the builds leave free.
[[nodiscard]] std::vector<std::string> mightCover(const std::vector<NeedLine> &lines,
                                                  const Workshop &workshop, const Shelf &left);

} // namespace flarestock
