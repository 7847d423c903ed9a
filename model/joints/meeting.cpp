// SPDX-License-Identifier: MIT

#include "model/joints/meeting.h"

#include <cassert>
#include <cctype>

namespace flarestock {

Mating meeting(const Port &a, const Port &b)
{
    Mating bare = mating(a, b);
    if (bare.verdict != Verdict::FitsWithAid)
        return bare;
    std::vector<Aid> aids;
    for (const Need &need : bare.needs)
        aids.push_back(need.aid);
    return mating(a, b, aids);
}

bool isCutEnd(const Port &port) noexcept
{
    return port.family == Family::Hose || port.family == Family::Tube;
}

Mating holding(const Port &cut)
{
    assert(isCutEnd(cut));
    Mating held;
    held.verdict = Verdict::Fits;
    if (cut.family == Family::Hose) {
        held.why = "The hose end's maker lists hose " + cut.construction + " " + cut.size + ".";
        held.source = "the part's own list of hoses";
    } else {
        held.why = "The nut goes over tube of " + cut.size + ".";
        held.source = "the part's own tube size";
    }
    return held;
}

Mating clamped(const Port &hose, Mating bare)
{
    bare.verdict = Verdict::Fits;
    bare.why = "The maker of hose " + hose.construction + " " + hose.size +
               " lets it go over a barb of its bore; a clamp holds it.";
    bare.source = "the part's own data";
    return bare;
}

std::string foldedThread(std::string_view thread)
{
    std::string folded;
    for (const char letter : thread) {
        if (letter != ' ')
            folded += static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    }
    if (folded.size() > 2 && folded.ends_with(".0"))
        folded.resize(folded.size() - 2);
    return folded;
}

std::string washerThread(const Port &a, const Port &b)
{
    const auto rank = [](const Port &port) {
        return (port.gender == Gender::Male ? 2 : 0) + (port.family == Family::Banjo ? 1 : 0);
    };
    const Port &over = rank(b) > rank(a) ? b : a;
    const bool pipe = over.family == Family::Bspp || over.family == Family::Bspp60;
    return foldedThread(pipe ? "G" + over.size : over.size);
}

} // namespace flarestock
