// SPDX-License-Identifier: MIT

#include "model/ports/mating.h"

#include "model/ports/plain_meeting.h"
#include "model/ports/seat.h"
#include "model/ports/thread_meeting.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace flarestock {

namespace {

std::string degrees(double angle)
{
    return std::to_string(std::lround(angle)) + "°";
}

constexpr std::array<std::string_view, 8> VerdictWords{
    "same-gender",       "no-fit",        "jams", "loose", "leaks",
    "fits-with-caution", "fits-with-aid", "fits"};
static_assert(VerdictWords.size() == static_cast<std::size_t>(Verdict::Fits) + 1,
              "every verdict has a word");

/// A banjo's bolt is a male thread, whatever it meets.
bool isMaleSide(const Port &port)
{
    return port.gender == Gender::Male || port.family == Family::Banjo;
}

Mating sameGender(const Port &a, const Port &b)
{
    const bool male = a.gender == Gender::Male;
    return {Verdict::SameGender,
            {},
            male ? "Both are male: it takes a female coupling between them."
                 : "Both are female: it takes a male union between them.",
            sizeOf(a)->source == sizeOf(b)->source ? sizeOf(a)->source
                                                   : sizeOf(a)->source + "; " + sizeOf(b)->source,
            {}};
}

std::string hundredths(double mm)
{
    const long whole = std::lround(mm * 100);
    const auto below = std::to_string(whole % 100);
    return std::to_string(whole / 100) + "." + (below.size() < 2 ? "0" + below : below) + " mm";
}

std::string pitchWords(const Thread &thread)
{
    const double perInch = 25.4 / thread.pitchMm;
    const bool inch = thread.form != ThreadForm::Metric;
    if (!inch)
        return hundredths(thread.pitchMm) + " pitch";
    const auto half = std::lround(perInch * 2);
    return std::to_string(half / 2) + (half % 2 ? ".5" : "") + " threads to the inch";
}

/// Why two threads do not run home; nothing where they do.
std::optional<Mating> threadsRefuse(const SeatedPair &pair)
{
    using Outcome = ThreadMeeting::Outcome;
    const Thread &male = *pair.maleRow.thread;
    const Thread &female = *pair.femaleRow.thread;
    const auto meeting = meet(male, female);
    const auto source = "thread geometry: " + pair.maleRow.source + "; " + pair.femaleRow.source;
    const auto says = [&](Verdict verdict, std::string why) {
        return Mating{verdict, {}, std::move(why), source, {}};
    };
    switch (meeting.outcome) {
    case Outcome::TooLarge:
        return says(Verdict::NoFit, "Male thread " + male.name + " (" + hundredths(male.majorMm) +
                                        ") is too large to start in " + female.name + " (" +
                                        hundredths(female.majorMm) + ").");
    case Outcome::FallsThrough:
        return says(Verdict::NoFit, "Male thread " + male.name + " (" + hundredths(male.majorMm) +
                                        ") passes through " + female.name +
                                        " without touching its thread.");
    case Outcome::Binds: {
        auto jams = says(Verdict::Jams, {});
        jams.turns = std::round(meeting.turns * 10) / 10;
        const auto tenths = std::lround(meeting.turns * 10);
        jams.why = male.name + " starts in " + female.name + " and binds after about " +
                   std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) +
                   " turns: " + pitchWords(male) + " against " + pitchWords(female) +
                   ". Do not force it.";
        return jams;
    }
    case Outcome::Thin:
        return says(Verdict::Loose,
                    std::string(male.pitchMm == female.pitchMm ? "The pitch agrees"
                                                               : "The pitch nearly agrees") +
                        ", so " + male.name + " goes into " + female.name + ", but only " +
                        std::to_string(std::lround(meeting.depth * 100)) +
                        " % of the thread depth holds: it can strip.");
    case Outcome::OtherFlanks:
        return says(Verdict::Leaks, "The pitch agrees and it feels right, but " + male.name +
                                        " and " + female.name + " have flanks of " +
                                        degrees(male.flankAngle()) + " and " +
                                        degrees(female.flankAngle()) +
                                        ": they touch in lines and leak, sealant or not.");
    case Outcome::RunsHome:
        break;
    }
    return {};
}

bool isWritten(const Need &need, std::span<const Aid> aids)
{
    return std::any_of(aids.begin(), aids.end(), [&need](Aid aid) {
        const bool washers = (need.aid == Aid::Washer && aid == Aid::CrushWasher) ||
                             (need.aid == Aid::CrushWasher && aid == Aid::Washer);
        return aid == need.aid || washers; // copper on a spot face, bonded ones on a banjo
    });
}

/// The verdict with the aids that are written, and a word on those that do not help.
Mating withAids(Mating met, std::span<const Aid> aids)
{
    const bool all = std::all_of(met.needs.begin(), met.needs.end(),
                                 [&](const Need &need) { return isWritten(need, aids); });
    if (met.verdict == Verdict::Fits && !all)
        met.verdict = Verdict::FitsWithAid;
    if (!fits(met.verdict) && !aids.empty())
        met.why += " What is written behind the plus sign (" + std::string(text(aids.front())) +
                   ") does not help.";
    return met;
}

Mating threadedMeet(const Port &a, const Port &b)
{
    const bool aIsMale = isMaleSide(a);
    const Port &male = aIsMale ? a : b;
    const Port &female = aIsMale ? b : a;
    const SeatedPair pair{male, female, *sizeOf(male), *sizeOf(female)};
    if (auto refused = threadsRefuse(pair))
        return *refused;
    return seatsMeet(pair);
}

} // namespace

std::string_view text(Verdict verdict) noexcept
{
    return VerdictWords[static_cast<std::size_t>(verdict)];
}

bool fits(Verdict verdict) noexcept
{
    return verdict >= Verdict::FitsWithCaution;
}

std::string Need::text() const
{
    std::string said(flarestock::text(aid));
    if (!designation.empty())
        said += " " + designation;
    if (count > 1)
        said += " × " + std::to_string(count);
    return said;
}

Mating mating(const Port &a, const Port &b, std::span<const Aid> aids)
{
    assert(sizeOf(a) != nullptr && sizeOf(b) != nullptr);
    if (a.gender != Gender::None && a.gender == b.gender)
        return withAids(sameGender(a, b), aids);
    if (isPlain(a) || isPlain(b))
        return withAids(plainMeet(a, b), aids);
    if (isMaleSide(a) == isMaleSide(b)) // Two eyes, or an eye and a male thread.
        return withAids({Verdict::NoFit,
                         {},
                         "A banjo needs a female thread for its bolt.",
                         "common practice, no source",
                         {}},
                        aids);
    return withAids(threadedMeet(a, b), aids);
}

} // namespace flarestock
