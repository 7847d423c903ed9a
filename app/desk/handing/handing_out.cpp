// SPDX-License-Identifier: MIT

#include "app/desk/handing/handing_out.h"

#include "app/desk/words/spoken.h"
#include "app/stockroom/taking_back.h"
#include "app/workshop/clock.h"

#include <algorithm>

namespace flarestock {

HandingOut::HandingOut(QObject *parent)
    : QObject(parent), m_steps(stepCells()), m_picks(pickCells()), m_inCar(inCarCells())
{
}

void HandingOut::setShop(const WriteShop &write, bool readOnly)
{
    m_write = write;
    m_readOnly = readOnly;
}

void HandingOut::show(const WorkedOut &worked, const BuildPlan &plan, Units units)
{
    if (plan.id != m_plan.id) {
        m_ticked.clear();
        m_problem.clear();
        m_waiting = nullptr;
    }
    const bool same = worked.alive == m_worked.alive && units == m_units && plan.id == m_plan.id;
    m_worked = worked;
    m_plan = plan;
    m_units = units;
    if (same && worked.alive)
        return;
    m_handed = worked.expansion == nullptr ? HandedOut() : handedOut(worked, plan);
    showRows();
}

void HandingOut::showRows()
{
    std::set<QString> there;
    for (const Pick &pick : m_handed.picks.picks)
        there.insert(pickKey(pick.key));
    std::erase_if(m_ticked, [&there](const QString &key) { return !there.contains(key); });
    m_steps.become(stepRows(m_handed, barrier()));
    m_picks.become(pickRows(m_handed, m_ticked, m_units));
    m_inCar.become(m_worked.workshop == nullptr ? std::vector<Row>()
                                                : inCarRows(m_handed, *m_worked.workshop, m_units));
    Q_EMIT changed();
}

void HandingOut::setWho(const QString &who)
{
    m_who = who;
    const auto waiting = std::exchange(m_waiting, nullptr);
    if (waiting && !who.isEmpty())
        waiting();
}

QString HandingOut::title() const
{
    return said(m_plan.title.empty() ? m_plan.id : m_plan.title);
}

QString HandingOut::barrier() const
{
    if (m_plan.id.empty())
        return tr("A template that is tried out takes no stock; open one of the planned builds.");
    if (m_readOnly)
        return tr("The shop file can only be read. Ask whoever keeps it for the right to write.");
    if (!m_write || !takesStock(m_worked, m_plan))
        return tr("Nothing can be written down here.");
    return {};
}

QString HandingOut::whyNotDone() const
{
    return m_handed.whyNotDone.empty() ? QString() : said(m_handed.whyNotDone);
}

QStringList HandingOut::places() const
{
    QStringList ids;
    if (m_worked.workshop == nullptr)
        return ids;
    for (const Place &place : m_worked.workshop->ledger.places()) {
        if (isStock(place.kind))
            ids.append(said(place.id));
    }
    return ids;
}

void HandingOut::tick(int row)
{
    const QString key = m_picks.cell(row, QStringLiteral("key")).toString();
    if (key.isEmpty())
        return;
    if (m_ticked.erase(key) == 0)
        m_ticked.insert(key);
    m_problem.clear();
    showRows();
}

bool HandingOut::scan(const QString &code)
{
    const QString wanted = code.trimmed();
    for (int row = 0; row < m_picks.count(); ++row) {
        const bool isIt = m_picks.cell(row, QStringLiteral("part"))
                                  .toString()
                                  .compare(wanted, Qt::CaseInsensitive) == 0 ||
                          m_picks.cell(row, QStringLiteral("lot"))
                                  .toString()
                                  .compare(wanted, Qt::CaseInsensitive) == 0;
        if (!isIt || wanted.isEmpty() || m_picks.cell(row, QStringLiteral("ticked")).toBool())
            continue;
        tick(row);
        return true;
    }
    refuse(tr("%1 is not on this list, or it is ticked already.").arg(wanted));
    return false;
}

PickList HandingOut::ticked(bool all) const
{
    PickList list = m_handed.picks;
    if (!all)
        std::erase_if(list.picks,
                      [this](const Pick &pick) { return !m_ticked.contains(pickKey(pick.key)); });
    return list;
}

void HandingOut::refuse(const QString &sentence)
{
    m_problem = sentence;
    Q_EMIT changed();
}

void HandingOut::hear()
{
    if (!m_problem.isEmpty())
        refuse({});
}

void HandingOut::act(const QString &sentence, MadeBy make)
{
    if (isBusy())
        return;
    if (const QString why = barrier(); !why.isEmpty())
        return refuse(why);
    if (m_who.isEmpty()) {
        m_waiting = [this, sentence, make = std::move(make)] { write(sentence, make, false); };
        Q_EMIT askedWho();
        return;
    }
    write(sentence, make, false);
}

void HandingOut::write(const QString &sentence, const MadeBy &make, bool isBack)
{
    const By by{m_who.toStdString(), {}, nowMilliseconds(), freshId()};
    m_problem.clear();
    m_errand.run([this, sentence, isBack, make, by, writeShop = m_write]() -> Errand::Back {
        const auto result = writeShop([make, by](const ShopFile &file, const Workshop &workshop) {
            return make(file, workshop, by);
        });
        return [this, sentence, isBack, result] {
            if (result)
                finished(*result, sentence, isBack);
            else
                refuse(said(result.error().sentence()));
        };
    });
    Q_EMIT changed();
}

void HandingOut::finished(const std::shared_ptr<const Wrote> &wrote, const QString &sentence,
                          bool isBack)
{
    const auto &records = wrote->action.records;
    const bool holdsTest = std::any_of(records.begin(), records.end(), [](const Record &record) {
        return record.kind == RecordKind::LeakTest;
    });
    const bool onlyTest = holdsTest && records.size() == 1 && wrote->action.movements.empty();
    if (isBack)
        m_done.pop_back();
    else if (!onlyTest) // What was seen stays written down.
        m_done.push_back(
            {wrote->action,
             holdsTest ? tr("%1 Its leak test stays written down.").arg(sentence) : sentence});
    Q_EMIT this->wrote(wrote, isBack ? tr("Taken back: %1").arg(sentence) : sentence, isBack);
    Q_EMIT changed();
}

void HandingOut::takeBack()
{
    if (m_done.empty() || isBusy())
        return;
    write(
        m_done.back().sentence,
        [done = m_done.back().action](const ShopFile &file, const Workshop &workshop,
                                      const By &by) {
            return actionTakenBack(done, file, workshop, by);
        },
        true);
}

} // namespace flarestock
