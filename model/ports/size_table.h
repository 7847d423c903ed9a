// SPDX-License-Identifier: MIT
//
// Size table: every size of every family as a row of data (model/ports/data), each with its source.
//
//   sizeOf(Port::parse("ORB -8 female").value())->thread->name;   // "3/4-16"

#pragma once

#include "model/ports/port.h"
#include "model/ports/thread.h"

namespace flarestock {

struct SizeRow {
    Family family = Family::An;
    std::string size;
    std::optional<Thread> thread; ///< Nothing for plain ends.
    double tubeMm = 0;            ///< Tube, hose or spigot that the size is for; 0 where none.
    std::string ring;             ///< Ring that its standard names: "AS568-906"; empty where none.
    std::string source;           ///< The standard, and where the figures are from.
};

[[nodiscard]] const std::vector<SizeRow> &sizeRows();
/// The row of a size as the tables spell it; nullptr where there is none.
[[nodiscard]] const SizeRow *findSize(Family family, std::string_view size);

/// The row of a port. An inverted flare with another nut thread than the usual one, "3/16 M10x1.0",
/// gets a row of its own, kept for good. nullptr only for a port that Port::parse() did not make.
[[nodiscard]] const SizeRow *sizeOf(const Port &port);

} // namespace flarestock
