// SPDX-License-Identifier: MIT

#include "model/spares/carry/spending.h"

#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 3> Measures = {"event", "run", "hour"};

} // namespace

std::string_view text(Spending spending) noexcept
{
    constexpr std::array<std::string_view, 3> words = {"chance", "wear", "crash"};
    return words[static_cast<std::size_t>(spending)];
}

std::string_view text(RunningIn measure) noexcept
{
    return Measures[static_cast<std::size_t>(measure)];
}

std::optional<RunningIn> parseRunningIn(std::string_view text) noexcept
{
    if (text.ends_with('s'))
        text.remove_suffix(1);
    for (std::size_t i = 0; i < Measures.size(); ++i)
        if (text == Measures[i])
            return static_cast<RunningIn>(i);
    return std::nullopt;
}

} // namespace flarestock
