// SPDX-License-Identifier: MIT

#include "model/ports/plain_meeting.h"

#include "model/ports/size_table.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace flarestock {

namespace {

constexpr double SameMm = 0.35; // 8 mm and 5/16 in differ by 0.06, 5/16 and 3/8 by 1.6
constexpr auto Practice = "common practice, no source";

struct Plain {
    const Port &first; ///< The one whose family comes first in the order below.
    const Port &second;
    double firstMm;
    double secondMm;
};

Mating no(std::string why, std::string source = Practice)
{
    return {Verdict::NoFit, {}, std::move(why), std::move(source), {}};
}

/// Whether a clamp draws a hose tight on what it goes over.
enum class Squeeze : std::uint8_t { Yes, No, Unknown };

struct Construction {
    std::string_view word; ///< Stands in the construction's name.
    Squeeze squeeze;
};
/// Fuel and coolant hose that is made for clamps (SAE J30 types R6, R7, R9, R14; J20 R4), and hose
/// that takes crimped or screwed ends only (SAE J517 100R1, R2, R5, R7, R8, R14; MIL-H-8788 and
/// 8794; J1401): from memory. The longer word stands before the one that it holds.
constexpr std::array Constructions{
    Construction{"30R6", Squeeze::Yes},      Construction{"30R7", Squeeze::Yes},
    Construction{"30R9", Squeeze::Yes},      Construction{"30R14", Squeeze::Yes},
    Construction{"20R4", Squeeze::Yes},      Construction{"PTFE", Squeeze::No},
    Construction{"100R14", Squeeze::No},     Construction{"100R1", Squeeze::No},
    Construction{"100R2", Squeeze::No},      Construction{"100R5", Squeeze::No},
    Construction{"100R7", Squeeze::No},      Construction{"100R8", Squeeze::No},
    Construction{"MIL-H-8788", Squeeze::No}, Construction{"MIL-H-8794", Squeeze::No},
    Construction{"J1401", Squeeze::No},
};

Squeeze squeezeOf(const Port &hose)
{
    const auto *known =
        std::find_if(Constructions.begin(), Constructions.end(), [&](const Construction &one) {
            return hose.construction.find(one.word) != std::string::npos;
        });
    return known == Constructions.end() ? Squeeze::Unknown : known->squeeze;
}

constexpr auto HoseSource = "SAE J30, J20 and J517 from memory; common practice, no source";

/// A hose over something of the bore's size, for a clamp. `thing`: "barb", "tube".
std::optional<Mating> hoseRefuses(const Plain &pair, const std::string &thing)
{
    if (squeezeOf(pair.first) == Squeeze::No)
        return no("A clamp does not draw " + pair.first.construction + " hose tight on a " + thing +
                      ": it takes the hose end that its maker lists.",
                  HoseSource);
    const double over = pair.secondMm - pair.firstMm;
    if (over > SameMm)
        return no("The " + thing + " is larger than the hose of that number: it does not go over.");
    if (over < -SameMm)
        return no("The " + thing +
                  " is smaller than the bore: the clamp cannot draw the hose tight.");
    return {};
}

Mating hoseOnBarb(const Plain &pair)
{
    if (auto refused = hoseRefuses(pair, "barb"))
        return *refused;
    if (squeezeOf(pair.first) == Squeeze::Yes)
        return {Verdict::Fits,
                {{Aid::Clamp, 1, {}}},
                "The hose goes over the barb of its bore; a clamp holds it.",
                HoseSource,
                {}};
    return {Verdict::FitsWithCaution,
            {{Aid::Clamp, 1, {}}},
            "The hose goes over the barb of its bore, and a clamp holds it where its maker lets "
            "it be clamped: soft rubber hose yes, braided or lined hose no.",
            HoseSource,
            {}};
}

Mating hoseOnTube(const Plain &pair)
{
    if (auto refused = hoseRefuses(pair, "tube"))
        return *refused;
    return {Verdict::FitsWithCaution,
            {{Aid::Clamp, 1, {}}},
            "The hose goes over the tube and a clamp holds it, but a tube without a bead lets it "
            "creep off under pressure.",
            Practice,
            {}};
}

bool takesTube(const Port &port)
{
    return port.turning == Turning::Nut;
}

/// "0.06"; of less than one.
std::string hundredths(double mm)
{
    const auto count = std::to_string(std::lround(mm * 100));
    return (count.size() < 2 ? "0.0" : "0.") + count;
}

/// A tube in a nut: flared, or with a cutting ring.
Mating tubeInNut(const Port &tube, const Port &nut)
{
    const auto *tubeRow = sizeOf(tube);
    const auto *nutRow = sizeOf(nut);
    if (nutRow->tubeMm <= 0)
        return no("That nut is not made for a tube.");
    const double over = tubeRow->tubeMm - nutRow->tubeMm;
    if (std::abs(over) > 0.1)
        return no(over > 0
                      ? "The tube is larger than the nut's bore: it cannot enter."
                      : "The tube is smaller than the nut is made for: the flare has nothing to "
                        "sit on.",
                  nutRow->source);
    const bool sleeve = nut.family == Family::An || nut.family == Family::Jic ||
                        nut.family == Family::Din24L || nut.family == Family::Din24S;
    const std::vector<Need> needs =
        sleeve ? std::vector<Need>{{Aid::Sleeve, 1, {}}} : std::vector<Need>{};
    if (std::abs(over) > 0.02) // 8 mm and 5/16 in: within what tube is drawn to, but not the same
        return {Verdict::FitsWithCaution,
                needs,
                "The tube is " + hundredths(std::abs(over)) + " mm " +
                    (over > 0 ? "larger" : "smaller") +
                    " than the nut is made for: it goes in, but try the flare or ring on an "
                    "offcut first, or use the tube that the nut is made for.",
                nutRow->source,
                {}};
    return {Verdict::Fits,
            needs,
            sleeve ? "The nut goes over the tube; a sleeve behind the flare, or the cutting ring, "
                     "carries it."
                   : "The nut goes over the tube, which is then flared to its form.",
            nutRow->source,
            {}};
}

Mating welded(const Plain &pair)
{
    if (std::abs(pair.firstMm - pair.secondMm) > SameMm)
        return no("The sizes differ: there is no edge to weld round.");
    return {Verdict::FitsWithCaution,
            {},
            "Made to be welded; the weld is tested for leaks before it is used.",
            Practice,
            {}};
}

Mating quickConnect(const Port &a, const Port &b)
{
    const auto *rowA = sizeOf(a);
    const auto *rowB = sizeOf(b);
    if (rowA != rowB)
        return no("The spigot is of another size: it does not latch.", rowA->source);
    return {Verdict::Fits,
            {},
            "The connector latches on the spigot of its size; pull on it to be sure.",
            rowA->source,
            {}};
}

/// Quick connector, hose, tube, weld, barb, then all the rest.
int order(const Port &port)
{
    switch (port.family) {
    case Family::QuickConnect:
        return 0;
    case Family::Hose:
        return 1;
    case Family::Tube:
        return 2;
    case Family::Weld:
        return 3;
    case Family::Barb:
        return 4;
    case Family::An:
    case Family::Jic:
    case Family::Orb:
    case Family::Orfs:
    case Family::Sae45:
    case Family::InvertedFlare:
    case Family::Bubble:
    case Family::Npt:
    case Family::Nptf:
    case Family::Bspp:
    case Family::Bspp60:
    case Family::Jis60:
    case Family::Jis30:
    case Family::Bspt:
    case Family::Iso6149:
    case Family::Metric:
    case Family::Din24L:
    case Family::Din24S:
    case Family::Banjo:
        break;
    }
    return 5;
}

Mating cutHose(const Plain &pair)
{
    switch (pair.second.family) {
    case Family::Barb:
        return hoseOnBarb(pair);
    case Family::Tube:
        return hoseOnTube(pair);
    case Family::Hose:
        return no("Two cut hoses do not join: it takes a hose end, or a barb and clamps.");
    default:
        return no("A cut hose joins nothing by itself: it takes a hose end that its maker lists.");
    }
}

} // namespace

bool isPlain(const Port &port) noexcept
{
    return order(port) < 5;
}

Mating plainMeet(const Port &a, const Port &b)
{
    assert(isPlain(a) || isPlain(b));
    const bool turned = order(b) < order(a) || (order(a) == order(b) && b < a);
    const Port &first = turned ? b : a;
    const Port &second = turned ? a : b;
    const Plain pair{first, second, sizeOf(first)->tubeMm, sizeOf(second)->tubeMm};
    switch (first.family) {
    case Family::QuickConnect:
        if (second.family == Family::QuickConnect)
            return quickConnect(first, second);
        return no("A quick connector latches only on its spigot.", sizeOf(first)->source);
    case Family::Hose:
        return cutHose(pair);
    case Family::Tube:
        if (second.family == Family::Weld)
            return welded(pair);
        if (second.family == Family::Tube || second.family == Family::Barb)
            return no("Two plain ends of tube do not join: it takes nuts, a union or a weld.");
        if (takesTube(second))
            return tubeInNut(first, second);
        return no("A plain tube joins a thread only by a nut that goes over it.");
    case Family::Weld:
        if (second.family == Family::Weld)
            return welded(pair);
        return no("A weld-on end joins tube or sheet of its size, nothing else.");
    default:
        return no("A barb takes a hose, nothing else.");
    }
}

} // namespace flarestock
