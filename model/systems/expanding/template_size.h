// SPDX-License-Identifier: MIT
//
// Template size: how many stations, modules, runs and extras a template comes to with everything
// nested in it, counted before anything is made: once for each template, a module adding what its
// template counts. Sixty templates, each twice in the next, are 2^60 paths and sixty additions.

#pragma once

#include "model/systems/template.h"

namespace flarestock {

inline constexpr std::uint64_t StationsMax = 100'000; ///< The same for modules, runs and extras.
inline constexpr std::size_t NestingMax = 200;        ///< Templates within each other.

/// Nothing, where the template is of a size that can be made whatever its conditions say.
/// Problem: a module of an unknown template, modules in a circle (the path is named), nested
/// deeper than NestingMax, more than StationsMax of one sort were every condition to hold.
[[nodiscard]] Result<void> sizeAllowed(const TemplateBook &book, const Template &form);

} // namespace flarestock
