// SPDX-License-Identifier: MIT
//
// Kept plan: what of the plan on the desk is in the shop's file, what waits, and what could not be
// kept.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QTimer>

namespace flarestock {

struct KeptPlan {
    QString said;     ///< How it stands: "kept, 14:02".
    BuildPlan before; ///< The build on the desk as it was in the shop when its changes began.
    QTimer soon;
    Errand errand;
    bool isWaiting = false;       ///< The plan on the desk is not in the file yet.
    QString whyNot;               ///< Why its last change is not; empty where it is.
    std::vector<BuildPlan> since; ///< Kept while something was being written.
};

} // namespace flarestock
