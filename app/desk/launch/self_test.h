// SPDX-License-Identifier: MIT
//
// Self-test: every screen with every build of the shop, light and dark, large and small; whatever
// the engine or Qt warns about is a failure.

#pragma once

#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"

namespace flarestock {

/// What went wrong, a sentence each; empty where nothing did.
[[nodiscard]] QStringList selfTest(Screens &screens, Desk &desk, Look &look);

/// From here on every warning that Qt prints is remembered too.
void listenToWarnings();
/// All of them so far.
[[nodiscard]] QStringList warningsHeard();

/// Until what the area that shows reads away from the window is there, or ten seconds are over.
void waitForAreas(const Desk &desk);

} // namespace flarestock
