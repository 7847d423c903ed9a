// SPDX-License-Identifier: MIT
//
// Quantities as people type and say them: "5 ft 6 1/2 in", "3", "2 packs".

#include "model/exact/quantity.h"

#include <array>
#include <cassert>
#include <vector>

namespace flarestock {

namespace {

struct UnitWord {
    std::string_view word;
    Unit unit;
};

/// The first word of each unit is the one that is printed.
constexpr std::array UnitWords{
    UnitWord{"each", Unit::Each},    UnitWord{"ea", Unit::Each},
    UnitWord{"pc", Unit::Each},      UnitWord{"pcs", Unit::Each},
    UnitWord{"in", Unit::Inch},      UnitWord{"inch", Unit::Inch},
    UnitWord{"inches", Unit::Inch},  UnitWord{"ft", Unit::Foot},
    UnitWord{"foot", Unit::Foot},    UnitWord{"feet", Unit::Foot},
    UnitWord{"m", Unit::Metre},      UnitWord{"metre", Unit::Metre},
    UnitWord{"metres", Unit::Metre}, UnitWord{"mm", Unit::Millimetre},
    UnitWord{"pack", Unit::Pack},    UnitWord{"packs", Unit::Pack},
    UnitWord{"coil", Unit::Coil},    UnitWord{"coils", Unit::Coil},
};

bool isBlank(char character)
{
    return character == ' ' || character == '\t';
}

bool startsNumber(char character)
{
    return (character >= '0' && character <= '9') || character == '-' || character == '+' ||
           character == '.';
}

/// Words and numbers of the text; "66in" is two, "1/2" is one.
std::vector<std::string_view> tokens(std::string_view text)
{
    std::vector<std::string_view> result;
    std::size_t at = 0;
    while (at < text.size()) {
        if (isBlank(text[at])) {
            ++at;
            continue;
        }
        const bool number = startsNumber(text[at]);
        const std::size_t start = at;
        while (at < text.size() && !isBlank(text[at]) &&
               number == (startsNumber(text[at]) || (number && text[at] == '/')))
            ++at;
        result.push_back(text.substr(start, at - start));
    }
    return result;
}

/// "3", "5.5", "1/2": a fraction must come out even as a decimal.
Result<Decimal> parseAmount(std::string_view text)
{
    const auto slash = text.find('/');
    if (slash == std::string_view::npos)
        return Decimal::parse(text);
    const auto above = Decimal::parse(text.substr(0, slash));
    const auto below = Decimal::parse(text.substr(slash + 1));
    if (!above || !below || below->sign() <= 0 || above->scale() != 0 || below->scale() != 0)
        return problem("", quotedStart(text) + " is not a fraction", "Write one such as 3/8.");
    const auto exact = Rational(*above, *below).exactDecimal(12);
    if (!exact)
        return problem("", quotedStart(text) + " does not come out even as a decimal",
                       "Write halves, quarters, eighths and so on.");
    return *exact;
}

/// One amount and its unit at the front of `words`, which lose what was read.
Result<Quantity> takePart(std::vector<std::string_view> &words)
{
    auto amount = parseAmount(words.front());
    if (!amount)
        return tl::unexpected<Problem>(amount.error());
    words.erase(words.begin());
    if (!words.empty() && startsNumber(words.front().front()) &&
        words.front().find('/') != std::string_view::npos) {
        const auto fraction = parseAmount(words.front());
        if (!fraction)
            return tl::unexpected<Problem>(fraction.error());
        if (!amount->isWhole() || amount->sign() < 0 || fraction->sign() <= 0 ||
            *fraction >= Decimal(1))
            return problem("",
                           quotedStart(words.front()) + " does not go with the number before it",
                           "Write one such as 5 3/8 in.");
        *amount += *fraction;
        words.erase(words.begin());
    }
    if (words.empty())
        return Quantity{*amount, Unit::Each};
    const auto unit = parseUnit(words.front());
    if (!unit)
        return tl::unexpected<Problem>(unit.error());
    words.erase(words.begin());
    return Quantity{*amount, *unit};
}

/// 6.5 as "6 1/2" where it is a whole number of 64ths, else as a decimal.
std::string benchInches(const Decimal &inches)
{
    const Decimal sixtyFourths = inches * Decimal(64);
    const auto count = sixtyFourths.toInt64();
    if (!count || inches.isWhole())
        return inches.stripped().text();
    std::int64_t above = *count % 64;
    std::int64_t below = 64;
    while (above % 2 == 0) {
        above /= 2;
        below /= 2;
    }
    const std::int64_t whole = *count / 64;
    return (whole > 0 ? std::to_string(whole) + " " : "") + std::to_string(above) + "/" +
           std::to_string(below);
}

} // namespace

std::string_view text(Unit unit) noexcept
{
    for (const UnitWord &each : UnitWords) {
        if (each.unit == unit)
            return each.word;
    }
    assert(false);
    return {};
}

Result<Unit> parseUnit(std::string_view text)
{
    for (const UnitWord &each : UnitWords) {
        if (each.word == text)
            return each.unit;
    }
    return problem("", quotedStart(text) + " is not a unit of stock",
                   "Write each, in, ft, m, mm, pack or coil.");
}

Result<Quantity> Quantity::parse(std::string_view text)
{
    auto words = tokens(text);
    if (words.empty())
        return problem("", "a quantity is wanted and nothing is there", "Write one such as 5 ft.");
    auto quantity = takePart(words);
    if (!quantity || words.empty())
        return quantity;
    auto inches = takePart(words);
    if (!inches)
        return inches;
    if (!words.empty() || quantity->unit != Unit::Foot || inches->unit != Unit::Inch ||
        quantity->amount.sign() < 0 || inches->amount.sign() < 0)
        return problem("", quotedStart(text) + " is not one quantity",
                       "Only feet and inches go together, such as 5 ft 6 in.");
    return Quantity{quantity->amount * Decimal(12) + inches->amount, Unit::Inch};
}

std::string Quantity::text() const
{
    return amount.text() + " " + std::string(flarestock::text(unit));
}

std::string Quantity::spoken() const
{
    if (unit == Unit::Each)
        return amount.text();
    if (unit == Unit::Pack || unit == Unit::Coil)
        return text() + (amount == Decimal(1) ? "" : "s");
    if (unit != Unit::Inch && unit != Unit::Foot)
        return text();
    const Decimal inches = amount.abs() * Decimal(unit == Unit::Foot ? 12 : 1);
    const Decimal feet = divide(inches, Decimal(12), 0, Rounding::Down);
    const Decimal rest = inches - feet * Decimal(12);
    std::string said = amount.sign() < 0 ? "-" : "";
    if (!feet.isZero())
        said += feet.text() + " ft";
    if (feet.isZero() || !rest.isZero())
        said += (feet.isZero() ? "" : " ") + benchInches(rest) + " in";
    return said;
}

} // namespace flarestock
