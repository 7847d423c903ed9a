// SPDX-License-Identifier: MIT

#include "model/exact/problem.h"

#include <algorithm>

namespace flarestock {

std::string Problem::sentence() const
{
    std::string said = thing;
    if (line > 0)
        said += (said.empty() ? "line " : ", line ") + std::to_string(line);
    if (column > 0)
        said += (said.empty() ? "column " : ", column ") + std::to_string(column);
    if (!said.empty())
        said += ": ";
    said += wrong + ".";
    if (!remedy.empty())
        said += " " + remedy;
    return said;
}

std::string Problem::text() const
{
    if (excerpt.empty() || column == 0)
        return sentence();
    return sentence() + "\n  " + excerpt + "\n  " + std::string(column - 1, ' ') + "^";
}

std::string quotedStart(std::string_view text)
{
    constexpr std::size_t ShownMax = 40;
    std::size_t end = std::min(text.size(), ShownMax);
    // Never between the bytes of one UTF-8 character.
    while (end > 0 && end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end;
    std::string shown(text.substr(0, end));
    std::replace_if(
        shown.begin(), shown.end(),
        [](char each) { return static_cast<unsigned char>(each) < 0x20; }, ' ');
    return "\"" + shown + (end < text.size() ? "…\"" : "\"");
}

} // namespace flarestock
