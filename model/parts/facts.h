// SPDX-License-Identifier: MIT
//
// Facts: what a part of one kind is known for, each as the maker publishes it. Absent means that
// the maker says nothing; nothing is guessed here.
//
// Physical figures are doubles with their unit in the name; money and counted amounts are exact.

#pragma once

#include "model/exact/decimal.h"
#include "model/exact/quantity.h"
#include "model/fluids/fluid.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace flarestock {

/// On what basis a micron rating stands. Two bases do not compare (ISO 16889 beta against nominal).
enum class RatingBasis : std::uint8_t { Unstated, Nominal, Absolute };

/// A filter rating with its basis; the number alone is never compared.
struct MicronRating {
    Decimal micron; ///< µm
    RatingBasis basis = RatingBasis::Unstated;
    std::optional<Decimal> beta; ///< For Absolute: the beta at that size, where the maker says it.
    [[nodiscard]] std::string
    text() const; ///< "10 µm absolute, beta 75", "40 µm nominal", "100 µm"
};

struct HoseFacts {
    std::string construction; ///< The hose series: "PTFE-S". A hose end lists the series it fits.
    int dash = 0;             ///< As the maker numbers it; says nothing of the bore.
    std::optional<double> boreMm;
    std::optional<double> bendRadiusMm;
    std::string liner; ///< "PTFE", "NBR", …: the material that touches the fluid.
    bool conductive = false;
    /// Whether its maker lets it go over a barb under a clamp; nothing where he does not say.
    std::optional<bool> clamped = std::nullopt;
};

struct HoseEndFacts {
    std::vector<std::string> constructions; ///< The series it fits, and no other.
    int hoseDash = 0;
    int angleDegrees = 0; ///< 0, 30, 45, 60, 90, 120, 150, 180.
    std::optional<double> boreMm;
    std::optional<Decimal> allowanceMm; ///< From its seat to the end of the cut hose.
};

struct TubingFacts {
    std::string tubeSize; ///< "3/16", "3/8", "6 mm": the size of its TUBE port.
    std::optional<double> boreMm;
};

struct FilterFacts {
    std::optional<MicronRating> rating; ///< Of the element that it is sold with.
    std::string medium;           ///< "stainless mesh", "paper", "microglass", "bronze", "sock" …
    std::string element;          ///< Part number of the element; empty where it has none.
    bool serviceable = true;      ///< Can be opened in place.
    std::optional<double> flowLh; ///< Rated flow.
    std::optional<double> cleanLossKpa; ///< Loss at flowLh, clean.
    std::optional<double> bypassKpa; ///< Opening pressure of its bypass; absent where it has none.
};

struct ElementFacts {
    MicronRating rating;
    std::string medium;
    bool washable = false;
};

struct PumpFacts {
    struct Point {
        double pressureKpa = 0;
        double volts = 0;
        double flowLh = 0;
    };
    std::vector<Point> curve; ///< As published, by voltage then rising pressure.
    std::optional<double> amps;
    bool electric = true;
    bool serviceable = false; ///< Can be opened and cleaned.
    std::string position;     ///< "in-line", "in-tank", "mechanical".
};

struct RegulatorFacts {
    std::optional<double> lowKpa;
    std::optional<double> highKpa;
    bool bypass = false; ///< Returns the surplus; otherwise dead-head.
    std::optional<double> flowLh;
    /// What it takes wide open at flowLh, back to the tank; nothing where its maker does not say.
    std::optional<double> wideOpenKpa;
};

struct RingFacts {
    std::string designation; ///< "AS568-906", "11.3x2.2"
};

struct WasherFacts {
    bool crush = false; ///< Crush washer; otherwise bonded.
    std::string thread; ///< The male thread or size that it goes over: "M10x1.0", "G1/4", "-6".
};

struct FuelUserFacts { ///< Carburettor, rail, injector: what it wants.
    std::optional<double> pressureLowKpa;
    std::optional<double> pressureHighKpa;
    std::optional<double> passageMicron; ///< The size of dirt that it cannot pass.
};

struct VesselFacts {
    std::optional<double> litres;
    bool pickupSock = false; ///< The pick-up carries a strainer.
    std::optional<MicronRating> sock;
};

struct WireFacts {
    std::optional<int> gauge; ///< AWG; 0 is 1/0.
};

struct CurrentFacts { ///< Fuse: at which it is rated to hold; relay: which it may switch.
    std::optional<double> amps;
};

using Facts = std::variant<std::monostate, HoseFacts, HoseEndFacts, TubingFacts, FilterFacts,
                           ElementFacts, PumpFacts, RegulatorFacts, RingFacts, WasherFacts,
                           FuelUserFacts, VesselFacts, WireFacts, CurrentFacts>;

/// What a part may carry, as published; absent where the maker says nothing.
struct Ratings {
    std::optional<double> pressureKpa;
    std::optional<double> lowC;
    std::optional<double> highC;
};

} // namespace flarestock
