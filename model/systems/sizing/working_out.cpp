// SPDX-License-Identifier: MIT

#include "model/systems/sizing/working_out.h"

#include "model/exact/case_fold.h"
#include "model/fluids/bounds.h"
#include "model/systems/sizing/flow_conditions.h"
#include "model/systems/sizing/line_working.h"

#include <cmath>

namespace flarestock {

namespace {

constexpr double LitreHour = 1 / 3.6e6;
/// Rounding up must not lift a figure that is whole but for its last bit.
constexpr double SameFigure = 1e-9;

/// "228 L/h": up to the next whole one, so that it is never too little.
std::string upTo(double figure, std::string_view unit)
{
    return shortNumber(std::ceil(figure * (1 - SameFigure))) + " " + std::string(unit);
}

/// What was reckoned, or why it could not be.
Result<std::string> demandOf(const Template &form, const WorkedDefault &by, const Answers &answers)
{
    const FlowConditions conditions = conditionsOf(answers);
    const auto engine = engineFlowM3S(answers, fluidAnswered(form, answers), conditions);
    if (!engine)
        return problem("fuel demand", "is not known: there is no power, or the fluid is no fuel",
                       "Answer the flow.");
    return upTo(*engine * marginOf(by.feed).factor / by.sharedBy / LitreHour, "L/h");
}

Result<std::string> pumpPressureOf(const WorkedDefault &by, const Answers &answers)
{
    const auto set = answeredSi(by.setPressure, Dimension::Pressure, answers);
    if (!set)
        return problem("pump pressure", "is not known: nothing is set", "Answer the pressure.");
    const double whole = *set + conditionsOf(answers).boostPa;
    const double line = lineBudget(by.delivery, BudgetedLine::BeforeRegulator, whole).cautionPa;
    return upTo((whole + line) / 1e3, "kPa");
}

/// Kept within what the question takes; what was cut off is said.
void bound(const Question &question, WorkedAnswer &made)
{
    const auto measure = Measure::parse(made.worked, question.dimension);
    const auto cut = [&](const Measure &at, std::string_view side) {
        made.why = made.worked + " is " + std::string(side) + " what is asked here";
        made.worked = at.typed;
    };
    if (measure && question.least && measure->si < question.least->si)
        cut(*question.least, "below");
    else if (measure && question.most && measure->si > question.most->si)
        cut(*question.most, "above");
}

} // namespace

std::optional<double> answeredSi(const Varying &varying, Dimension dimension,
                                 const Answers &answers)
{
    const auto said = varying.with(answers);
    if (!said || trimmed(*said).empty())
        return std::nullopt;
    const auto measure = Measure::parse(*said, dimension);
    return measure ? std::optional(measure->si) : std::nullopt;
}

std::optional<Fluid> fluidAnswered(const Template &form, const Answers &answers)
{
    const auto answer = answers.find(form.fluidQuestion);
    if (form.fluidQuestion.empty() || answer == answers.end())
        return form.fluid;
    const auto fluid = parseFluid(answer->second);
    return fluid ? std::optional(*fluid) : form.fluid;
}

WorkedAnswer workOut(const Template &form, const Question &question, const Answers &answers,
                     const KnownParts &known)
{
    WorkedAnswer made;
    made.question = known.prefix + question.id;
    made.title = question.title;
    made.worked = question.standard;
    const WorkedDefault &by = *question.workedOut;
    if (by.by == WorkedDefault::By::LineSize) {
        workLineOut({form, question, answers, known}, made);
    } else {
        const auto worked = by.by == WorkedDefault::By::FuelDemand ? demandOf(form, by, answers)
                                                                   : pumpPressureOf(by, answers);
        if (worked)
            made.worked = *worked;
        else
            made.why = worked.error().thing + " " + worked.error().wrong;
        bound(question, made);
    }
    made.answer = made.worked;
    return made;
}

} // namespace flarestock
