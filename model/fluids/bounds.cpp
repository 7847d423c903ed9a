// SPDX-License-Identifier: MIT

#include "model/fluids/bounds.h"

#include <array>
#include <charconv>
#include <cmath>

namespace flarestock {

std::optional<Problem> firstImpossible(std::initializer_list<Figure> figures)
{
    for (const auto &[name, value, allowed] : figures) {
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

std::optional<Problem> beyond(const ValidRange &range, double value, std::string_view thing)
{
    if (std::isfinite(value) && value >= range.low && value <= range.high)
        return std::nullopt;
    const std::string unit = range.unit.empty() ? "" : " " + std::string(range.unit);
    const std::string from = shortNumber(range.low) + " to " + shortNumber(range.high) + unit;
    const std::string name(range.name);
    return Problem{std::string(thing),
                   std::isfinite(value)
                       ? "has no figures at a " + name + " of " + shortNumber(value) + unit
                       : "is asked at a " + name + " that is not a number",
                   "Ask for a " + name + " of " + from + ", or enter figures measured there."};
}

std::string shortNumber(double number)
{
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                   std::chars_format::general, 6);
    return {buffer.data(), end.ptr};
}

} // namespace flarestock
