// SPDX-License-Identifier: MIT
//
// System flow: what flows in every line of a fuel build and what pressure that takes, worked out
// over the bill as it stands: the chosen hose by its bore, its ends by their angle, adapters,
// filters. Suction, pressure and return each carry their own flow: in a system with a return that
// is the pump's, not the engine's. It judges nothing; the rules of model/checks do.
//
//   const SystemFlow flow = systemFlow(expansion, conditionsOf(expansion));
//   flow.run("return")->velocityMS;
//   flow.deliveries.front().bypass->floorPa; // what the return line alone keeps up
//
// A system with a return is taken at idle, when nothing is burnt and all that the pump gives comes
// back: the most that each of its lines ever carries. Everything else carries what the engine
// burns. What is not known counts nothing and is named in `unknown`, so that each loss here is a
// least one. Of oil and coolant what a pump of the build gives is followed, cold, when it takes
// most; an engine's own pump states no flow, and in brakes nothing flows.

#pragma once

#include "model/checks/flow/flow_conditions.h"
#include "model/checks/flow/run_line.h"
#include "model/fluids/line/sizing.h"
#include "model/fluids/liquids/vapour_pressure.h"
#include "model/fluids/pump/bypass.h"
#include "model/fluids/pump/inlet.h"
#include "model/fluids/pump/operating_point.h"
#include "model/fluids/pump/surge_tank.h"

namespace flarestock {

struct RunFlow {
    std::string run;
    LineRole role = LineRole::Pressure;
    RunLine line;       ///< With its flow and liquid.
    WholeLineLoss loss; ///< Nothing lost where two ports meet without a change of bore.
    double flowM3S = 0;
    double boreM = 0; ///< Of its hose or tube, in which the next three are; 0 where it has none.
    double velocityMS = 0;
    double reynolds = 0;
    Regime regime = Regime::Laminar;
};

/// Runs one after the other that carry one role's flow.
struct LineSection {
    LineRole role = LineRole::Pressure;
    std::string from; ///< Station ids.
    std::string to;
    std::vector<std::string> runs; ///< In the sense of flow.
    double flowM3S = 0;            ///< The most that one of its runs carries.
    double dropPa = 0;
    double dropLeastPa = 0; ///< With the uncertain runs as laminar.
    bool lossUnknown = false;
};

struct PressurePoint {  ///< Of the picture of the pressure along the line.
    double alongM = 0;  ///< From the tank, along hose and tube.
    double totalPa = 0; ///< Over the air around.
    double wallPa = 0;  ///< What a gauge in the wall shows.
    std::string at;     ///< Run id; a pump's station id where it lifts the pressure.
};

struct PumpAtWork {
    std::string station;
    std::optional<PumpCurve> curve;
    double flowM3S = 0;
    double pressurePa = 0;            ///< Across it; 0 where nothing is known of it.
    LineSection suction;              ///< No runs where nothing leads to it.
    std::optional<InletMargin> inlet; ///< Nothing where the fuel's vapour pressure is not known.
};

enum class DeliveryEnd : std::uint8_t { Bypass, DeadHead, Vessel, User };

/// How a pump's flow compares with its curve.
enum class CurveReach : std::uint8_t { Within, BelowItsBeginning, BeyondItsEnd, NotKnown };

/// One pump, or several side by side, and what they feed.
struct Delivery {
    std::vector<PumpAtWork> pumps;
    DeliveryEnd end = DeliveryEnd::User;
    std::string to;              ///< Station: regulator, surge tank, carburettor, rail.
    std::optional<double> setPa; ///< What is wanted there, boost with it; 0 of a vessel.
    LineSection line;            ///< From the first pump to it, the path that loses most.
    std::vector<LineSection>
        bowls; ///< From a regulator to carburettor or rail, with the engine's flow.
    std::optional<LineSection>
        back; ///< From a bypass regulator to the tank, or over from a full surge tank.
    std::optional<BypassRange> bypass;
    double wantedM3S = 0; ///< Of all its pumps, margin with it; 0 where nobody says.
    CurveReach reach = CurveReach::NotKnown;
    std::optional<OperatingPoint> working;   ///< Where pumps and lines meet: the most they give.
    std::optional<PumpPicture> picture;      ///< Where it is asked for and the curves reach.
    std::vector<PressurePoint> pressures;    ///< Tank to user, then back; the first pump's.
    std::optional<SurgeTankBalance> balance; ///< Of the surge tank that it fills.
};

/// A carburettor that the level in a tank alone feeds.
struct GravityFeed {
    std::string user;
    LineSection line;         ///< From the tank, at the wanted flow; the level is in its drop.
    bool isLevelSaid = false; ///< Somebody says how far the tank stands above.
    double headPa = 0;        ///< Of the level, less what acceleration takes of it.
    double wantedM3S = 0;     ///< Half as much again as the engine burns there.
    double reachesM3S = 0;    ///< What the level pushes, no more than wanted.
};

struct SystemFlow {
    FlowConditions conditions;
    double liquidC = 0;                   ///< How warm the liquid was taken to be.
    std::optional<Liquid> liquid;         ///< Nothing where nothing could be worked out.
    std::optional<VapourPressure> vapour; ///< Of the fuel as warm as it is; nothing: not known.
    std::optional<double> engineM3S;      ///< Burnt at full power; nothing where no power is asked.
    std::vector<RunFlow> runs;            ///< Those that carry something, in flow order.
    std::vector<Delivery> deliveries;     ///< By their first pump, in flow order.
    std::vector<GravityFeed> gravityFeeds;
    std::string notJudged; ///< "nobody states …": why nothing was worked out where something flows.
    std::vector<std::string> unknown; ///< "FF-1: no loss at its flow", each once.

    [[nodiscard]] const RunFlow *run(std::string_view id) const noexcept;
};

/// Nothing worked out where nobody asks for a power or a flow, and in brakes. A pump without a
/// curve is taken to give what is wanted of it. picturePoints is how many points the curves of the
/// pumps' pictures have: 2 at least, or 0 for none.
[[nodiscard]] SystemFlow systemFlow(const Expansion &expansion, const FlowConditions &conditions,
                                    int picturePoints = 0);

} // namespace flarestock
