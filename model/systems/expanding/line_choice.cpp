// SPDX-License-Identifier: MIT

#include "model/systems/expanding/line_choice.h"

#include "model/exact/case_fold.h"
#include "model/parts/fluid_allowed.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

namespace flarestock {

namespace {

std::string saidBy(const Varying &varying, const FlatRun &run)
{
    const auto said = varying.with(run.scope->answers);
    return said ? std::string(trimmed(*said)) : std::string();
}

tl::unexpected<Problem> wrongRun(const FlatRun &run, std::string wrong, std::string remedy)
{
    return problem("template " + run.scope->form->id + ", run " + run.id, std::move(wrong),
                   std::move(remedy));
}

/// To the micrometre, with a point whatever the locale; of no length where it is too long to say.
std::string inMetres(const Measure &length)
{
    std::array<char, 40> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), length.si,
                                   std::chars_format::fixed, 6);
    return end.ec == std::errc{} ? std::string(digits.data(), end.ptr) + " m" : "0 m";
}

/// "5 ft 6 in" exactly; a unit that only measures know ("150 cm") to the micrometre.
Result<Quantity> lengthOf(const std::string &typed, const FlatRun &run)
{
    auto length = Quantity::parse(typed);
    if (!length) {
        const auto measure = Measure::parse(typed, Dimension::Length);
        if (!measure)
            return wrongRun(run, "length \"" + typed + "\": " + measure.error().wrong,
                            measure.error().remedy);
        length = Quantity::parse(inMetres(*measure));
    }
    if (!length || !isLength(length->unit) || length->amount.sign() <= 0)
        return wrongRun(run, "\"" + typed + "\" is no length of a line",
                        "Write one above zero, such as \"5 ft 6 in\".");
    return *length;
}

/// A whole number behind an optional minus sign, which the trade writes before a dash size.
Result<int> numberOf(const std::string &typed, std::string_view what, const FlatRun &run)
{
    std::string_view digits = typed;
    if (digits.starts_with('-'))
        digits.remove_prefix(1);
    int number = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (error != std::errc{} || end != digits.data() + digits.size() || number < 0)
        return wrongRun(run, std::string(what) + " \"" + typed + "\" is no whole number",
                        "Write digits, such as \"-8\" for a dash or \"90\" for an angle.");
    return number;
}

Result<std::optional<int>> angleOf(const Varying &varying, const FlatRun &run)
{
    const std::string typed = saidBy(varying, run);
    if (typed.empty())
        return std::nullopt;
    const auto angle = numberOf(typed, "angle", run);
    if (!angle)
        return tl::unexpected(angle.error());
    return std::optional(*angle);
}

bool answers(const Part &part, const LineWish &wish)
{
    if (!isLength(part.unit) || part.ports.empty())
        return false;
    if (const auto *tubing = part.as<TubingFacts>())
        return sameFolded(tubing->tubeSize, wish.tubing) && allowsFluid(part, wish.fluid);
    const auto *hose = part.as<HoseFacts>();
    return hose && hose->dash == wish.dash &&
           (wish.construction.empty() || sameFolded(hose->construction, wish.construction)) &&
           allowsFluid(part, wish.fluid); // Last, for it asks the tables.
}

/// The next size of hose for this fluid above a dash, or below it; 0 where there is none.
int nextDash(const LineWish &wish, bool up, const Catalogue &catalogue)
{
    int next = 0;
    for (const Part *part : catalogue.ofKind(Kind::Hose)) {
        const auto *hose = part->as<HoseFacts>();
        const bool beyond = hose && (up ? hose->dash > wish.dash : hose->dash < wish.dash);
        const bool nearer = beyond && (next == 0 || (hose->dash < next) == up);
        if (nearer && allowsFluid(*part, wish.fluid))
            next = hose->dash;
    }
    return next;
}

} // namespace

std::string LineWish::text() const
{
    if (!tubing.empty())
        return "tubing " + tubing;
    return "hose -" + std::to_string(dash) + (construction.empty() ? "" : " " + construction);
}

Result<std::optional<LineWish>> lineWishOf(const FlatRun &run)
{
    const std::string typed = saidBy(run.run->length, run);
    if (typed.empty())
        return std::nullopt;
    LineWish wish;
    const auto length = lengthOf(typed, run);
    if (!length)
        return tl::unexpected(length.error());
    wish.length = *length;
    wish.tubing = saidBy(run.run->tubing, run);
    wish.construction = saidBy(run.run->construction, run);
    wish.fluid = run.scope->fluid;
    if (const std::string dash = saidBy(run.run->dash, run); !dash.empty()) {
        const auto number = numberOf(dash, "dash", run);
        if (!number)
            return tl::unexpected(number.error());
        wish.dash = *number;
    }
    const auto startAngle = angleOf(run.run->startAngle, run);
    const auto endAngle = angleOf(run.run->endAngle, run);
    if (!startAngle || !endAngle)
        return tl::unexpected(startAngle ? endAngle.error() : startAngle.error());
    wish.startAngle = *startAngle;
    wish.endAngle = *endAngle;
    return std::optional(std::move(wish));
}

Result<void> addRise(const FlatRun &run, PlacedRun &placed)
{
    for (const auto &[varying, into] : {std::pair(&run.run->rise, &placed.riseM),
                                        std::pair(&run.run->forward, &placed.forwardM)}) {
        const std::string typed = saidBy(*varying, run);
        if (typed.empty())
            continue;
        const auto measure = Measure::parse(typed, Dimension::Length);
        if (!measure)
            return wrongRun(run, "\"" + typed + "\": " + measure.error().wrong,
                            measure.error().remedy);
        *into = measure->si;
    }
    return {};
}

std::vector<const Part *> linesFor(const LineWish &wish, Preference preference,
                                   Allotment &allotment)
{
    std::vector<Ranked> ranked;
    const Kind kind = wish.tubing.empty() ? Kind::Hose : Kind::Tubing;
    for (const Part *part : allotment.catalogue().ofKind(kind)) {
        if (!answers(*part, wish))
            continue;
        const Decimal length = lengthFor(wish, *part).amount;
        const bool here = allotment.holds(*part, length);
        ranked.push_back(
            {part, here, allotment.cost(*part, length, here), !standsWell(*part, wish.fluid)});
    }
    rank(ranked, preference);
    std::vector<const Part *> parts;
    parts.reserve(ranked.size());
    for (const Ranked &one : ranked)
        parts.push_back(one.part);
    return parts;
}

std::vector<const Part *> linesAround(const LineWish &wish, Preference preference,
                                      Allotment &allotment)
{
    auto lines = linesFor(wish, preference, allotment);
    if (!wish.tubing.empty())
        return lines;
    LineWish other = wish;
    other.construction.clear();
    for (const int dash : {wish.dash, nextDash(wish, true, allotment.catalogue()),
                           nextDash(wish, false, allotment.catalogue())}) {
        other.dash = dash;
        for (const Part *line : linesFor(other, preference, allotment))
            if (std::find(lines.begin(), lines.end(), line) == lines.end())
                lines.push_back(line);
    }
    return lines;
}

Quantity lengthFor(const LineWish &wish, const Part &line)
{
    const auto exact = wish.length.in(line.unit);
    assert(exact && "a line is counted by its length");
    return upToTapeMark(*exact, line.unit);
}

} // namespace flarestock
