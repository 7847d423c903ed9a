// SPDX-License-Identifier: MIT
//
// Metals: bodies that the fluid attacks. The cause is the metal, not the part, so each metal is one
// finding for the build, with the parts that are made of it. A part whose maker allows the fluid,
// or forbids it, is not among them: there his word counts.

#include "model/checks/rules/rules.h"
#include "model/exact/case_fold.h"
#include "model/fluids/attack/metal.h"

#include <map>

namespace flarestock::rules {

namespace {

/// Whether the fluid runs through it, so that its body touches the fluid (of washers only an edge).
bool touchesFluid(Kind kind)
{
    switch (kind) {
    case Kind::Bracket:
    case Kind::Clamp:
    case Kind::Ring:
    case Kind::Washer:
    case Kind::TubeSleeve:
    case Kind::Sealant:
    case Kind::Wire:
    case Kind::Fuse:
    case Kind::Relay:
    case Kind::Tool:
    case Kind::Engine:
        return false;
    default:
        return true;
    }
}

using PartsByMetal = std::map<std::string, std::vector<const BillLine *>>;

PartsByMetal attacked(const BuildUnderCheck &build, Fluid fluid)
{
    PartsByMetal metals;
    for (const auto &line : build.expansion().lines) {
        const Part &part = *line.part;
        if (line.consumed && part.suits.empty() && touchesFluid(part.kind) &&
            metalIn(fluid, part.material).wears != Wears::Unsaid)
            metals[folded(part.material)].push_back(&line);
    }
    return metals;
}

} // namespace

void metals(const BuildUnderCheck &build, Findings &found)
{
    const auto fluid = build.expansion().fluid;
    if (!fluid)
        return;
    for (const auto &[metal, lines] : attacked(build, *fluid)) {
        const auto wear = metalIn(*fluid, metal);
        std::vector<std::string> numbers;
        numbers.reserve(lines.size());
        for (const auto *line : lines)
            numbers.push_back(line->part->number);
        const bool one = lines.size() == 1 && !lines.front()->stations.empty();
        found.push_back(
            {.severity = wear.wears == Wears::Badly ? Severity::Caution : Severity::Note,
             .matter = Matter::FluidAndMaterial,
             .about = BuildUnderCheck::capital(metal) + " in " + std::string(text(*fluid)) + ": " +
                      listed(numbers),
             .where = one ? lines.front()->stations.front() : std::string(),
             .text = BuildUnderCheck::capital(std::string(wear.why)) +
                     ". Their makers do not say that they allow it.",
             .source = std::string(wear.source),
             .remedy = "Ask their makers, or use parts that are coated or of another metal; flush "
                       "and drain the system after use.",
             .mend = {}});
    }
}

} // namespace flarestock::rules
