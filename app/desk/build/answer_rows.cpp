// SPDX-License-Identifier: MIT

#include "app/desk/build/answer_rows.h"

#include "app/desk/build/other_units.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace flarestock {

namespace {

struct AnswerWords {
    Q_DECLARE_TR_FUNCTIONS(Answers)
};

QString formOf(const Question &question)
{
    switch (question.form) {
    case Question::Form::Choice:
        return QStringLiteral("choice");
    case Question::Form::YesNo:
        return QStringLiteral("yes/no");
    case Question::Form::Measured:
        break;
    }
    return QStringLiteral("measure");
}

/// As a person reads it: yes and no in his language, a number with his decimal sign.
QString saidAnswer(const Question &question, const std::string &answer)
{
    if (question.form != Question::Form::YesNo)
        return localised(said(answer));
    return answer == "yes"  ? AnswerWords::tr("yes")
           : answer == "no" ? AnswerWords::tr("no")
                            : said(answer);
}

QStringList choicesOf(const Question &question)
{
    QStringList choices;
    const bool isYesNo = question.form == Question::Form::YesNo;
    for (const std::string &choice :
         isYesNo ? std::vector<std::string>{"yes", "no"} : question.choices)
        choices.append(saidAnswer(question, choice));
    return choices;
}

/// What was worked out for it; nullptr where its default is fixed.
const WorkedAnswer *workedFor(const WorkedOut &worked, const Question &question)
{
    for (const WorkedAnswer &one : worked.expansion->workedOut)
        if (one.question == question.id)
            return &one;
    return nullptr;
}

QString saidOtherwise(const Question &question, const std::string &answer, Units units)
{
    return question.form == Question::Form::Measured
               ? saidInUnits(answer, question.dimension, units)
               : QString();
}

/// A size is taken as worked out by its first choice; a measure by leaving its field empty.
Row workedRow(const Question &question, const WorkedAnswer &worked, Units units)
{
    const QString size = AnswerWords::tr("worked out: %1").arg(localised(said(worked.worked)));
    if (question.isDash)
        return {said(question.id),
                {said(question.title), formOf(question), QStringList{size} + choicesOf(question),
                 worked.own ? said(worked.answer) : size, QString(), QString()}};
    const QString title = worked.own ? AnswerWords::tr("%1 (%2)").arg(said(question.title), size)
                                     : AnswerWords::tr("%1, worked out").arg(said(question.title));
    return {said(question.id),
            {title, formOf(question), choicesOf(question), localised(said(worked.answer)),
             QString(), saidOtherwise(question, worked.answer, units)}};
}

QStringList preferences()
{
    return {QStringLiteral("shelf"), QStringLiteral("joints"), QStringLiteral("money")};
}

Row preferenceRow(const BuildPlan &plan)
{
    const QStringList spoken{AnswerWords::tr("from the shelf"), AnswerWords::tr("fewest pieces"),
                             AnswerWords::tr("least money")};
    const auto at = std::max<qsizetype>(0, preferences().indexOf(said(plan.preference)));
    return {preferenceField(),
            {AnswerWords::tr("prefer"), QStringLiteral("choice"), spoken, spoken.at(at), QString(),
             QString()}};
}

/// The unit of "43.5 psi"; empty where there is none, or more than one number ("5 ft 6 in").
QString unitBeside(const QString &answer)
{
    static const QRegularExpression one(QStringLiteral("^\\s*[-+]?[0-9.]+\\s*([^0-9.\\s].*)$"));
    const auto found = one.match(answer);
    const QString unit = found.hasMatch() ? found.captured(1).trimmed() : QString();
    static const QRegularExpression digit(QStringLiteral("\\s[0-9]"));
    return unit.contains(digit) ? QString() : unit;
}

Result<std::string> withinBounds(const Question &question, const Measure &measure)
{
    if (question.least && measure.si < question.least->si)
        return problem(question.title, "is less than " + question.least->typed,
                       "Give " + question.least->typed + " or more.");
    if (question.most && measure.si > question.most->si)
        return problem(question.title, "is more than " + question.most->typed,
                       "Give " + question.most->typed + " or less.");
    return measure.typed;
}

} // namespace

QString preferenceField()
{
    return QStringLiteral("what the builder prefers");
}

std::string preferenceOf(int choice)
{
    return preferences().value(choice, QStringLiteral("shelf")).toStdString();
}

QStringList answerCells()
{
    return {QStringLiteral("title"),  QStringLiteral("form"),    QStringLiteral("choices"),
            QStringLiteral("answer"), QStringLiteral("problem"), QStringLiteral("otherwise")};
}

std::vector<Row> answerRows(const WorkedOut &worked, const BuildPlan &plan,
                            const RefusedAnswers &refused, Units units)
{
    std::vector<Row> rows;
    const Answers &answers = worked.expansion->answers;
    for (const Question &question : worked.form->questions) {
        if (!question.when.holds(answers))
            continue;
        const WorkedAnswer *const reckoned = workedFor(worked, question);
        if (reckoned != nullptr && !refused.contains(said(question.id))) {
            rows.push_back(workedRow(question, *reckoned, units));
            continue;
        }
        const auto answer = answers.find(question.id);
        const auto wrong = refused.constFind(said(question.id));
        const bool isRefused = wrong != refused.constEnd();
        const std::string &now = answer == answers.end() ? question.standard : answer->second;
        rows.push_back({said(question.id),
                        {said(question.title), formOf(question), choicesOf(question),
                         isRefused ? wrong->typed : saidAnswer(question, now),
                         isRefused ? wrong->problem : QString(),
                         isRefused ? QString() : saidOtherwise(question, now, units)}});
    }
    rows.push_back(preferenceRow(plan));
    return rows;
}

bool letsBeWorkedOut(const Question &question, const QString &typed)
{
    if (!question.workedOut)
        return false;
    return question.isDash ? !choicesOf(question).contains(typed) : typed.trimmed().isEmpty();
}

Result<std::string> meant(const Question &question, const QString &typed, const std::string &now)
{
    if (question.form == Question::Form::YesNo)
        return std::string(typed == AnswerWords::tr("yes")  ? "yes"
                           : typed == AnswerWords::tr("no") ? "no"
                                                            : typed.toStdString());
    if (question.form != Question::Form::Measured)
        return unlocalised(typed.trimmed()).toStdString();
    const auto figures = figuresTyped(typed.trimmed());
    if (!figures)
        return tl::unexpected(figures.error());
    QString text = said(*figures);
    if (question.dimension != Dimension::Count && Decimal::parse(text.toStdString()))
        text = QString(text + u' ' + unitBeside(said(now))).trimmed();
    const auto measure = Measure::parse(text.toStdString(), question.dimension);
    if (!measure) {
        Problem wrong = measure.error();
        wrong.thing = question.title;
        return tl::unexpected(std::move(wrong));
    }
    return withinBounds(question, *measure);
}

} // namespace flarestock
