// SPDX-License-Identifier: MIT

#include "model/systems/answers.h"
#include "model/exact/case_fold.h"
#include "model/systems/expand.h"
#include "model/systems/sizing/completing.h"
#include "model/systems/sizing/line_working.h"

namespace flarestock {

namespace {

template <class Texts>
std::string listed(const Texts &texts)
{
    std::string all;
    for (const std::string &text : texts)
        all += (all.empty() ? "" : ", ") + text;
    return all;
}

Result<std::string> oneOf(const Question &question, const std::vector<std::string> &choices,
                          const std::string &given)
{
    for (const std::string &choice : choices)
        if (sameFolded(choice, given))
            return choice;
    return problem(question.id, "\"" + given + "\" is no answer to it",
                   "Answer one of: " + listed(choices) + ".");
}

Result<std::string> measured(const Question &question, const std::string &given)
{
    const auto measure = Measure::parse(given, question.dimension);
    if (!measure)
        return problem(question.id,
                       "\"" + given + "\" is no answer to it: " + measure.error().wrong,
                       measure.error().remedy);
    // A bound typed in another unit may differ in the last bit of its double.
    const double slack = 1e-12;
    if (question.least && measure->si < question.least->si * (1 - slack))
        return problem(question.id, "\"" + given + "\" is below " + question.least->typed,
                       "Answer at least that.");
    if (question.most && measure->si > question.most->si * (1 + slack))
        return problem(question.id, "\"" + given + "\" is above " + question.most->typed,
                       "Answer at most that.");
    return measure->typed;
}

Result<std::string> spelt(const Question &question, std::string_view typed)
{
    const std::string given = std::string(trimmed(typed));
    switch (question.form) {
    case Question::Form::Choice:
        return oneOf(question, question.choices, given);
    case Question::Form::YesNo:
        return oneOf(question, {"yes", "no"}, given);
    case Question::Form::Measured:
        break;
    }
    return measured(question, given);
}

/// Problem: an answer to no question.
Result<void> allAsked(const Template &form, const Answers &given)
{
    for (const auto &[id, answer] : given) {
        if (form.question(id))
            continue;
        std::vector<std::string> ids;
        for (const Question &question : form.questions)
            ids.push_back(question.id);
        return problem(id, "is no question of template " + form.id,
                       ids.empty() ? "It asks nothing." : "It asks: " + listed(ids) + ".");
    }
    return {};
}

/// The builder's own answer counts before the one that was worked out.
void answerItself(WorkedAnswer &worked, const std::string &own)
{
    worked.own = true;
    worked.answer = own;
    if (worked.sizes)
        worked.sizes->taken = dashOfChoice(own);
}

/// nullptr where there is none; an empty one lets what can be worked out be worked out.
const std::string *ownAnswer(const Question &question, const Answers &given)
{
    const auto found = given.find(question.id);
    if (found == given.end() || (question.workedOut && trimmed(found->second).empty()))
        return nullptr;
    return &found->second;
}

} // namespace

Result<CompletedAnswers> completedWith(const Template &form, const Answers &given,
                                       const KnownParts &known)
{
    if (auto asked = allAsked(form, given); !asked)
        return tl::unexpected(asked.error());
    CompletedAnswers complete;
    for (const Question &question : form.questions) {
        const std::string *own = ownAnswer(question, given);
        auto answer = own ? spelt(question, *own) : Result<std::string>(question.standard);
        if (!answer)
            return tl::unexpected(answer.error());
        complete.answers[question.id] = std::move(*answer);
    }
    // A question that is not asked keeps its default, whatever was answered before: in the order
    // of the template, so that a question may depend on those above it.
    for (const Question &question : form.questions) {
        std::string &answer = complete.answers[question.id];
        const bool isAsked = question.when.holds(complete.answers);
        if (!isAsked)
            answer = question.standard;
        if (!question.workedOut)
            continue;
        WorkedAnswer worked = workOut(form, question, complete.answers, known);
        if (isAsked && ownAnswer(question, given))
            answerItself(worked, answer);
        answer = worked.answer;
        if (isAsked)
            complete.worked.push_back(std::move(worked));
    }
    return complete;
}

Result<Answers> completed(const Template &form, const Answers &given)
{
    auto complete = completedWith(form, given, {});
    if (!complete)
        return tl::unexpected(complete.error());
    return std::move(complete->answers);
}

} // namespace flarestock
