// SPDX-License-Identifier: MIT

#include "model/exact/problem.h"

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

} // namespace flarestock
