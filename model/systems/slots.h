// SPDX-License-Identifier: MIT
//
// Slots: what a pick is for. "filters/prefilter" is a station, "supply" a run, "supply.start" and
// "plug:tee.gauge" joints. A slot belongs to the template, not to the answers: a pick for a station
// that the answers leave out just now is kept, so that it is there again when they change back.

#pragma once

#include "model/systems/template.h"

namespace flarestock {

enum class SlotForm : std::uint8_t { Unknown, Station, Run, Joint };

/// Of a template whose nesting is sound (sizeAllowed()). Where a station and a run have the same
/// name, the station is meant.
[[nodiscard]] SlotForm slotForm(const TemplateBook &book, const Template &form,
                                std::string_view slot);

} // namespace flarestock
