// SPDX-License-Identifier: MIT
//
// Puts Decimal through the vectors that apply to an unlimited decimal with a scale of 0 or more.

#pragma once

#include "vector_file.h"

namespace flarestock::tests {

struct Tally {
    std::size_t strict = 0;  ///< Number and scale compared.
    std::size_t value = 0;   ///< Only the number: a positive exponent or a negative zero in it.
    std::size_t skipped = 0; ///< Not for us: NaN, overflow, E notation, …
    std::vector<std::string> failures;
};

/// Adds the vector to the tally.
void check(const Vector &vector, Tally &tally);

} // namespace flarestock::tests
