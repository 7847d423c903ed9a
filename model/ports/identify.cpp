// SPDX-License-Identifier: MIT

#include "model/ports/identify.h"

#include "model/ports/seat.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace flarestock {

namespace {

constexpr double CaliperMm = 0.2;   // What a caliper on worn or bruised crests can be off.
constexpr double SamePitch = 0.012; // Relative: neighbouring pitches of the tables differ by more.

struct Window {
    double least;
    double most;
    double nominal;
};

/// What a caliper can read on a good thread of the row.
Window windowOf(const Thread &thread, Gender gender)
{
    const auto limits = limitsOf(thread);
    if (gender == Gender::Male) {
        if (!thread.tapered)
            return {limits.externalMajorLeast, limits.externalMajorMost, thread.majorMm};
        // Anywhere between its small end and the pipe behind it.
        return {thread.smallEndMm + thread.crestMm(),
                std::max(thread.majorMm, limits.externalMajorMost), thread.maleMajorMm()};
    }
    if (!thread.tapered)
        return {limits.internalMinorLeast, limits.internalMinorMost, thread.femaleMinorMm()};
    return {thread.smallEndMm - thread.borderMm(), limits.internalMinorMost,
            thread.femaleMinorMm()};
}

bool pitchAgrees(const Thread &thread, const Caliper &caliper)
{
    return !caliper.pitchMm || std::abs(thread.pitchMm / *caliper.pitchMm - 1) < SamePitch;
}

/// 37 and its included 74, 45 and 90, 30 and 60, 12 and 24.
bool coneAgrees(Seat seat, double degrees)
{
    const double half = coneDegrees(seat);
    return half > 0 && (std::abs(half - degrees) <= 1.5 || std::abs(2 * half - degrees) <= 1.5);
}

bool seatAgrees(const SizeRow &row, const Caliper &caliper)
{
    const auto seat = seatOf(row.family);
    if (caliper.tapered && !row.thread->tapered)
        return false;
    if (caliper.flatSeat)
        return coneDegrees(seat) == 0 && seat != Seat::Taper;
    return !caliper.seatDegrees || coneAgrees(seat, *caliper.seatDegrees);
}

bool canBe(const SizeRow &row, Gender gender)
{
    return row.thread && (row.family != Family::Banjo || gender == Gender::Male);
}

std::string degreesText(const std::set<Seat> &seats)
{
    std::string said;
    for (const auto seat : seats)
        said += (said.empty() ? "" : ", ") + std::string(words(seat));
    return said;
}

Port portOf(const SizeRow &row, Gender gender)
{
    return {row.family,
            row.size,
            {},
            row.family == Family::Banjo ? Gender::None : gender,
            Turning::Fixed};
}

struct Found {
    std::vector<Candidate> candidates;
    std::set<long> pitches; ///< In 10^-4 of a pitch's own length, rounded: 14 to the inch is one.
    std::set<Seat> seats;
};

Found search(const Caliper &caliper)
{
    std::map<std::string, Candidate> byThread;
    Found found;
    for (const auto &row : sizeRows()) {
        if (!canBe(row, caliper.gender) || !pitchAgrees(*row.thread, caliper) ||
            !seatAgrees(row, caliper))
            continue;
        const auto window = windowOf(*row.thread, caliper.gender);
        if (caliper.diameterMm < window.least - CaliperMm ||
            caliper.diameterMm > window.most + CaliperMm)
            continue;
        auto &candidate = byThread[row.thread->name];
        candidate.thread = row.thread->name;
        candidate.deviationMm = caliper.diameterMm - window.nominal;
        candidate.ports.push_back(portOf(row, caliper.gender));
        found.pitches.insert(std::lround(row.thread->pitchMm * 1000));
        found.seats.insert(seatOf(row.family));
    }
    for (auto &[name, candidate] : byThread)
        found.candidates.push_back(std::move(candidate));
    std::stable_sort(found.candidates.begin(), found.candidates.end(),
                     [](const Candidate &a, const Candidate &b) {
                         return std::abs(a.deviationMm) < std::abs(b.deviationMm);
                     });
    return found;
}

std::string namesOf(const std::vector<Candidate> &candidates)
{
    std::string said;
    for (std::size_t i = 0; i < candidates.size(); ++i)
        said += (i == 0 ? "" : i + 1 == candidates.size() ? " or " : ", ") + candidates[i].thread;
    return said;
}

} // namespace

std::string_view text(Ask ask) noexcept
{
    return ask == Ask::Pitch ? "pitch" : ask == Ask::Seat ? "seat" : "none";
}

Identification identify(const Caliper &caliper)
{
    auto found = search(caliper);
    Identification said;
    const bool pitchOpen = !caliper.pitchMm && found.pitches.size() > 1;
    const bool seatOpen = !caliper.seatDegrees && !caliper.flatSeat && found.seats.size() > 1;
    if (found.candidates.empty()) {
        said.why = "No thread of the tables comes near that; measure again over clean crests, and "
                   "look whether the thread tapers.";
    } else if (pitchOpen) {
        said.ask = Ask::Pitch;
        said.why = "It may be " + namesOf(found.candidates) + ": lay a pitch gauge on it.";
    } else if (seatOpen) {
        said.ask = Ask::Seat;
        said.why = namesOf(found.candidates) + " is used with " + degreesText(found.seats) +
                   ": look at the seat, or lay a seat gauge on it.";
    } else {
        const bool one = found.candidates.size() == 1;
        said.why =
            "It is " + namesOf(found.candidates) +
            (one ? " by what was measured." : " by what was measured; they do not differ in it.");
    }
    said.candidates = std::move(found.candidates);
    return said;
}

} // namespace flarestock
