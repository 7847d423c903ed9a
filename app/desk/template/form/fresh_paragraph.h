// SPDX-License-Identifier: MIT
//
// Fresh paragraph: a station, run, question, module or extra as it begins on the form: whole, so
// that the text still reads, and as likely as can be told from what stands there.

#pragma once

#include "app/desk/template/form/paragraphs.h"
#include "app/workshop/workshop.h"
#include "model/systems/expansion.h"

namespace flarestock {

struct FreshFrom {
    const TomlValue &root;
    const ParagraphAt &behind;          ///< What is in hand.
    const Workshop *workshop = nullptr; ///< Nothing: no shop is behind it.
    const Expansion *drawn = nullptr;   ///< What the map shows; nothing: nothing.
};

/// Its lines under the header.
[[nodiscard]] std::string freshParagraph(Paragraph kind, const FreshFrom &from);

/// "tank is steel tank": a condition that can be met, of the last question before that paragraph
/// that has choices; where there is none, of an unnamed one.
[[nodiscard]] std::string likelyCondition(const TomlValue &root, const ParagraphAt &at);

} // namespace flarestock
