// SPDX-License-Identifier: MIT

#include "model/checks/finding.h"

namespace flarestock {

std::string_view text(Severity severity) noexcept
{
    switch (severity) {
    case Severity::Stop:
        return "stop";
    case Severity::Caution:
        return "caution";
    case Severity::Note:
        break;
    }
    return "note";
}

std::string_view text(Matter matter) noexcept
{
    switch (matter) {
    case Matter::FluidAndMaterial:
        return "fluid and material";
    case Matter::Fit:
        return "fit";
    case Matter::Assembly:
        return "assembly";
    case Matter::Pressure:
        return "pressure";
    case Matter::DirectionAndFilters:
        return "direction and filters";
    case Matter::Flow:
        return "flow";
    case Matter::Stock:
        break;
    }
    return "stock";
}

} // namespace flarestock
