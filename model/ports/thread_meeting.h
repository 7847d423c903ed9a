// SPDX-License-Identifier: MIT
//
// Thread meeting: what a male thread does in a female one, from their geometry alone: whether it
// starts, falls through, binds and after how many turns, holds by too little, or runs home.

#pragma once

#include "model/ports/thread.h"

namespace flarestock {

struct ThreadMeeting {
    enum class Outcome : std::uint8_t {
        TooLarge,     ///< The male does not start.
        FallsThrough, ///< The male passes without touching.
        Binds,        ///< Pitches differ: `turns` until it binds.
        Thin,         ///< Same pitch, but only `depth` of the thread depth holds.
        OtherFlanks,  ///< Runs home, but 55° flanks lie in 60° ones.
        RunsHome,
    };
    Outcome outcome = Outcome::RunsHome;
    double turns = 0; ///< For Binds: 1 or more.
    double depth = 1; ///< Share of the female's basic thread depth that overlaps.
};

/// In order of precedence as listed. The thresholds and their reasons:
/// - starts: the smallest male of its class is no more than 0.3 of a pitch larger than the female's
///   basic major diameter; chamfered ends let that much start (an M10x1.0 nut is known to start in
///   3/8-24: a brake-tube help page). Common practice, no source for the figure itself.
/// - falls through: the crests overlap by less than 3 % of the basic depth, or not at all where
/// male
///   and female lie in the middle of their classes.
/// - thin: less than three quarters of the basic depth overlap; 75 % is what tap drills leave
///   (FreeCAD's tap-drill table leaves 73 to 77 %).
/// - binds: with every turn the flanks are one difference of pitch further apart, until the axial
///   play (difference of basic pitch diameters × tan of half the flank angle) is used
///   up: turns = 1 + play / |difference of pitch|; a taper, of either, wedges sooner. A thread that
///   would bind only beyond its normal engagement counts as one of equal pitch: of a taper its
///   hand-tight length, else 0.65 of its diameter. That figure is set by what a brake-tube help
///   page says: a 3/8-24 nut goes loosely into M10x1.0 and strips, an M10x1.0 nut catches one
///   thread of 3/8-24.
[[nodiscard]] ThreadMeeting meet(const Thread &male, const Thread &female);

} // namespace flarestock
