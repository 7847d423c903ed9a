// SPDX-License-Identifier: MIT
//
// Certainty: how certain it is to be that nothing lacks, as it is typed: "95%", "95 %", "0.95".

#pragma once

#include "model/exact/problem.h"

#include <string>

namespace flarestock {

/// `named`: what it is called where it was typed. Problem: it is no number, or not between none
/// and all.
[[nodiscard]] Result<double> certaintyAsked(const std::string &typed, const std::string &named);

} // namespace flarestock
