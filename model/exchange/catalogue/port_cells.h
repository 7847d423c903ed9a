// SPDX-License-Identifier: MIT
//
// The `ports` cell of a part: "in: ORB -8 female [in]; out: ORB -6 female [out]".

#pragma once

#include "model/exchange/sheet.h"
#include "model/parts/part.h"

#include <unordered_map>

namespace flarestock {

/// Ports that were read once: a catalogue repeats the same few texts in thousands of rows.
using PortMemory = std::unordered_map<std::string, Port>;

/// The ports of a row; adds a problem for a port without a name, a name twice, a port or role that
/// cannot be read. `memory` only makes it faster.
[[nodiscard]] std::vector<PartPort> readPorts(const SheetRow &row, PortMemory &memory);

/// Adds a problem where a hose, hose end or tubing does not have the ports that its other columns
/// say: `cut: HOSE <construction> -<dash>`, `hose: …` and `end: …`, `cut: TUBE <size>`.
void checkPorts(const SheetRow &row, const Part &part);

} // namespace flarestock
