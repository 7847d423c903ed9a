// SPDX-License-Identifier: MIT
//
// Pressure line: the pressure along one line of a build, run by run in flow order, in parts that
// each have a scale of their own: what a pump draws through, what it pushes through, what comes
// back. A loss of a few hundredths before the pump decides as much as one of several units behind
// it, and on one scale nobody would see it.
//
// The figures are those of systemFlow(); nothing is worked out here. Pascal over the air around.

#pragma once

#include "model/checks/flow/system_flow.h"

namespace flarestock {

struct PressureStep { ///< One run.
    std::string run;
    std::string from; ///< Station ids.
    std::string to;
    struct Along {
        double share = 0; ///< Of the run's length; 0 and 1 at its ends.
        double pa = 0;
    };
    std::vector<Along> line; ///< Two at least.
    double lengthM = 0;
    bool inFull = true; ///< All that it takes is known.

    [[nodiscard]] double beginsPa() const { return line.front().pa; }
    [[nodiscard]] double endsPa() const { return line.back().pa; }
    [[nodiscard]] double dropPa() const { return beginsPa() - endsPa(); }
};

struct PressureLimit {
    enum class What : std::uint8_t {
        Boils,    ///< The fuel boils at a pump's inlet.
        TooNear,  ///< Nearer to that than the findings bear.
        Set,      ///< What regulator or rail is set to.
        LeastSet, ///< The least and the most that the regulator can hold.
        MostSet,
    };
    What what = What::Set;
    double pa = 0;
};

struct PressurePart {
    enum class Side : std::uint8_t {
        Suction,
        Pressure,
        Onwards, ///< From a regulator to what it feeds.
        Return,
        Gravity, ///< From a tank by its level alone.
        Loss,    ///< From a beginning whose pressure nobody knows, taken as nothing.
    };
    Side side = Side::Pressure;
    std::vector<PressureStep> steps; ///< One at least.
    std::vector<PressureLimit> limits;
};

struct PressureLine {
    const Delivery *delivery = nullptr; ///< Of the flow; nothing of gravity and of a circle.
    const GravityFeed *feed = nullptr;
    std::string from; ///< Station ids of its beginning and of what it leads to.
    std::string to;
    std::vector<PressurePart> parts; ///< One at least.

    [[nodiscard]] const PressurePart *part(PressurePart::Side side) const;
};

/// Each delivery's, each gravity feed's; where there is neither and something flows, that of all
/// runs. Empty where nothing flows. Points into the flow.
[[nodiscard]] std::vector<PressureLine> pressureLines(const Expansion &build,
                                                      const SystemFlow &flow);

} // namespace flarestock
