// SPDX-License-Identifier: MIT
//
// Box kept: what was ticked, marked and found wrong in a box before it is put away, for a desk that
// ends in the midst of it.

#pragma once

#include "app/desk/buying/box/trouble_form.h"

namespace flarestock {

/// What is said of a box so far.
struct BoxSaid {
    Ticks &ticks;
    std::vector<Trouble> &wrong;
    QString &document;
};

/// Empty where nothing is said yet.
[[nodiscard]] QVariantMap keptOfBox(const BoxSaid &box);
/// As it was kept. Nothing is changed where something else is to come by now.
void putBackInBox(const QVariantMap &kept, const BoxSaid &box);

} // namespace flarestock
