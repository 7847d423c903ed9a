// SPDX-License-Identifier: MIT

#include "model/ports/thread_meeting.h"

#include <algorithm>
#include <cmath>

namespace flarestock {

namespace {

constexpr double StartsOver = 0.3;    // of a pitch
constexpr double LeadIn = 0.1;        // of a pitch
constexpr double DepthLeast = 0.75;   // of the basic depth
constexpr double TouchLeast = 0.03;   // of the basic depth: less is air
constexpr double NormalLength = 0.65; // of the diameter
constexpr double SamePitch = 0.001;   // relative: 14 to the inch in inches and in millimetres

/// The largest and the smallest end of a male, as it enters; alike where it is parallel.
double entersAs(const Thread &male)
{
    return male.tapered ? male.smallEndMm + male.crestMm() : limitsOf(male).externalMajorLeast;
}

/// The overlap of a male at its thickest with the female, as a share of the female's depth.
double overlap(const Thread &male, const Thread &female)
{
    // Of a taper in a parallel thread the part beyond the gauge plane still goes in.
    const double further = male.tapered && !female.tapered ? male.handTightMm / 16 * 0.5 : 0;
    const double root = female.femaleMinorMm() + female.crestMm() + female.borderMm();
    return (male.maleMajorMm() + further - female.femaleMinorMm()) /
           (root - female.femaleMinorMm());
}

/// Crests of a male and a female that are as large as their classes usually come out do not meet.
bool passesAsMade(const Thread &male, const Thread &female)
{
    if (male.tapered || female.tapered)
        return false;
    const auto outer = limitsOf(male);
    const auto inner = limitsOf(female);
    return outer.externalMajorLeast + outer.externalMajorMost <=
           inner.internalMinorLeast + inner.internalMinorMost;
}

/// Flanks that overlap from the first turn on: those of parallel threads beyond what their classes
/// allow; of a parallel male beyond those of a tapered female's mouth, and the little that a
/// lead-in chamfer lets in.
bool isOversize(const Thread &male, const Thread &female)
{
    if (male.tapered)
        return false;
    const double most = female.tapered ? female.pitchDiameterMm + LeadIn * female.pitchMm
                                       : limitsOf(female).internalPitchMost;
    return limitsOf(male).externalPitchLeast > most;
}

double turnsUntilBound(const Thread &male, const Thread &female)
{
    const double play = female.pitchDiameterMm - male.pitchDiameterMm;
    const double half = std::min(male.flankAngle(), female.flankAngle()) / 2;
    const double axial = std::max(0.0, play) * std::tan(half * 3.14159265358979323846 / 180);
    // A taper, of either, uses the play up as it goes in: a sixteenth of the pitch with every turn.
    const bool taper = male.tapered || female.tapered;
    const double wedge = taper ? male.pitchMm / 16 * axial / std::max(play, 1e-9) : 0;
    return 1 + axial / (std::abs(male.pitchMm - female.pitchMm) + wedge);
}

double normalTurns(const Thread &male, const Thread &female)
{
    if (male.tapered || female.tapered)
        return std::max(male.handTightMm, female.handTightMm) / male.pitchMm;
    return NormalLength * std::min(male.majorMm, female.majorMm) / male.pitchMm;
}

bool sameForm(const Thread &male, const Thread &female)
{
    return std::abs(male.flankAngle() - female.flankAngle()) < 1;
}

} // namespace

ThreadMeeting meet(const Thread &male, const Thread &female)
{
    using Outcome = ThreadMeeting::Outcome;
    const double depth = overlap(male, female);
    const double femaleMajor = female.femaleMinorMm() + female.borderMm() + female.crestMm();
    if (entersAs(male) > femaleMajor + StartsOver * female.pitchMm)
        return {Outcome::TooLarge, 0, depth};
    if (depth < TouchLeast || passesAsMade(male, female))
        return {Outcome::FallsThrough, 0, depth};
    const bool samePitch = std::abs(male.pitchMm / female.pitchMm - 1) < SamePitch;
    if (!samePitch) {
        const double turns = turnsUntilBound(male, female);
        if (turns < normalTurns(male, female))
            return {Outcome::Binds, turns, depth};
    }
    if (isOversize(male, female))
        return {Outcome::TooLarge, 0, depth};
    if (depth < DepthLeast)
        return {Outcome::Thin, 0, depth};
    return {sameForm(male, female) ? Outcome::RunsHome : Outcome::OtherFlanks, 0, depth};
}

} // namespace flarestock
