// SPDX-License-Identifier: MIT
//
// Offered words: what could stand at a place of a template's text, for a person to choose: the
// questions whose answers fit there, the parts and series of the catalogue, the ports of what
// stands on the map. Anything else can be typed.

#pragma once

#include "app/desk/template/form/fresh_paragraph.h"

#include <QStringList>

namespace flarestock {

/// `key` as the place goes on behind its paragraph: "part", "part/0/when", "answers/fluid".
[[nodiscard]] QStringList offeredWords(const ParagraphAt &at, const std::string &key,
                                       const FreshFrom &from);

} // namespace flarestock
