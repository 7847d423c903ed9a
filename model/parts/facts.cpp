// SPDX-License-Identifier: MIT

#include "model/parts/facts.h"

namespace flarestock {

std::string MicronRating::text() const
{
    std::string said = micron.text() + " µm";
    switch (basis) {
    case RatingBasis::Unstated:
        break;
    case RatingBasis::Nominal:
        said += " nominal";
        break;
    case RatingBasis::Absolute:
        said += " absolute";
        if (beta)
            said += ", beta " + beta->text();
        break;
    }
    return said;
}

} // namespace flarestock
