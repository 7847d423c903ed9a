// SPDX-License-Identifier: MIT
//
// Language: in which words the desk speaks. English stands in the code; a translation is a folder
// of .ts files beside this one, one for each area, which the build makes into one resource.

#pragma once

#include <QString>

namespace flarestock {

/// "de" where the person's system speaks German, else "en".
[[nodiscard]] QString languageOfSystem();

/// From now on the desk's words are in that language, "en" or "de", and so are days and months;
/// figures and dates keep the form of the person's own country. Whether it is one that there is.
bool speak(const QString &language);

} // namespace flarestock
