// SPDX-License-Identifier: MIT
//
// Torque asked: what is to be tightened as somebody types it, for the command `torque` and for the
// desk alike. torquesFor() has every published torque for it.
//
//   torquesFor(torqueAsked({"an -6", "hose", "steel"}).value()); // No gender: the size.

#pragma once

#include "model/ports/torque.h"

namespace flarestock {

struct TightenedWords {
    std::string port;
    std::string on = "fitting";
    std::string metal = "steel"; ///< "aluminium" where one of the two sides is not of steel.
};

/// Problem: the first of the words that is none.
[[nodiscard]] Result<TorqueAsked> torqueAsked(const TightenedWords &words);

} // namespace flarestock
