// SPDX-License-Identifier: MIT
//
// Reads files of the General Decimal Arithmetic test vectors (*.decTest): directives that stay in
// force, then lines such as
//
//   addx006  add '1.10' 2.2 -> 3.30    Rounded
//
// Without Qt, because it is also compiled against sources that are broken on purpose.

#pragma once

#include "model/exact/rounding.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace flarestock::tests {

struct Vector {
    std::string file;
    std::string id;
    std::string operation; ///< Lower case.
    std::vector<std::string> operands;
    std::string result;
    std::vector<std::string> conditions; ///< Lower case: "rounded", "inexact", …
    std::size_t precision = 0;           ///< Significant digits of the result.
    std::optional<Rounding> rounding;    ///< Nothing for the modes that we do not have.
    bool extended = false;

    [[nodiscard]] bool has(std::string_view condition) const;
    [[nodiscard]] std::string name() const; ///< "add addx006"
};

/// All vectors of a file; nothing where it cannot be read.
[[nodiscard]] std::optional<std::vector<Vector>> readVectors(const std::string &path);

} // namespace flarestock::tests
