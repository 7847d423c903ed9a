// SPDX-License-Identifier: MIT
//
// Problem: what the outside world did wrong (a file, a field, a typed word), in a sentence.
//
// It names the thing, says what is wrong with it and what to do; where it lies in a text, it also
// carries line and column, so that text() can show the line with a caret under the place:
//
//   fittings.csv, line 14, column 22: port "ORB 6 femal" has no gender. Write male or female.
//     AD-66,adapter,ORB 6 femal
//                         ^
//
// Bugs are assertions and refusals of the domain are enumerated values; neither is a Problem.

#pragma once

#include <tl/expected.hpp>

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

namespace flarestock {

struct Problem {
    std::string thing;        ///< What it is about: a file, a field, a part number. May be empty.
    std::string wrong;        ///< What is wrong with it, without a full stop.
    std::string remedy;       ///< What to do, as a sentence of its own. May be empty.
    std::uint32_t line = 0;   ///< 1-based; 0 where there is no text to point into.
    std::uint32_t column = 0; ///< 1-based, in characters (UTF-8 code points); 0 as above.
    std::string excerpt = {}; ///< The offending line, for the caret. May be empty.

    /// One sentence with its place: "thing, line L, column C: wrong. Remedy".
    [[nodiscard]] std::string sentence() const;
    /// sentence(), then the excerpt and a caret under the column where both are known.
    [[nodiscard]] std::string text() const;
};

template <class T>
using Result = tl::expected<T, Problem>;

/// `return problem("fittings.csv", "is empty", "Export the sheet again.");`
[[nodiscard]] inline tl::unexpected<Problem> problem(std::string thing, std::string wrong,
                                                     std::string remedy = {})
{
    return tl::unexpected<Problem>(Problem{std::move(thing), std::move(wrong), std::move(remedy)});
}

/// The start of a text between quotation marks, for a Problem about it: at most 40 bytes of whole
/// characters, control characters as blanks.
[[nodiscard]] std::string quotedStart(std::string_view text);

} // namespace flarestock
