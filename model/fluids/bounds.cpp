// SPDX-License-Identifier: MIT

#include "model/fluids/bounds.h"

#include <array>
#include <charconv>
#include <cmath>

namespace flarestock {

std::optional<Problem> firstImpossible(std::initializer_list<Entry> entries)
{
    for (const auto &[name, value, allowed] : entries) {
        const std::string said(name);
        if (!std::isfinite(value))
            return Problem{said, "is not a number", "Give a number for the " + said + "."};
        if (allowed == Allowed::NothingOrMore && value < 0)
            return Problem{said, "is less than nothing", "Give a " + said + " of 0 or more."};
        if (allowed == Allowed::MoreThanNothing && value <= 0)
            return Problem{said, "is not more than nothing", "Give a " + said + " above 0."};
    }
    return std::nullopt;
}

std::optional<Problem> beyond(const Span &span, double value, std::string_view thing)
{
    if (std::isfinite(value) && value >= span.low && value <= span.high)
        return std::nullopt;
    const std::string unit = " " + std::string(span.unit);
    const std::string range = shortNumber(span.low) + " to " + shortNumber(span.high) + unit;
    const std::string name(span.name);
    return Problem{std::string(thing),
                   std::isfinite(value)
                       ? "has no figures at a " + name + " of " + shortNumber(value) + unit
                       : "is asked at a " + name + " that is not a number",
                   "Ask for a " + name + " of " + range + ", or enter figures measured there."};
}

std::string shortNumber(double number)
{
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                   std::chars_format::general, 6);
    return {buffer.data(), end.ptr};
}

} // namespace flarestock
