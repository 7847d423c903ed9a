// SPDX-License-Identifier: MIT

#include "app/desk/build/build_desk.h"

#include "app/desk/build/find_rows.h"
#include "app/desk/build/finding_rows.h"
#include "app/desk/rows/pace.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

constexpr std::size_t StepsKept = 200;

} // namespace

BuildDesk::BuildDesk(QObject *parent)
    : QObject(parent), m_answers(answerCells()), m_bill(billCells()), m_findings(findingCells()),
      m_found(foundCells()), m_weighing(m_opened)
{
}

void BuildDesk::tell(const QString &sentence)
{
    m_lastStep = sentence;
    Q_EMIT told();
}

/// Fields and findings are acted on by their place, and so at once.
void BuildDesk::show()
{
    m_answers.become(answerRows(m_worked, m_plan, m_refused, m_units));
    m_findings.become(findingRows(m_worked));
    Q_EMIT told();
    const auto later = [this](auto piece) {
        Pace::instance().later(this, [this, piece] {
            if (isOpen())
                piece();
        });
    };
    later([this] { m_bill.become(billRows(m_worked, m_grouping, m_units)); });
    later([this] { m_map.show(m_worked); });
    later([this] { Q_EMIT changed(); });
    later([this] { refreshOpened(); });
}

void BuildDesk::setByKind(bool byKind)
{
    m_grouping = byKind ? Grouping::Kind : Grouping::Station;
    if (isOpen())
        m_bill.become(billRows(m_worked, m_grouping, m_units));
    Q_EMIT changed();
}

void BuildDesk::setInInches(bool inInches)
{
    if (inInches == this->inInches())
        return;
    m_units = inInches ? Units::Inch : Units::Metric;
    m_map.setUnits(m_units);
    if (isOpen()) {
        m_answers.become(answerRows(m_worked, m_plan, m_refused, m_units));
        m_bill.become(billRows(m_worked, m_grouping, m_units));
        refreshOpened();
    }
    Q_EMIT changed();
}

const Question *BuildDesk::question(const QString &id) const
{
    return m_worked.form == nullptr ? nullptr : m_worked.form->question(id.toStdString());
}

void BuildDesk::refuse(const QString &question, const QString &typed, const Problem &problem)
{
    m_refused.insert(question, {typed, saidProblem(problem)});
    m_answers.become(answerRows(m_worked, m_plan, m_refused, m_units));
    Q_EMIT changed();
}

bool BuildDesk::answer(const QString &id, const QString &typed)
{
    const Question *asked = question(id);
    if (asked == nullptr)
        return false;
    if (letsBeWorkedOut(*asked, typed))
        return workOutAgain(*asked);
    const std::string now = m_worked.expansion->answers.at(asked->id);
    const auto wanted = meant(*asked, typed, now);
    if (!wanted) {
        refuse(id, typed, wanted.error());
        return false;
    }
    const bool wasRefused = m_refused.remove(id) > 0;
    // The builder may decide on what was worked out: then it stays, whatever else is answered.
    const bool isDecided = !asked->workedOut || m_plan.answers.contains(asked->id);
    if (*wanted == now && isDecided && !isWorking()) {
        if (wasRefused)
            show();
        return true;
    }
    BuildPlan plan = this->wanted();
    plan.answers.insert_or_assign(asked->id, *wanted);
    const QString what =
        tr("%1 from %2 to %3")
            .arg(said(asked->title), localised(said(now)), localised(said(*wanted)));
    return take(std::move(plan), what);
}

bool BuildDesk::workOutAgain(const Question &asked)
{
    const bool wasRefused = m_refused.remove(said(asked.id)) > 0;
    BuildPlan plan = wanted();
    if (plan.answers.erase(asked.id) == 0) {
        if (wasRefused)
            show();
        return true;
    }
    return take(std::move(plan), tr("%1: worked out again").arg(said(asked.title)));
}

void BuildDesk::giveUp(const QString &id)
{
    if (m_refused.remove(id) == 0 || !isOpen())
        return;
    m_answers.become(answerRows(m_worked, m_plan, m_refused, m_units));
    Q_EMIT changed();
}

bool BuildDesk::choose(const QString &id, int choice)
{
    if (!isOpen() || choice < 0)
        return false;
    if (id == preferenceField()) {
        BuildPlan plan = wanted();
        plan.preference = preferenceOf(choice);
        if (plan.preference == wanted().preference)
            return true;
        const QStringList choices =
            m_answers.cell(m_answers.rowOf(id), QStringLiteral("choices")).toStringList();
        return take(std::move(plan), tr("ways to make joints: %1").arg(choices.value(choice)));
    }
    const QStringList choices =
        m_answers.cell(m_answers.rowOf(id), QStringLiteral("choices")).toStringList();
    return choice < choices.size() && answer(id, choices.at(choice));
}

/// Whether it was taken, or is being worked out.
bool BuildDesk::take(BuildPlan plan, const QString &what)
{
    if (m_isOpening)
        return false;
    m_wanted = plan;
    const auto isTaken = std::make_shared<bool>(true);
    const auto done = [this, plan, what, isTaken](Result<WorkedOut> worked) {
        *isTaken = takeIn(plan, what, std::move(worked));
    };
    m_working.begin([this] { return m_workOut; }, std::move(plan), done);
    sayWorking();
    return *isTaken;
}

bool BuildDesk::takeIn(const BuildPlan &plan, const QString &what, Result<WorkedOut> worked)
{
    if (!worked) {
        tell(tr("Not done: %1").arg(saidProblem(worked.error())));
        return false;
    }
    const int lines = changedLines(*m_worked.bill, *worked->bill);
    QString sentence = lines == 0   ? tr("%1: no line changed").arg(what)
                       : lines == 1 ? tr("%1: 1 line changed").arg(what)
                                    : tr("%1: %2 lines changed").arg(what, QString::number(lines));
    const Money before = m_worked.bill->total;
    const Money after = worked->bill->total;
    if (!(before == after))
        sentence += tr(", total %1 → %2").arg(saidNumber(before.amount), saidMoney(after));
    m_steps.push_back({m_plan, what});
    if (m_steps.size() > StepsKept)
        m_steps.erase(m_steps.begin());
    m_plan = plan;
    m_worked = std::move(*worked);
    sentence[0] = sentence[0].toUpper();
    m_lastStep = sentence;
    show();
    Q_EMIT planChanged();
    Q_EMIT stepped();
    return true;
}

void BuildDesk::takeBack()
{
    m_working.finish(); // What is being worked out is the last step.
    if (m_steps.empty() || m_isOpening)
        return;
    m_wanted = m_steps.back().plan;
    m_working.begin([this] { return m_workOut; }, m_wanted,
                    [this](Result<WorkedOut> worked) { takeBackTo(std::move(worked)); });
    sayWorking();
}

void BuildDesk::takeBackTo(Result<WorkedOut> worked)
{
    if (!worked)
        return tell(tr("Not taken back: %1").arg(saidProblem(worked.error())));
    const QString undone = m_steps.back().what;
    m_plan = std::move(m_steps.back().plan);
    m_steps.pop_back();
    m_worked = std::move(*worked);
    m_refused.clear();
    m_lastStep = tr("Taken back: %1").arg(undone);
    show();
    Q_EMIT planChanged();
}

QString BuildDesk::nameOf(const std::string &slot) const
{
    if (const PlacedJoint *joint = m_worked.expansion->joint(slot))
        return said(joint->at);
    if (const PlacedRun *run = m_worked.expansion->run(slot))
        return tr("line, %1 to %2").arg(titleOf(m_worked, run->from), titleOf(m_worked, run->to));
    return titleOf(m_worked, slot);
}

bool BuildDesk::pick(const QString &slot, const QString &value)
{
    if (!isOpen() || slot.isEmpty())
        return false;
    BuildPlan plan = wanted();
    plan.picks.insert_or_assign(slot.toStdString(), value.toStdString());
    return take(std::move(plan), tr("%1: %2 picked").arg(nameOf(slot.toStdString()), value));
}

bool BuildDesk::letGo(const QString &slot)
{
    BuildPlan plan = wanted();
    if (!isOpen() || plan.picks.erase(slot.toStdString()) == 0)
        return false;
    return take(std::move(plan), tr("%1: pick let go").arg(nameOf(slot.toStdString())));
}

bool BuildDesk::mend(int finding)
{
    if (!isOpen() || finding < 0 || finding >= static_cast<int>(m_worked.findings->size()))
        return false;
    const Finding mended = m_worked.findings->at(static_cast<std::size_t>(finding));
    if (mended.mend.empty())
        return false;
    BuildPlan plan = wanted();
    for (const auto &[slot, number] : mended.mend) {
        if (number.empty())
            plan.picks.erase(slot);
        else
            plan.picks.insert_or_assign(slot, number);
    }
    const QString button = m_findings.cell(finding, QStringLiteral("mend")).toString();
    return take(std::move(plan), tr("%1: %2").arg(nameOf(mended.mend.begin()->first), button));
}

} // namespace flarestock
