// SPDX-License-Identifier: MIT
//
// The deeds of HandingOut, each made into an action by the stockroom, as the commands make it.

#include "app/desk/handing/handing_out.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"

namespace flarestock {

void HandingOut::reserve()
{
    const int lines = static_cast<int>(m_handed.toPromise.size());
    if (lines == 0 && barrier().isEmpty())
        return refuse(m_steps.cell(0, QStringLiteral("detail")).toString());
    const QString sentence = lines == 1 ? tr("1 line promised to %1.").arg(title())
                                        : tr("%1 lines promised to %2.").arg(lines).arg(title());
    act(sentence,
        [promises = m_handed.toPromise](const ShopFile &, const Workshop &, const By &by) {
            return Result<Action>(promised(promises, by));
        });
}

void HandingOut::issue(bool all)
{
    const PickList list = ticked(all);
    const auto count = list.picks.size();
    if (count == 0 && barrier().isEmpty())
        return refuse(m_handed.picks.picks.empty()
                          ? tr("Nothing to issue: reserve first what the build shall have.")
                          : tr("Nothing is ticked. Tick what is in the hand, or issue all."));
    const QString sentence = count == 1 ? tr("1 pick issued to %1.").arg(title())
                                        : tr("%1 picks issued to %2.").arg(count).arg(title());
    act(sentence,
        [list, plan = m_plan, alive = m_worked.alive](const ShopFile &, const Workshop &workshop,
                                                      const By &by) -> Result<Action> {
            const auto movements = issueMovements(list, workshop, plan);
            if (!movements)
                return tl::unexpected(movements.error());
            return flarestock::changed(*movements, workshop, plan, by);
        });
}

void HandingOut::giveBack(int row, const QString &typed, const QString &to, const QString &now)
{
    if (row < 0 || row >= static_cast<int>(m_handed.inCar.size()))
        return;
    const HandedOut::InCar &one = m_handed.inCar.at(static_cast<std::size_t>(row));
    const auto quantity = figuresTyped(typed);
    if (!quantity)
        return refuse(saidProblem(quantity.error()));
    const GiveBackWords words{m_plan.id,        one.part->number,
                              *quantity,        to.toStdString(),
                              one.key.lot,      std::string(text(one.key.condition)),
                              now.toStdString()};
    const QString sentence =
        tr("%1 of %2 given back to %3.").arg(typed.trimmed(), said(words.part), to);
    act(sentence,
        [words, plan = m_plan](const ShopFile &, const Workshop &workshop,
                               const By &by) -> Result<Action> {
            const auto movement = givenBack(words, workshop);
            if (!movement)
                return tl::unexpected(movement.error());
            return flarestock::changed({*movement}, workshop, plan, by);
        });
}

bool HandingOut::beginAnother(int row)
{
    const bool can = row >= 0 && row < static_cast<int>(m_handed.inCar.size()) &&
                     barrier().isEmpty() && !isBusy();
    if (can)
        m_another.begin({m_worked, m_plan, m_units},
                        m_handed.inCar.at(static_cast<std::size_t>(row)),
                        m_inCar.cell(row, QStringLiteral("to")).toString());
    return can;
}

bool HandingOut::beginJoint(const QString &spot)
{
    const QString kind = QStringLiteral("joint|");
    return spot.startsWith(kind) && barrier().isEmpty() && !isBusy() &&
           m_joint.begin({m_worked, m_plan, m_units}, spot.mid(kind.size()).toStdString());
}

LeakTestWords HandingOut::wordsOf(const QVariantMap &test) const
{
    const auto word = [&test](const char *name) {
        return test.value(QString::fromLatin1(name)).toString().trimmed().toStdString();
    };
    return {m_plan.id,
            word("medium"),
            figuresTyped(test, "pressure"),
            figuresTyped(test, "held"),
            word("result"),
            word("second"),
            word("note")};
}

void HandingOut::finish(const QVariantMap &test)
{
    if (test.isEmpty() && !m_handed.whyNotDone.empty())
        return refuse(tr("Not done: %1. Make the test and write it down.").arg(whyNotDone()));
    for (const char *figure : {"pressure", "held"}) {
        const auto typed = figuresTyped(test.value(QString::fromLatin1(figure)).toString());
        if (!typed)
            return refuse(saidProblem(typed.error()));
    }
    const LeakTestWords words = wordsOf(test);
    if (!test.isEmpty() && (words.medium.empty() || words.held.empty()))
        return refuse(tr("A leak test says with what, at which pressure and for how long."));
    if (!test.isEmpty() && words.result.empty())
        return refuse(tr("Say whether it held or leaked."));
    const bool failed = !test.isEmpty() && words.result == "failed";
    if (!failed && m_handed.brakes && !test.isEmpty() && words.second.empty())
        return refuse(tr("Brakes need a second name below the test. Who has seen it too?"));
    const QString sentence =
        failed ? tr("Leak test of %1 written down: failed. The build stays open.").arg(title())
               : tr("%1 is done.").arg(title());
    act(sentence,
        [words, plan = m_plan, isNew = !test.isEmpty()](const ShopFile &, const Workshop &workshop,
                                                        const By &by) -> Result<Action> {
            return isNew ? tested(words, workshop, by)
                         : Result<Action>(doneAction(workshop, plan, std::nullopt, by));
        });
}

void HandingOut::openAgain()
{
    act(tr("%1 is open again.").arg(title()),
        [plan = m_plan](const ShopFile &, const Workshop &, const By &by) {
            return Result<Action>(openedAgain(plan, by));
        });
}

} // namespace flarestock
