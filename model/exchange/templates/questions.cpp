// SPDX-License-Identifier: MIT

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/exchange/templates/template_reader.h"
#include "model/exchange/templates/template_words.h"
#include "model/exchange/templates/worked_defaults.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::size_t DashForm = 3;
constexpr std::array<std::string_view, 6> UsualDashes = {"-4", "-6", "-8", "-10", "-12", "-16"};

std::optional<Dimension> readDimension(const TomlFields &fields)
{
    const std::string word = fields.required("dimension");
    if (word.empty())
        return std::nullopt;
    if (sameFolded(word, "count"))
        return Dimension::Count;
    std::vector<std::string_view> words = {"count"};
    for (auto i = static_cast<int>(Dimension::Length);
         i <= static_cast<int>(Dimension::Acceleration); ++i) {
        words.push_back(text(static_cast<Dimension>(i)));
        if (sameFolded(word, words.back()))
            return static_cast<Dimension>(i);
    }
    fields.wrong("dimension", {'"' + word + "\" is no dimension", wordRemedy(word, words)});
    return std::nullopt;
}

std::optional<Measure> readBound(const TomlFields &fields, std::string_view key,
                                 Dimension dimension)
{
    const std::string typed = fields.text(key);
    if (typed.empty())
        return std::nullopt;
    auto bound = Measure::parse(typed, dimension);
    if (bound)
        return std::move(*bound);
    fields.wrong(key, {'"' + typed + "\": " + bound.error().wrong, bound.error().remedy});
    return std::nullopt;
}

void refuseKeys(const TomlFields &fields, std::initializer_list<std::string_view> keys)
{
    for (const std::string_view key : keys) {
        if (fields.find(key))
            fields.wrong(key, {"a question of this form has no \"" + std::string(key) + '"',
                               "Remove it, or correct the form."});
    }
}

void readChoices(const TomlFields &fields, Question &question)
{
    question.choices = fields.texts("choices");
    if (question.choices.empty())
        fields.wrong("choices", {"a choice needs choices", "Write choices = [\"…\", \"…\"]."});
    for (std::size_t i = 1; i < question.choices.size(); ++i) {
        const auto end = question.choices.begin() + static_cast<std::ptrdiff_t>(i);
        const bool isThere =
            std::any_of(question.choices.begin(), end, [&](const std::string &other) {
                return sameFolded(other, question.choices[i]);
            });
        if (isThere)
            fields.wrong("choices", {'"' + question.choices[i] + "\" stands twice", "Remove one."});
    }
}

/// Dash sizes, rising; the usual ones where none are named.
void readDashes(const TomlFields &fields, Question &question)
{
    question.isDash = true;
    if (!fields.find("choices")) {
        question.choices.assign(UsualDashes.begin(), UsualDashes.end());
        return;
    }
    readChoices(fields, question);
    int last = 0;
    for (const std::string &choice : question.choices) {
        if (auto fault = literalFault(choice, LiteralForm::Dash);
            fault || !choice.starts_with('-')) {
            fields.wrong("choices", {'"' + choice + "\" is no dash size", "Write for example -8."});
            return;
        }
        const int dash = -std::stoi(choice);
        if (dash < last)
            fields.wrong("choices", {"the sizes do not rise at " + choice, "Put the least first."});
        last = dash;
    }
}

/// The default, spelt as the choices spell it.
void readDefault(const TomlFields &fields, Question &question)
{
    if (const TomlValue *const value = fields.find("default");
        value && value->form == TomlValue::Form::YesNo && question.form == Question::Form::YesNo) {
        question.standard = value->yes ? "yes" : "no";
        return;
    }
    question.standard = fields.required("default");
    if (question.standard.empty())
        return;
    if (auto fault = answerFault(question, question.standard)) {
        fields.wrong("default", {"the default " + fault->wrong, fault->remedy});
        return;
    }
    if (question.form == Question::Form::YesNo)
        question.standard = folded(question.standard);
    for (const std::string &choice : question.choices) {
        if (sameFolded(choice, question.standard))
            question.standard = choice;
    }
}

void readBounds(const TomlFields &fields, Question &question)
{
    if (const auto dimension = readDimension(fields)) {
        question.dimension = *dimension;
        question.least = readBound(fields, "least", *dimension);
        question.most = readBound(fields, "most", *dimension);
    }
    if (question.least && question.most && question.least->si > question.most->si)
        fields.wrong("least", {"the least is more than the most", "Exchange them."});
}

Question readQuestion(const TomlFields &fields, const std::vector<Question> &earlier)
{
    Question question;
    question.id = fields.id("id");
    question.title = fields.required("title");
    (void)fields.required("form");
    const std::size_t form = fields.word("form", wordsOf(Paragraph::Question, "form"), 0);
    question.form = form == DashForm ? Question::Form::Choice : static_cast<Question::Form>(form);
    if (form == DashForm)
        readDashes(fields, question);
    else if (question.form == Question::Form::Choice)
        readChoices(fields, question);
    else
        refuseKeys(fields, {"choices"});
    if (question.form == Question::Form::Measured)
        readBounds(fields, question);
    else
        refuseKeys(fields, {"dimension", "least", "most"});
    readDefault(fields, question);
    question.workedOut = readWorkedDefault(fields, question, earlier);
    question.when = VaryingReader(fields.source(), earlier).condition(fields, "when");
    return question;
}

} // namespace

std::vector<Question> readQuestions(const TomlFields &top)
{
    std::vector<Question> questions;
    for (const TomlValue *const table : top.tables("question")) {
        const TomlFields fields(top.source(), *table, "question", keysOf(Paragraph::Question));
        Question question = readQuestion(fields, questions);
        const bool isThere =
            std::any_of(questions.begin(), questions.end(),
                        [&question](const Question &other) { return other.id == question.id; });
        if (isThere && !question.id.empty())
            fields.wrong("id", {"the question \"" + question.id + "\" stands twice",
                                "Give one of them another id."});
        questions.push_back(std::move(question));
    }
    return questions;
}

} // namespace flarestock
