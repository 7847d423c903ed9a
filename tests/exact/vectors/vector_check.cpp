// SPDX-License-Identifier: MIT

#include "vector_check.h"

#include "model/exact/decimal.h"

#include <algorithm>
#include <charconv>

namespace flarestock::tests {

namespace {

constexpr int ExponentMax = 1100; ///< A little below what Decimal::parse() takes.

/// digits × 10^exponent as a Decimal, with what a Decimal does not show.
struct Number {
    Decimal decimal;
    int exponent = 0;
    bool negativeZero = false;
};

/// The exponent part of "1.2E-7", 0 without one; nothing where it is malformed or too large.
std::optional<int> exponentPart(std::string_view text)
{
    if (text.empty())
        return 0;
    text.remove_prefix(text.size() > 1 && text[1] == '+' ? 2 : 1);
    int exponent = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), exponent);
    if (error != std::errc() || end != text.data() + text.size() || exponent < -ExponentMax ||
        exponent > ExponentMax)
        return std::nullopt;
    return exponent;
}

std::optional<Number> numberOf(const std::string &text)
{
    std::string_view rest = text;
    const bool negative = rest.starts_with('-');
    if (negative || rest.starts_with('+'))
        rest.remove_prefix(1);
    const auto mark = std::min(rest.find_first_of("eE"), rest.size());
    const auto power = exponentPart(rest.substr(mark));
    std::string digits(rest.substr(0, mark));
    if (!power || digits.empty() || digits.find_first_not_of("0123456789.") != std::string::npos)
        return std::nullopt;
    int exponent = *power;
    if (const auto point = digits.find('.'); point != std::string::npos) {
        exponent -= static_cast<int>(digits.size() - point - 1);
        digits.erase(point, 1);
    }
    if (digits.empty() || digits.find('.') != std::string::npos || exponent < -ExponentMax ||
        exponent > ExponentMax)
        return std::nullopt;
    const bool zero = digits.find_first_not_of('0') == std::string::npos;
    if (exponent > 0)
        digits.append(static_cast<std::size_t>(exponent), '0');
    if (exponent < 0) {
        const auto scale = static_cast<std::size_t>(-exponent);
        if (digits.size() <= scale)
            digits.insert(0, scale + 1 - digits.size(), '0');
        digits.insert(digits.size() - scale, 1, '.');
    }
    const auto decimal = Decimal::parse((negative ? "-" : "") + digits);
    if (!decimal)
        return std::nullopt;
    return Number{*decimal, exponent, zero && negative};
}

Decimal powerOfTen(int exponent)
{
    return Decimal::parse("1" + std::string(static_cast<std::size_t>(exponent), '0')).value();
}

/// Rounded to a multiple of 10^exponent.
Decimal toExponent(const Decimal &number, int exponent, Rounding mode)
{
    if (exponent <= 0)
        return number.rescaled(-exponent, mode);
    const Decimal unit = powerOfTen(exponent);
    return divide(number, unit, 0, mode) * unit;
}

std::size_t significantDigits(const Decimal &number)
{
    std::string digits = number.abs().text();
    digits.erase(std::remove(digits.begin(), digits.end(), '.'), digits.end());
    const auto start = digits.find_first_not_of('0');
    return start == std::string::npos ? 1 : digits.size() - start;
}

/// To the precision in force; a carry (9.99 to 10.0) costs a second, exact step.
Decimal toPrecision(Decimal number, const Vector &vector)
{
    for (int step = 0; step < 2; ++step) {
        const auto digits = significantDigits(number);
        if (vector.precision == 0 || digits <= vector.precision)
            break;
        const int dropped = static_cast<int>(digits - vector.precision);
        number = toExponent(number, dropped - number.scale(), *vector.rounding);
        if (number.scale() == 0)
            break;
    }
    return number;
}

using Operands = std::vector<Number>;

/// The quotient rounded at the place where the published one ends.
Decimal quotientLike(const Operands &given, const Number &result, Rounding mode)
{
    const Decimal &dividend = given[0].decimal;
    const Decimal &divisor = given[1].decimal;
    if (result.exponent <= 0)
        return divide(dividend, divisor, -result.exponent, mode);
    const Decimal unit = powerOfTen(result.exponent);
    return divide(dividend, divisor * unit, 0, mode) * unit;
}

/// What Decimal makes of a vector; nothing where the operation is none of ours.
std::optional<Decimal> answer(const Vector &vector, const Operands &given, const Number &result)
{
    const std::string &operation = vector.operation;
    const Rounding mode = *vector.rounding;
    const Decimal &first = given[0].decimal;
    if (given.size() == 1) {
        if (operation == "plus")
            return toPrecision(first, vector);
        if (operation == "minus")
            return toPrecision(-first, vector);
        if (operation == "abs")
            return toPrecision(first.abs(), vector);
        if (operation == "reduce")
            return toPrecision(first, vector).stripped();
        if (operation == "tointegral" || operation == "tointegralx")
            return first.rescaled(0, mode);
        return std::nullopt;
    }
    const Decimal &second = given[1].decimal;
    if (operation == "add")
        return toPrecision(first + second, vector);
    if (operation == "subtract")
        return toPrecision(first - second, vector);
    if (operation == "multiply")
        return toPrecision(first * second, vector);
    if (operation == "fma" && given.size() == 3)
        return toPrecision(first * second + given[2].decimal, vector);
    if (operation == "divide")
        return quotientLike(given, result, mode);
    if (operation == "divideint")
        return divide(first, second, 0, Rounding::Down);
    if (operation == "remainder")
        return toPrecision(remainder(first, second), vector);
    if (operation == "quantize")
        return toExponent(first, given[1].exponent, mode);
    if (operation == "rescale")
        return toExponent(first, static_cast<int>(second.toInt64().value_or(0)), mode);
    if (operation == "compare")
        return Decimal(first < second ? -1 : first > second ? 1 : 0);
    if (operation == "max")
        return toPrecision(first < second ? second : first, vector);
    if (operation == "min")
        return toPrecision(second < first ? second : first, vector);
    return std::nullopt;
}

bool isForOthers(const Vector &vector)
{
    static constexpr const char *Signals[] = {
        "invalid_operation",  "invalid_context",     "division_by_zero",
        "division_undefined", "division_impossible", "overflow",
        "underflow",          "subnormal",           "clamped",
    };
    return !vector.extended || !vector.rounding ||
           std::any_of(std::begin(Signals), std::end(Signals),
                       [&vector](const char *each) { return vector.has(each); });
}

void compareNumbers(const Vector &vector, const Decimal &said, const Number &result, bool strict,
                    Tally &tally)
{
    ++(strict ? tally.strict : tally.value);
    if (said == result.decimal && (!strict || said.scale() == -result.exponent))
        return;
    tally.failures.push_back(vector.name() + ": says " + said.text() + " for " + vector.result);
}

/// Text in, text out; what is no number must be refused.
void checkText(const Vector &vector, Tally &tally)
{
    if (vector.has("conversion_syntax")) {
        ++tally.strict;
        if (Decimal::parse(vector.operands[0]))
            tally.failures.push_back(vector.name() + ": takes \"" + vector.operands[0] + "\"");
        return;
    }
    const auto number = numberOf(vector.operands[0]);
    const auto result = numberOf(vector.result);
    if (isForOthers(vector) || !number || !result || number->negativeZero ||
        vector.result.find_first_of("eE") != std::string::npos) {
        ++tally.skipped;
        return;
    }
    ++tally.strict;
    const std::string said = toPrecision(number->decimal, vector).text();
    if (said != vector.result)
        tally.failures.push_back(vector.name() + ": prints " + said + " for " + vector.result);
}

void checkSameQuantum(const Vector &vector, const Operands &given, Tally &tally)
{
    if (given.size() != 2 || given[0].exponent > 0 || given[1].exponent > 0) {
        ++tally.skipped;
        return;
    }
    ++tally.strict;
    if (given[0].decimal.sameScale(given[1].decimal) != (vector.result == "1"))
        tally.failures.push_back(vector.name() + ": mistakes the scales");
}

} // namespace

void check(const Vector &vector, Tally &tally)
{
    if (vector.operation == "tosci")
        return checkText(vector, tally);
    Operands given;
    for (const std::string &operand : vector.operands) {
        if (auto number = numberOf(operand))
            given.push_back(*std::move(number));
    }
    const auto result = numberOf(vector.result);
    if (isForOthers(vector) || given.size() != vector.operands.size() || !result) {
        ++tally.skipped;
        return;
    }
    if (vector.operation == "samequantum")
        return checkSameQuantum(vector, given, tally);
    const auto said = answer(vector, given, *result);
    if (!said) {
        ++tally.skipped;
        return;
    }
    const auto isPlain = [](const Number &number) {
        return number.exponent <= 0 && !number.negativeZero;
    };
    // Of two equal numbers max and min choose by scale and sign, which is no business of ours.
    const bool chosen = (vector.operation == "max" || vector.operation == "min") &&
                        given[0].decimal == given[1].decimal;
    const bool strict =
        isPlain(*result) && std::all_of(given.begin(), given.end(), isPlain) && !chosen;
    compareNumbers(vector, *said, *result, strict, tally);
}

} // namespace flarestock::tests
