// SPDX-License-Identifier: MIT

#include "model/parts/part.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 6> RoleWords = {"either", "in",     "out",
                                                       "gauge",  "return", "vent"};

} // namespace

std::string_view text(PortRole role) noexcept
{
    assert(static_cast<std::size_t>(role) < RoleWords.size());
    return RoleWords[static_cast<std::size_t>(role)];
}

Result<PortRole> parsePortRole(std::string_view text)
{
    const std::string_view typed = trimmed(text);
    for (std::size_t i = 0; i < RoleWords.size(); ++i) {
        if (sameFolded(RoleWords[i], typed))
            return static_cast<PortRole>(i);
    }
    return problem("role", "\"" + std::string(typed) + "\" is no role of a port",
                   wordRemedy(typed, RoleWords));
}

const PartPort *Part::port(std::string_view name) const noexcept
{
    const auto found = std::find_if(ports.begin(), ports.end(), [name](const PartPort &port) {
        return sameFolded(port.name, name);
    });
    return found == ports.end() ? nullptr : &*found;
}

bool Part::says(std::string_view word) const noexcept
{
    return std::any_of(words.begin(), words.end(),
                       [word](const std::string &said) { return sameFolded(said, word); });
}

const Decimal &Offer::priceEach(const Decimal &quantity) const
{
    assert(!breaks.empty());
    const auto above =
        std::find_if(breaks.begin() + 1, breaks.end(),
                     [&quantity](const Break &step) { return step.from > quantity; });
    return std::prev(above)->priceEach;
}

} // namespace flarestock
