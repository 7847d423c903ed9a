// SPDX-License-Identifier: MIT
//
// Thread: the geometry of one screw thread, and the limits that its usual class lets a maker use.
//
// Basic diameters follow from the major diameter and the pitch by the formulas of the form, so the
// tables need carry only those two; what the tables print besides is checked against the formulas.
//
//   const Thread flare = threadNamed("9/16-18").value();   // major 14.2875, pitch 25.4 / 18
//   limitsOf(flare).externalPitchMost;                     // 2A: 13.335 mm

#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace flarestock {

enum class ThreadForm : std::uint8_t {
    Unified,      ///< 60°, ASME B1.1, classes 2A and 2B.
    UnifiedJ,     ///< 60°, rounded root and larger minor diameter, classes 3A and 3B.
    Metric,       ///< 60°, ISO 261 / ISO 965, 6g and 6H.
    Whitworth,    ///< 55°, ISO 228-1 and ISO 7-1.
    NationalPipe, ///< 60°, ASME B1.20.1 and B1.20.3.
};

/// Diameters in millimetres. Of a taper they are those of the gauge plane: the plane in which the
/// face of the internal thread stands when the joint is hand-tight.
struct Thread {
    std::string name; ///< "9/16-18", "M14x1.5", "G1/4-19", "3/8-18"
    ThreadForm form = ThreadForm::Unified;
    bool tapered = false; ///< 1:16 on diameter.
    double majorMm = 0;   ///< Of a taper the outside diameter of the pipe.
    double pitchMm = 0;
    double pitchDiameterMm = 0;
    double smallEndMm = 0;     ///< Pitch diameter at the end of a tapered male, E0; else as above.
    double handTightMm = 0;    ///< Length of hand-tight engagement of a taper, L1; else 0.
    double usefulLengthMm = 0; ///< Length of useful external thread of a taper, L2; else 0.

    [[nodiscard]] double flankAngle() const noexcept; ///< 60 or 55 degrees.
    /// Difference of diameter between the pitch line and the crests of the male …
    [[nodiscard]] double crestMm() const noexcept;
    /// … and between the pitch line and the crests of the female.
    [[nodiscard]] double borderMm() const noexcept;
    [[nodiscard]] double maleMajorMm() const noexcept { return pitchDiameterMm + crestMm(); }
    [[nodiscard]] double femaleMinorMm() const noexcept { return pitchDiameterMm - borderMm(); }
};

/// What the usual class of the form allows, millimetres, at the gauge plane of a taper.
struct ThreadLimits {
    double externalPitchLeast = 0;
    double externalPitchMost = 0;
    double externalMajorLeast = 0;
    double externalMajorMost = 0;
    double internalPitchLeast = 0;
    double internalPitchMost = 0;
    double internalMinorLeast = 0;
    double internalMinorMost = 0;
};

/// A parallel thread of a form by its major diameter and pitch, both in millimetres.
[[nodiscard]] Thread parallelThread(std::string name, ThreadForm form, double majorMm,
                                    double pitchMm);

/// A Unified or metric fine thread by its designation: "7/16-20", "1 1/16-12", "M10x1.0".
/// Nothing where the text is not one, or is not fine: more than 4 mm, or less than 8 threads to the
/// inch, or a diameter beyond 3 to 120 mm.
[[nodiscard]] std::optional<Thread> threadNamed(std::string_view designation);
/// The same with "M10X1" or "M 10 × 1" spelt "M10x1.0"; nothing as above.
[[nodiscard]] std::optional<std::string> threadSpelt(std::string_view designation);

/// Formulas of ASME B1.1 section 5 and ISO 965-1 from memory, checked against their tables in
/// tests/ports; ISO 228-1 class A and the turn either way of B1.20.1 and ISO 7-1 from memory.
[[nodiscard]] ThreadLimits limitsOf(const Thread &thread);

/// "3/8" or "1 1/16" in inches; nothing where it is no such number or not above zero.
[[nodiscard]] std::optional<double> inchesOf(std::string_view text);

} // namespace flarestock
