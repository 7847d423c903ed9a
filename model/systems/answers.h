// SPDX-License-Identifier: MIT
//
// Answers and picks: what the builder has decided about one build, as texts.

#pragma once

#include <map>
#include <string>

namespace flarestock {

/// Question id to answer as typed: {"fluid": "E85", "power": "450 hp"}. Absent: the default.
using Answers = std::map<std::string, std::string, std::less<>>;

/// What the builder has decided on, by slot. A pick is never undone by an answer.
///   "prefilter"        station id            → part number
///   "supply"           run id                → part number of the hose or tubing
///   "supply.start"     joint id              → part numbers from the station outwards, joined by "
///   + "
using Picks = std::map<std::string, std::string, std::less<>>;

} // namespace flarestock
