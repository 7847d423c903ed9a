// SPDX-License-Identifier: MIT
//
// Beta: how many particles of a size and larger come to a filter for each that gets through
// (ISO 16889). It belongs to its size: beta 200 at 10 µm says nothing of 5 µm, and a nominal rating
// says nothing of beta.
//
//   efficiencyOfBeta(75); // 0.98667

#pragma once

#include "model/exact/problem.h"

namespace flarestock {

/// Particles before the filter against behind it. Problem: none behind it (the test was too short),
/// more behind than before, or below nothing.
[[nodiscard]] Result<double> betaOf(double before, double behind);

/// 1 - 1/beta, of 1. Problem: a beta below 1.
[[nodiscard]] Result<double> efficiencyOfBeta(double beta);

/// 1 / (1 - efficiency). Problem: an efficiency below 0, or 1 and more.
[[nodiscard]] Result<double> betaOfEfficiency(double efficiency);

} // namespace flarestock
