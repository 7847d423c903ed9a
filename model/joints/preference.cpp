// SPDX-License-Identifier: MIT

#include "model/joints/preference.h"

#include <array>
#include <cstddef>
#include <string>

namespace flarestock {

namespace {
constexpr std::array<std::string_view, 3> PreferenceWords{"shelf", "joints", "money"};
}

std::string_view text(Preference preference) noexcept
{
    return PreferenceWords[static_cast<std::size_t>(preference)];
}

Result<Preference> parsePreference(std::string_view text)
{
    for (std::size_t i = 0; i < PreferenceWords.size(); ++i) {
        if (PreferenceWords[i] == text)
            return static_cast<Preference>(i);
    }
    return problem("preference", "\"" + std::string(text) + "\" is none",
                   "Write shelf, joints or money.");
}

} // namespace flarestock
