// SPDX-License-Identifier: MIT

#include "model/exchange/templates/varying_values.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 2> AlternativeKeys = {"when", "is"};

std::string inQuotes(std::string_view text)
{
    return '"' + std::string(text) + '"';
}

std::size_t charactersBefore(std::string_view text, std::size_t byte)
{
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(byte),
                      [](char one) { return (static_cast<unsigned char>(one) & 0xC0U) != 0x80U; }));
}

/// The dimension that an answer must have to be put in such a place.
std::optional<Dimension> dimensionOf(LiteralForm wanted)
{
    switch (wanted) {
    case LiteralForm::Flow:
        return Dimension::VolumeFlow;
    case LiteralForm::Pressure:
        return Dimension::Pressure;
    case LiteralForm::Length:
    case LiteralForm::Rise:
        return Dimension::Length;
    case LiteralForm::Microns:
    case LiteralForm::Dash:
    case LiteralForm::Degrees:
        return Dimension::Count;
    default:
        return std::nullopt;
    }
}

} // namespace

const Question *VaryingReader::question(std::string_view id) const noexcept
{
    const auto found = std::find_if(m_questions.begin(), m_questions.end(),
                                    [id](const Question &one) { return one.id == id; });
    return found == m_questions.end() ? nullptr : &*found;
}

void VaryingReader::wrongQuestion(const TomlValue &value, std::size_t character,
                                  std::string_view id) const
{
    std::vector<std::string_view> ids;
    for (const Question &one : m_questions)
        ids.push_back(one.id);
    m_source.problems->add(m_source.document->inside(
        value, character,
        {"there is no question " + inQuotes(id) + " here",
         ids.empty() ? "Ask it in a [[question]] before." : wordRemedy(id, ids)}));
}

void VaryingReader::checkMention(const TomlValue &value, const Condition::Mention &mention) const
{
    const Question *const asked = question(mention.question);
    if (!asked) {
        wrongQuestion(value, mention.column - 1, mention.question);
        return;
    }
    if (mention.measured && asked->form != Question::Form::Measured) {
        m_source.problems->add(
            m_source.document->inside(value, mention.column - 1,
                                      {"the answer to " + inQuotes(asked->id) + " has no size",
                                       "Compare it by is, is not or is one of."}));
        return;
    }
    for (std::size_t i = 0; i < mention.values.size(); ++i) {
        Question withoutBounds = *asked;
        withoutBounds.least.reset();
        withoutBounds.most.reset();
        if (auto fault = answerFault(withoutBounds, mention.values[i]))
            m_source.problems->add(
                m_source.document->inside(value, mention.valueColumns[i] - 1, std::move(*fault)));
    }
}

Condition VaryingReader::condition(const TomlFields &fields, std::string_view key) const
{
    const TomlValue *const value = fields.find(key, TomlValue::Form::Text);
    if (!value)
        return {};
    auto read = Condition::parse(value->text);
    if (!read) {
        m_source.problems->add(
            m_source.document->inside(*value, std::max(read.error().column, 1U) - 1,
                                      {"condition: " + read.error().wrong, read.error().remedy}));
        return {};
    }
    if (read->isAlways())
        m_source.wrong(*value, {"the condition is empty", "Remove it, or say when."});
    for (const Condition::Mention &mention : read->mentions())
        checkMention(*value, mention);
    return std::move(*read);
}

Varying VaryingReader::varying(const TomlFields &fields, std::string_view key,
                               LiteralForm wanted) const
{
    const TomlValue *const value = fields.find(key);
    return value ? varying(*value, std::string(key), wanted) : Varying();
}

Varying VaryingReader::varying(const TomlValue &value, const std::string &name,
                               LiteralForm wanted) const
{
    Varying read;
    if (value.form == TomlValue::Form::Text) {
        read.alternatives.push_back({Condition(), alternative({value, wanted})});
        return read;
    }
    if (value.form != TomlValue::Form::List || value.items.empty()) {
        const bool isPlain =
            value.form != TomlValue::Form::List && value.form != TomlValue::Form::Table;
        m_source.wrong(value,
                       {inQuotes(name) + " is " +
                            (value.items.empty() && !isPlain ? std::string("empty or a table")
                                                             : std::string(text(value.form))) +
                            ", not a text or a list of alternatives",
                        isPlain ? "Put it in quotes."
                                : "Write [ { when = \"…\", is = \"…\" }, { is = \"…\" } ]."});
        return read;
    }
    for (const TomlValue &item : value.items) {
        if (item.form != TomlValue::Form::Table) {
            m_source.wrong(item, {"an alternative of " + inQuotes(name) + " is " +
                                      std::string(text(item.form)),
                                  "Write { when = \"…\", is = \"…\" }."});
            continue;
        }
        const TomlFields fields(m_source, item, "alternative", AlternativeKeys);
        Condition when = condition(fields, "when");
        const TomlValue *const is = fields.find("is", TomlValue::Form::Text);
        if (!read.alternatives.empty() && read.alternatives.back().when.isAlways())
            m_source.wrong(item, {"this alternative is never reached",
                                  "The one before it has no when: put that last."});
        if (!is && !fields.find("is"))
            m_source.wrong(item, {"this alternative has no \"is\"", "Add it."});
        if (is)
            read.alternatives.push_back({std::move(when), alternative({*is, wanted})});
    }
    return read;
}

void VaryingReader::checkAnswers(const Text &text, const Question &asked) const
{
    const auto wrong = [&](std::string_view answer, const TextFault &fault) {
        m_source.wrong(text.value, {"with the answer " + inQuotes(answer) + " to " +
                                        inQuotes(asked.id) + ": " + fault.wrong,
                                    fault.remedy});
    };
    if (text.wanted == LiteralForm::Anything)
        return;
    if (asked.form == Question::Form::Choice) {
        for (const std::string &choice : asked.choices) {
            if (const auto fault = literalFault(choice, text.wanted))
                wrong(choice, *fault);
        }
    } else if (asked.form == Question::Form::YesNo || dimensionOf(text.wanted) != asked.dimension) {
        wrong(asked.standard, literalFault(asked.standard, text.wanted)
                                  .value_or(TextFault{"an answer of this form does not belong here",
                                                      "Name another question."}));
    }
}

std::string VaryingReader::alternative(const Text &text) const
{
    const std::string &typed = text.value.text;
    std::string filled; // With the default answers.
    const Question *last = nullptr;
    std::size_t at = 0;
    for (std::size_t open = typed.find('{'); open != std::string::npos;
         open = typed.find('{', at)) {
        const std::size_t close = typed.find('}', open);
        if (close == std::string::npos) {
            m_source.problems->add(m_source.document->inside(
                text.value, charactersBefore(typed, open),
                {"the brace that opens here does not close", "Write {question}."}));
            return typed;
        }
        const std::string id = typed.substr(open + 1, close - open - 1);
        last = question(id);
        if (!last) {
            wrongQuestion(text.value, charactersBefore(typed, open + 1), id);
            return typed;
        }
        filled += typed.substr(at, open - at) + last->standard;
        at = close + 1;
    }
    filled += typed.substr(at);
    if (last && typed == '{' + last->id + '}')
        checkAnswers(text, *last);
    else if (auto fault = literalFault(filled, text.wanted))
        m_source.wrong(text.value, std::move(*fault));
    return typed;
}

} // namespace flarestock
