// SPDX-License-Identifier: MIT
//
// Desk speech: a paper that is written at the desk is said as the desk speaks: in its language,
// with figures and days as its person's country writes them, lengths in the units of the person.
//
//   asked.speech = deskSpeech(m_units);   // writePapers(asked, …) then speaks German at a German
//                                         // desk, and "1,676.4 mm" where mm are chosen

#pragma once

#include "app/buyer/papers/speech.h"
#include "app/desk/words/units.h"

namespace flarestock {

/// By the language and locale of now; it may be used from any thread.
[[nodiscard]] Speaking deskSpeech(Units units);

} // namespace flarestock
