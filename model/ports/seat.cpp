// SPDX-License-Identifier: MIT

#include "model/ports/seat.h"

#include <array>
#include <cmath>

namespace flarestock {

namespace {

struct SeatWords {
    double degrees;
    std::string_view subject;
    std::string_view madeFor;
};
constexpr std::array<SeatWords, 14> Words{{
    {37, "the 37° cone", "a 37° flare"},
    {45, "the 45° cone", "a 45° flare"},
    {45, "the inverted flare", "an inverted flare"},
    {45, "the bubble flare", "a bubble flare"},
    {0, "the ring of the stud", "a ring in its chamfer"},
    {0, "the ring in the face", "a ring in the face of a male"},
    {30, "the 60° cone", "a 60° cone of ISO 8434-6"},
    {30, "the 60° cone of JIS B 8363", "a 60° cone of JIS B 8363"},
    {30, "the 30° flare", "a 30° flare"},
    {0, "the taper thread", "a taper thread with sealant"},
    {0, "the washer under the shoulder", "a washer on its flat face"},
    {12, "the 24° cone", "a 24° cone"},
    {0, "the banjo with its washers", "a banjo"},
    {0, "nothing", "nothing"},
}};
static_assert(Words.size() == static_cast<std::size_t>(Seat::None) + 1, "every seat has its words");

std::string threads(const SeatedPair &pair)
{
    const auto &male = pair.maleRow.thread->name;
    const auto &female = pair.femaleRow.thread->name;
    return male == female ? "Both have thread " + male
                          : "Thread " + male + " runs home in " + female;
}

std::string standards(const SeatedPair &pair)
{
    const auto &male = pair.maleRow.source;
    const auto &female = pair.femaleRow.source;
    return male == female ? male : male + "; " + female;
}

Mating says(const SeatedPair &pair, Verdict verdict, std::string why, std::vector<Need> needs = {})
{
    return {verdict, std::move(needs), std::move(why), standards(pair), {}};
}

/// Families of one seat whose size is a tube: the same thread can serve two tubes.
std::optional<Mating> otherTube(const SeatedPair &pair)
{
    const double male = pair.maleRow.tubeMm;
    const double female = pair.femaleRow.tubeMm;
    if (male <= 0 || female <= 0 || std::abs(male - female) < 0.1)
        return {};
    // Of 24° cones the nut on the female side carries the tube; of inverted flares the male nut.
    const bool cone24 = seatOf(pair.male.family) == Seat::Cone24;
    const double carried = cone24 ? female : male;
    const double bore = cone24 ? male : female;
    if (carried > bore)
        return says(pair, Verdict::NoFit,
                    threads(pair) +
                        ", but the tube of the one is larger than the seat of the other "
                        "takes: it cannot enter.");
    return says(pair, Verdict::Leaks,
                threads(pair) +
                    ", but the seat is made for a larger tube: the smaller one does not "
                    "touch it all round.");
}

Need ringOf(const SizeRow &row)
{
    return {Aid::ORing, 1, row.ring};
}

Mating sameSeat(const SeatedPair &pair, Seat seat)
{
    switch (seat) {
    case Seat::BossRing:
        return says(pair, Verdict::Fits,
                    threads(pair) +
                        "; the ring under the male's shoulder is squeezed in the port's "
                        "chamfer and seals.",
                    {ringOf(pair.femaleRow)});
    case Seat::FaceRing:
        return says(pair, Verdict::Fits,
                    threads(pair) + "; the ring in the male's face seals against the flat female.",
                    {ringOf(pair.maleRow)});
    case Seat::FlatWasher:
        return says(pair, Verdict::Fits,
                    threads(pair) + "; a washer between shoulder and spot face seals, the parallel "
                                    "thread only clamps.",
                    {{Aid::Washer, 1, {}}});
    case Seat::Taper: {
        const bool dry = pair.male.family == Family::Nptf && pair.female.family == Family::Nptf;
        if (dry)
            return says(
                pair, Verdict::Fits,
                "Both are dry-seal taper threads: crests and roots crush together and seal; "
                "many still use sealant against galling.");
        return says(pair, Verdict::Fits,
                    "The tapers wedge together; sealant closes the spiral path at the crests.",
                    {{Aid::Sealant, 1, {}}});
    }
    case Seat::Cone37:
    case Seat::Cone45:
    case Seat::Inverted:
    case Seat::Bubble:
    case Seat::Cone60:
    case Seat::Cone60Other:
    case Seat::Flare30:
    case Seat::Cone24:
    case Seat::Banjo:
    case Seat::None:
        break;
    }
    return says(pair, Verdict::Fits,
                threads(pair) + ", and " + std::string(words(seat)) +
                    " meets its like: made for each other.");
}

std::optional<Mating> unlikeThatHolds(const SeatedPair &pair)
{
    const auto male = pair.male.family;
    const auto female = pair.female.family;
    if (male == Family::Banjo && (female == Family::Metric || female == Family::Bspp))
        return says(pair, Verdict::Fits,
                    "The bolt runs home, and a crush washer on each side of the eye seals against "
                    "bolt head and spot face.",
                    {{Aid::CrushWasher, 2, {}}});
    if (male == Family::Bspt && female == Family::Bspp)
        return Mating{
            Verdict::FitsWithCaution,
            {{Aid::Sealant, 1, {}}},
            "A taper male wedges in a parallel port only over its first turns, with "
            "sealant; ISO 7-1 means that for Rp, a G port is not cut to its limits.",
            "ISO 7-1 (external R in internal Rp), ISO 228-1; an engineering forum: into a "
            "fixed port, never into a swivel cone",
            {}};
    return {};
}

std::string whatIsWrong(const SeatedPair &pair)
{
    const auto male = seatOf(pair.male.family);
    const auto female = seatOf(pair.female.family);
    const std::string subject(words(male));
    const std::string madeFor(Words[static_cast<std::size_t>(female)].madeFor);
    const bool cones = coneDegrees(male) > 0 && coneDegrees(female) > 0;
    if (cones && coneDegrees(male) != coneDegrees(female))
        return subject + " touches a seat made for " + madeFor +
               " in a line at best, which bruises and leaks.";
    if (cones)
        return subject + " meets a seat made for " + madeFor +
               ": the angle agrees, but the forms stand the other way round or on another line.";
    return subject + " has nothing to seal against: the port is made for " + madeFor + ".";
}

} // namespace

Seat seatOf(Family family) noexcept
{
    switch (family) {
    case Family::An:
    case Family::Jic:
        return Seat::Cone37;
    case Family::Sae45:
        return Seat::Cone45;
    case Family::InvertedFlare:
        return Seat::Inverted;
    case Family::Bubble:
        return Seat::Bubble;
    case Family::Orb:
    case Family::Iso6149:
        return Seat::BossRing;
    case Family::Orfs:
        return Seat::FaceRing;
    case Family::Bspp60:
        return Seat::Cone60;
    case Family::Jis60:
        return Seat::Cone60Other;
    case Family::Jis30:
        return Seat::Flare30;
    case Family::Npt:
    case Family::Nptf:
    case Family::Bspt:
        return Seat::Taper;
    case Family::Bspp:
    case Family::Metric:
        return Seat::FlatWasher;
    case Family::Din24L:
    case Family::Din24S:
        return Seat::Cone24;
    case Family::Banjo:
        return Seat::Banjo;
    case Family::QuickConnect:
    case Family::Barb:
    case Family::Tube:
    case Family::Hose:
    case Family::Weld:
        break;
    }
    return Seat::None;
}

double coneDegrees(Seat seat) noexcept
{
    return Words[static_cast<std::size_t>(seat)].degrees;
}

std::string_view words(Seat seat) noexcept
{
    return Words[static_cast<std::size_t>(seat)].subject;
}

Mating seatsMeet(const SeatedPair &pair)
{
    if (auto holds = unlikeThatHolds(pair))
        return *holds;
    const auto male = seatOf(pair.male.family);
    const auto female = seatOf(pair.female.family);
    const bool tapersDiffer = pair.maleRow.thread->tapered != pair.femaleRow.thread->tapered;
    if (male != female || male == Seat::Banjo || tapersDiffer)
        return says(pair, Verdict::Leaks,
                    threads(pair) + ", so it screws together, but " + whatIsWrong(pair));
    if (auto other = otherTube(pair))
        return *other;
    auto met = sameSeat(pair, male);
    const bool unj = pair.maleRow.thread->form == ThreadForm::UnifiedJ ||
                     pair.femaleRow.thread->form == ThreadForm::UnifiedJ;
    if (unj && pair.maleRow.thread->form != pair.femaleRow.thread->form) {
        met.verdict = Verdict::FitsWithCaution;
        met.why = "Size, pitch and 37° seat agree; but AN threads have the UNJ form, whose larger "
                  "root can rub at the minor diameter of a UN thread: start it by hand.";
        met.source = "SAE AS4395 and SAE J514; a thread-gauge maker's note on UNJ against UN; UNJ "
                     "internal minor D − 0.974279 P (AS8879)";
    }
    return met;
}

} // namespace flarestock
