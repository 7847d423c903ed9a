// SPDX-License-Identifier: MIT

#include "model/exact/quantity.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace flarestock {

namespace {

/// Lengths of 125 nm in one of the unit, from 1 in = 25.4 mm exactly (16 CFR 500.19).
std::int64_t smallestIn(Unit unit)
{
    switch (unit) {
    case Unit::Inch:
        return 203'200;
    case Unit::Foot:
        return 2'438'400;
    case Unit::Metre:
        return 8'000'000;
    case Unit::Millimetre:
        return 8'000;
    case Unit::Each:
        return 1;
    case Unit::Pack:
    case Unit::Coil:
        break;
    }
    assert(false);
    return 1;
}

bool isPacking(Unit unit)
{
    return unit == Unit::Pack || unit == Unit::Coil;
}

/// Every decimal that a length of 1/64 in or 125 nm needs, and some more.
constexpr std::int32_t ExactPlaces = 12;

tl::unexpected<Problem> doesNotConvert(const Quantity &quantity, Unit unit)
{
    if (isPacking(quantity.unit) || isPacking(unit))
        return problem(quantity.text(),
                       "says nothing about what the " +
                           std::string(text(isPacking(quantity.unit) ? quantity.unit : unit)) +
                           " holds",
                       "Give the contents of the pack or coil.");
    return problem(quantity.text(), "cannot be said in \"" + std::string(text(unit)) + "\"",
                   "Lengths and pieces do not convert.");
}

} // namespace

bool isLength(Unit unit) noexcept
{
    return unit == Unit::Inch || unit == Unit::Foot || unit == Unit::Metre ||
           unit == Unit::Millimetre;
}

Result<Rational> Quantity::in(Unit other) const
{
    if (unit == other)
        return Rational(amount);
    if (!isLength(unit) || !isLength(other))
        return doesNotConvert(*this, other);
    return Rational(Decimal(smallestIn(unit)), Decimal(smallestIn(other))).times(amount);
}

Result<Quantity> Quantity::exactlyIn(Unit other) const
{
    if (unit == other)
        return *this;
    const auto fraction = in(other);
    if (!fraction)
        return tl::unexpected<Problem>(fraction.error());
    const auto exact = fraction->exactDecimal(ExactPlaces);
    if (!exact)
        return problem(text(), "does not come out even in " + std::string(flarestock::text(other)),
                       "Keep it in " + std::string(flarestock::text(unit)) + ".");
    return Quantity{*exact, other};
}

Result<Quantity> Quantity::nearestIn(Unit other) const
{
    const auto fraction = in(other);
    if (!fraction)
        return tl::unexpected<Problem>(fraction.error());
    if (auto exact = exactlyIn(other))
        return exact;
    const Rational mark(Decimal(1), Decimal(other == Unit::Inch ? 64 : 1600));
    const Decimal marks = fraction->over(mark).toDecimal(0, Rounding::HalfEven);
    return Quantity{*mark.times(marks).exactDecimal(ExactPlaces), other};
}

Result<std::int64_t> Quantity::smallest() const
{
    if (isPacking(unit))
        return doesNotConvert(*this, Unit::Each);
    const Decimal count = amount * Decimal(smallestIn(unit));
    if (!count.isWhole())
        return problem(
            text(), unit == Unit::Each ? "is not a whole number of pieces" : "is finer than 125 nm",
            unit == Unit::Each ? "Count whole pieces." : "Round the length first.");
    const auto fitting = count.toInt64();
    if (!fitting)
        return problem(text(), "is more than a shop can hold");
    return *fitting;
}

Quantity Quantity::ofSmallest(std::int64_t smallest, Unit unit)
{
    const auto amount =
        Rational(Decimal(smallest), Decimal(smallestIn(unit))).exactDecimal(ExactPlaces);
    assert(amount.has_value());
    return {*amount, unit};
}

Quantity upToTapeMark(const Rational &length, Unit unit)
{
    const Rational sixteenth(Decimal(1), Decimal(16));
    const auto upTo = [](const Rational &amount, const Rational &mark) {
        const Decimal marks = amount.over(mark).toDecimal(0, Rounding::Ceiling);
        return *mark.times(marks).exactDecimal(ExactPlaces);
    };
    switch (unit) {
    case Unit::Inch:
        return {upTo(length, sixteenth), Unit::Inch};
    case Unit::Foot:
        return {upTo(length.times(Decimal(12)), sixteenth), Unit::Inch};
    case Unit::Metre:
        return {length.toDecimal(3, Rounding::Ceiling), Unit::Metre};
    case Unit::Millimetre:
        return {length.toDecimal(0, Rounding::Ceiling), Unit::Millimetre};
    case Unit::Each:
    case Unit::Pack:
    case Unit::Coil:
        break;
    }
    const auto exact = length.exactDecimal(ExactPlaces);
    return {exact ? *exact : length.toDecimal(ExactPlaces, Rounding::Ceiling), unit};
}

Quantity Packing::opened(const Decimal &packs) const
{
    assert(isPacking(unit) && !isPacking(holds.unit) && holds.amount.sign() > 0);
    return {holds.amount * packs, holds.unit};
}

Result<std::int64_t> Packing::wholePacksUp(const Quantity &need) const
{
    assert(isPacking(unit) && !isPacking(holds.unit) && holds.amount.sign() > 0);
    const auto wanted = need.in(holds.unit);
    if (!wanted)
        return tl::unexpected<Problem>(wanted.error());
    if (wanted->sign() <= 0)
        return 0;
    const auto packs =
        wanted->over(Rational(holds.amount)).toDecimal(0, Rounding::Ceiling).toInt64();
    if (!packs)
        return problem(need.text(), "is more packs than can be counted");
    return *packs;
}

} // namespace flarestock
