// SPDX-License-Identifier: MIT

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/exact/quantity.h"
#include "model/exchange/templates/varying_values.h"
#include "model/ports/port.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::int64_t DashMax = 64;
constexpr std::array<std::int64_t, 8> Angles = {0, 30, 45, 60, 90, 120, 150, 180};

std::string inQuotes(std::string_view text)
{
    return '"' + std::string(text) + '"';
}

std::optional<TextFault> measureFault(std::string_view text, Dimension dimension)
{
    const auto read = Measure::parse(text, dimension);
    if (!read)
        return TextFault{inQuotes(text) + ": " + read.error().wrong, read.error().remedy};
    if (read->si < 0)
        return TextFault{inQuotes(text) + " is below zero", "Correct the number."};
    return std::nullopt;
}

bool isMicrons(std::string_view text)
{
    const std::size_t to = text.find(" to ");
    const auto least = Decimal::parse(trimmed(text.substr(0, to)));
    const auto most =
        to == std::string_view::npos ? least : Decimal::parse(trimmed(text.substr(to + 4)));
    return least && most && least->sign() > 0 && *least <= *most;
}

/// Digits only, so that "+8" and "8.0" are none.
std::optional<std::int64_t> plainNumber(std::string_view text)
{
    const bool isPlain = !text.empty() && text.find_first_not_of("0123456789") == text.npos;
    const auto number = isPlain ? Decimal::parse(text) : problem("", "");
    return number ? number->toInt64() : std::nullopt;
}

bool isDash(std::string_view text)
{
    const auto dash = plainNumber(text.starts_with('-') ? text.substr(1) : text);
    return dash && *dash >= 1 && *dash <= DashMax;
}

bool isAngle(std::string_view text)
{
    const auto angle = plainNumber(text);
    return angle && std::find(Angles.begin(), Angles.end(), *angle) != Angles.end();
}

bool isLengthText(std::string_view text)
{
    const auto quantity = Quantity::parse(text);
    return quantity && isLength(quantity->unit) && quantity->amount.sign() > 0;
}

TextFault boundFault(std::string_view answer, std::string_view side, const Measure &bound)
{
    return {inQuotes(answer) + " is " + std::string(side) + ' ' + bound.typed,
            "Write a value within the bounds."};
}

std::optional<TextFault> wordFault(std::string_view answer, std::span<const std::string_view> words)
{
    const bool isOne = std::any_of(words.begin(), words.end(), [answer](std::string_view word) {
        return sameFolded(word, answer);
    });
    if (isOne)
        return std::nullopt;
    return TextFault{inQuotes(answer) + " is none of its answers", wordRemedy(answer, words)};
}

} // namespace

std::optional<TextFault> literalFault(std::string_view text, LiteralForm wanted)
{
    const auto unless = [text](bool isGood, std::string_view what,
                               std::string_view remedy) -> std::optional<TextFault> {
        if (isGood)
            return std::nullopt;
        return TextFault{inQuotes(text) + " is no " + std::string(what), std::string(remedy)};
    };
    if (trimmed(text).empty())
        return std::nullopt;
    switch (wanted) {
    case LiteralForm::Anything:
    case LiteralForm::PartNumber:
        return std::nullopt;
    case LiteralForm::Microns:
        return unless(isMicrons(trimmed(text)), "range of microns", "Write for example 75 to 150.");
    case LiteralForm::Flow:
        return measureFault(text, Dimension::VolumeFlow);
    case LiteralForm::Pressure:
        return measureFault(text, Dimension::Pressure);
    case LiteralForm::Length:
        return unless(isLengthText(text), "length", "Write for example 5 ft 6 in.");
    case LiteralForm::Rise:
        return unless(Measure::parse(text, Dimension::Length).has_value(), "rise",
                      "Write for example 12 in, or -12 in where the line falls.");
    case LiteralForm::Dash:
        return unless(isDash(trimmed(text)), "dash size", "Write for example -8.");
    case LiteralForm::Construction:
        return unless(Port::parse("HOSE " + std::string(text) + " -8").has_value(), "hose series",
                      "Write it as the hose's construction column does.");
    case LiteralForm::TubeSize:
        return unless(Port::parse("TUBE " + std::string(text)).has_value(), "tube size",
                      "Write for example 3/16 or 6 mm.");
    case LiteralForm::Degrees:
        return unless(isAngle(trimmed(text)), "angle of a hose end",
                      "Write 0, 30, 45, 60, 90, 120, 150 or 180.");
    }
    return std::nullopt;
}

std::optional<TextFault> answerFault(const Question &question, std::string_view answer)
{
    static constexpr std::array<std::string_view, 2> YesOrNo = {"yes", "no"};
    if (question.form == Question::Form::YesNo)
        return wordFault(answer, YesOrNo);
    if (question.form == Question::Form::Choice)
        return wordFault(answer, std::vector<std::string_view>(question.choices.begin(),
                                                               question.choices.end()));
    const auto measure = Measure::parse(answer, question.dimension);
    if (!measure)
        return TextFault{inQuotes(answer) + ": " + measure.error().wrong, measure.error().remedy};
    if (question.least && measure->si < question.least->si)
        return boundFault(answer, "below", *question.least);
    if (question.most && measure->si > question.most->si)
        return boundFault(answer, "above", *question.most);
    return std::nullopt;
}

} // namespace flarestock
