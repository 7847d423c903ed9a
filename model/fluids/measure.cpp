// SPDX-License-Identifier: MIT

#include "model/fluids/measure.h"

#include "model/exact/decimal.h"
#include "model/exact/rational.h"
#include "model/fluids/unit_table.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>

namespace flarestock {

namespace {

constexpr std::string_view Blanks = " \t";

std::string_view trimmed(std::string_view text)
{
    const auto start = text.find_first_not_of(Blanks);
    if (start == std::string_view::npos)
        return {};
    return text.substr(start, text.find_last_not_of(Blanks) - start + 1);
}

bool isNumberCharacter(char character)
{
    return (character >= '0' && character <= '9') || character == '.' || character == '+' ||
           character == '-' || character == '/' || character == ',';
}

/// Characters, not bytes, before `part` in `whole`, plus one.
std::uint32_t columnOf(std::string_view whole, std::string_view part)
{
    const auto before = whole.substr(0, static_cast<std::size_t>(part.data() - whole.data()));
    return 1 +
           static_cast<std::uint32_t>(std::count_if(before.begin(), before.end(), [](char each) {
               return (static_cast<unsigned char>(each) & 0xC0) != 0x80;
           }));
}

/// What is wrong at `part` of the measure `whole`, with the place for a caret.
tl::unexpected<Problem> wrongAt(std::string_view whole, std::string_view part, std::string wrong,
                                std::string remedy)
{
    Problem result{{}, std::move(wrong), std::move(remedy)};
    result.column = columnOf(whole, part);
    result.excerpt = whole;
    return tl::unexpected<Problem>(std::move(result));
}

std::string withArticle(Dimension dimension)
{
    const std::string word(text(dimension));
    return (std::string_view("aeiou").find(word.front()) != std::string_view::npos ? "an " : "a ") +
           word;
}

std::string remedyFor(std::optional<Dimension> wanted)
{
    return "Write one such as " + std::string(examplesOf(wanted.value_or(Dimension::Length))) + ".";
}

/// How far "e-5" of "2.34e-5 lbf.s/ft2" goes; 0 where it is none.
std::size_t powerOfTenLength(std::string_view text)
{
    if (text.empty() || (text[0] != 'e' && text[0] != 'E'))
        return 0;
    const std::size_t sign = text.size() > 1 && (text[1] == '-' || text[1] == '+') ? 1 : 0;
    const auto end = std::min(text.find_first_not_of("0123456789", 1 + sign), text.size());
    return end > 1 + sign ? end : 0;
}

/// "8.71", "2.34e-5", "1/2", "5 1/2" as the nearest double.
std::optional<double> parsedNumber(std::string_view text)
{
    if (text.find_first_of("eE") != std::string_view::npos) {
        double number = 0;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
        return read.ec == std::errc() && read.ptr == text.data() + text.size()
                   ? std::optional(number)
                   : std::nullopt;
    }
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) {
        const auto number = Decimal::parse(text);
        return number ? std::optional(number->approximate()) : std::nullopt;
    }
    const auto blank = text.find_first_of(Blanks);
    const auto whole = Decimal::parse(blank < slash ? text.substr(0, blank) : "0");
    const auto above = Decimal::parse(
        trimmed(text.substr(blank < slash ? blank : 0, slash - (blank < slash ? blank : 0))));
    const auto below = Decimal::parse(trimmed(text.substr(slash + 1)));
    if (!whole || !above || !below || whole->scale() + above->scale() + below->scale() > 0 ||
        whole->sign() < 0 || (blank < slash && above->sign() < 0) || below->sign() <= 0)
        return std::nullopt;
    constexpr std::int32_t EnoughForDouble = 25;
    return Rational(*above, *below)
        .plus(Rational(*whole))
        .toDecimal(EnoughForDouble, Rounding::HalfEven)
        .approximate();
}

struct Part {
    double number = 0;
    std::string_view numberText;
    std::string_view unitText; ///< Empty where there is none.
};

/// The number and unit at the front of `rest`, which loses them.
Result<Part> takePart(std::string_view whole, std::string_view &rest,
                      std::optional<Dimension> wanted)
{
    std::size_t end = 0;
    while (end < rest.size() &&
           (isNumberCharacter(rest[end]) || Blanks.find(rest[end]) != std::string_view::npos))
        ++end;
    if (const auto power = powerOfTenLength(rest.substr(end)); power > 0)
        end = std::min(rest.find_first_not_of(Blanks, end + power), rest.size());
    Part part;
    part.numberText = trimmed(rest.substr(0, end));
    if (part.numberText.empty())
        return wrongAt(whole, rest, quotedStart(whole) + " does not begin with a number",
                       remedyFor(wanted));
    const auto number = parsedNumber(part.numberText);
    if (!number)
        return wrongAt(whole, part.numberText, quotedStart(part.numberText) + " is not a number",
                       "Write digits with a point for decimals, such as 12.5.");
    part.number = *number;
    rest.remove_prefix(end);
    const auto unitEnd = std::min(rest.find_first_of(Blanks), rest.size());
    part.unitText = rest.substr(0, unitEnd);
    rest = trimmed(rest.substr(unitEnd));
    return part;
}

Result<MeasureUnit> unitOfPart(std::string_view whole, const Part &part,
                               std::optional<Dimension> wanted)
{
    if (part.unitText.empty())
        return wrongAt(whole, whole.substr(whole.size()), quotedStart(whole) + " has no unit",
                       remedyFor(wanted));
    const auto unit = unitOf(part.unitText);
    if (!unit)
        return wrongAt(whole, part.unitText,
                       quotedStart(part.unitText) + " is not a unit that is known",
                       remedyFor(wanted));
    return *unit;
}

/// Feet and inches: the only two measures that go together.
Result<double> plusInches(std::string_view whole, std::string_view rest, const Part &feet,
                          const MeasureUnit &unit)
{
    const std::string_view second = rest;
    const auto inches = takePart(whole, rest, Dimension::Length);
    if (!inches)
        return tl::unexpected<Problem>(inches.error());
    const auto inch = unitOfPart(whole, *inches, Dimension::Length);
    if (!inch)
        return tl::unexpected<Problem>(inch.error());
    if (!rest.empty() || unit.multiplier != unitOf("ft")->multiplier ||
        unit.dimension != Dimension::Length || inch->dimension != Dimension::Length ||
        inch->multiplier != unitOf("in")->multiplier || feet.number < 0 || inches->number < 0)
        return wrongAt(whole, second, quotedStart(whole) + " is not one measure",
                       "Only feet and inches go together, such as 5 ft 6 in.");
    // In inches first, so that 5 ft 6 in is the same double as 66 in.
    return inch->toSi(feet.number * 12 + inches->number);
}

/// Whether the physical value can exist: no temperature under 0 K, no thread without a pitch.
bool canExist(Dimension dimension, double si)
{
    if (dimension == Dimension::Temperature)
        return si >= 0;
    if (dimension == Dimension::Pitch)
        return si > 0 && std::isfinite(si);
    return std::isfinite(si);
}

Result<Measure> parsed(std::string_view text, std::optional<Dimension> wanted)
{
    const std::string_view whole = trimmed(text);
    std::string_view rest = whole;
    if (whole.empty())
        return problem("", "a measure is wanted and nothing is there", remedyFor(wanted));
    const auto part = takePart(whole, rest, wanted);
    if (!part)
        return tl::unexpected<Problem>(part.error());
    if (wanted == Dimension::Count && part->unitText.empty())
        return Measure{Dimension::Count, part->number, std::string(whole)};
    const auto unit = unitOfPart(whole, *part, wanted);
    if (!unit)
        return tl::unexpected<Problem>(unit.error());

    Measure measure{unit->dimension, unit->toSi(part->number), std::string(whole)};
    if (!rest.empty()) {
        const auto si = plusInches(whole, rest, *part, *unit);
        if (!si)
            return tl::unexpected<Problem>(si.error());
        measure.si = *si;
    }
    if (wanted == Dimension::Pitch && measure.dimension == Dimension::Length)
        measure.dimension = Dimension::Pitch;
    if (wanted && measure.dimension != *wanted)
        return wrongAt(whole, part->unitText,
                       quotedStart(whole) + " is " + withArticle(measure.dimension) + ", and " +
                           withArticle(*wanted) + " is wanted",
                       remedyFor(wanted));
    if (!canExist(measure.dimension, measure.si))
        return wrongAt(whole, part->numberText,
                       quotedStart(whole) + " is " + withArticle(measure.dimension) +
                           " that cannot exist",
                       remedyFor(measure.dimension));
    return measure;
}

} // namespace

std::string_view text(Dimension dimension) noexcept
{
    switch (dimension) {
    case Dimension::Count:
        return "bare number";
    case Dimension::Length:
        return "length";
    case Dimension::Area:
        return "area";
    case Dimension::Volume:
        return "volume";
    case Dimension::VolumeFlow:
        return "flow";
    case Dimension::MassFlow:
        return "mass flow";
    case Dimension::Pressure:
        return "pressure";
    case Dimension::Power:
        return "power";
    case Dimension::Density:
        return "density";
    case Dimension::DynamicViscosity:
        return "dynamic viscosity";
    case Dimension::KinematicViscosity:
        return "kinematic viscosity";
    case Dimension::Temperature:
        return "temperature";
    case Dimension::Angle:
        return "angle";
    case Dimension::Pitch:
        return "pitch";
    case Dimension::Voltage:
        return "voltage";
    case Dimension::Current:
        return "current";
    case Dimension::Velocity:
        return "velocity";
    case Dimension::Acceleration:
        return "acceleration";
    case Dimension::Time:
        return "time";
    }
    assert(false);
    return {};
}

Result<Measure> Measure::parse(std::string_view text)
{
    return parsed(text, std::nullopt);
}

Result<Measure> Measure::parse(std::string_view text, Dimension wanted)
{
    return parsed(text, wanted);
}

double in(const Measure &measure, std::string_view unit)
{
    const auto known = unitOf(unit);
    assert(known.has_value());
    assert(known->dimension == measure.dimension ||
           (known->dimension == Dimension::Length && measure.dimension == Dimension::Pitch));
    return known->ofSi(measure.si);
}

} // namespace flarestock
