// SPDX-License-Identifier: MIT
//
// Sieves: mesh numbers and the openings of ASTM E11. A mesh is a strainer's size of opening, not a
// filter rating: what it holds back of finer dirt nobody has measured.
//
//   sieveOpeningUm(100); // 150

#pragma once

#include <optional>
#include <span>

namespace flarestock {

struct Sieve {
    int mesh = 0;         ///< Wires in an inch.
    double openingUm = 0; ///< Nominal.
};

/// From No. 40 to No. 635, finer and finer.
[[nodiscard]] std::span<const Sieve> sieves();

/// Nothing for a mesh that ASTM E11 does not have.
[[nodiscard]] std::optional<double> sieveOpeningUm(int mesh);

/// The coarsest sieve that lets nothing round and larger than that through; nothing where even the
/// finest does.
[[nodiscard]] std::optional<Sieve> sieveHolding(double micron);

} // namespace flarestock
