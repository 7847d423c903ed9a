// SPDX-License-Identifier: MIT

#include "app/desk/handing/handing_out.h"

#include "app/desk/language/sentences.h"
#include "app/desk/scan/label_code.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

HandingOut::HandingOut(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_steps(stepCells()), m_picks(pickCells()),
      m_inCar(inCarCells()), m_another(pen), m_joint(pen), m_test(pen.unwritten(), [this] {
          return SheetNamed{QStringLiteral("leak test|") + said(m_plan.id),
                            tr("Leak test of %1").arg(title())};
      })
{
    connect(&m_pen, &Pen::changed, this, &HandingOut::changed);
    connect(&m_pen.unwritten(), &Unwritten::found, this, &HandingOut::takeUpTicks);
}

void HandingOut::show(const WorkedOut &worked, const BuildPlan &plan, Units units)
{
    if (plan.id != m_plan.id) {
        m_ticked.clear();
        m_pen.hear();
        m_pen.forgetWaiting();
    }
    const bool same = worked.alive == m_worked.alive && units == m_units && plan.id == m_plan.id;
    const bool isSameShop = worked.workshop == m_worked.workshop && plan.id == m_plan.id;
    m_worked = worked;
    m_plan = plan;
    m_units = units;
    if (same && worked.alive)
        return;
    Origins known = isSameShop ? std::move(m_handed.origins) : Origins();
    m_handed = worked.expansion == nullptr ? HandedOut() : handedOut(worked, plan);
    m_handed.origins = std::move(known); // Nothing has moved: only the plan is another one.
    showRows();
    takeUpTicks();
    if (m_handed.origins.empty())
        readOrigins();
}

/// Until it is back, more of the same says where a piece goes.
void HandingOut::readOrigins()
{
    m_readAgain = m_reading.isUnderWay();
    if (m_readAgain || !m_read || m_handed.inCar.empty())
        return;
    m_reading.run([this, read = m_read, shop = m_worked.workshop, build = m_plan.id,
                   alive = m_worked.alive]() -> Errand::Back {
        const auto movements = readOf<std::vector<Movement>>(
            read, [&build](ShopFile &file) { return file.movementsOfDocuments({build}); });
        const Origins origins = movements ? originsOf(*movements, shop->ledger) : Origins();
        return [this, origins] {
            if (m_readAgain)
                return readOrigins();
            m_handed.origins = origins;
            showRows();
        };
    });
}

void HandingOut::showRows()
{
    std::set<QString> there;
    for (const Pick &pick : m_handed.picks.picks)
        there.insert(pickKey(pick.key));
    if (std::erase_if(m_ticked, [&there](const QString &key) { return !there.contains(key); }) > 0)
        keepTicks();
    m_steps.become(stepRows(m_handed, barrier()));
    m_picks.become(pickRows(m_handed, m_ticked, m_units));
    m_inCar.become(m_worked.workshop == nullptr ? std::vector<Row>()
                                                : inCarRows(m_handed, *m_worked.workshop, m_units));
    Q_EMIT changed();
}

QString HandingOut::title() const
{
    return said(m_plan.title.empty() ? m_plan.id : m_plan.title);
}

QString HandingOut::barrier() const
{
    if (m_plan.id.empty())
        return tr("A template that is tried out takes no stock; open one of the planned builds.");
    if (QString why = m_pen.barrier(); !why.isEmpty())
        return why;
    return takesStock(m_worked, m_plan) ? QString() : tr("Nothing can be written down here.");
}

QString HandingOut::whyNotDone() const
{
    return m_handed.whyNotDone.empty() ? QString() : inWords(m_handed.whyNotDone);
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
    m_pen.hear();
    showRows();
    keepTicks();
}

void HandingOut::keepTicks()
{
    QVariantMap kept;
    if (!m_ticked.empty())
        kept[QStringLiteral("ticked")] = QStringList(m_ticked.begin(), m_ticked.end());
    m_pen.unwritten().keep(QStringLiteral("pick|") + said(m_plan.id),
                           tr("Pick list of %1").arg(title()), kept);
}

void HandingOut::takeUpTicks()
{
    if (m_picks.count() == 0 || !m_ticked.empty())
        return;
    const QVariantMap kept = m_pen.unwritten().takeUp(QStringLiteral("pick|") + said(m_plan.id));
    const QStringList keys = kept.value(QStringLiteral("ticked")).toStringList();
    if (keys.isEmpty())
        return;
    m_ticked.insert(keys.begin(), keys.end());
    showRows();
    keepTicks();
}

bool HandingOut::scan(const QString &code)
{
    const LabelCode wanted = LabelCode::of(code);
    const auto cell = [this](int row, const char *name) {
        return m_picks.cell(row, QString::fromLatin1(name));
    };
    int ofBin = -1; // The first line of that bin that is still to be taken.
    bool isTicked = false;
    for (int row = 0; row < m_picks.count(); ++row) {
        const bool isIt = wanted.means(cell(row, "part").toString(), cell(row, "lot").toString());
        const bool isBin =
            cell(row, "place").toString().compare(code.trimmed(), Qt::CaseInsensitive) == 0;
        isTicked = isTicked || ((isIt || isBin) && cell(row, "ticked").toBool());
        if (cell(row, "ticked").toBool())
            continue;
        if (isIt) {
            tick(row);
            Q_EMIT found(row);
            return true;
        }
        ofBin = isBin && ofBin < 0 ? row : ofBin;
    }
    if (ofBin >= 0) {
        m_pen.hear();
        Q_EMIT found(ofBin);
        return true;
    }
    refuse(isTicked ? tr("%1 is ticked already.").arg(code.trimmed())
                    : tr("%1 is not on this list.").arg(code.trimmed()));
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

void HandingOut::act(const QString &sentence, Pen::MadeBy make)
{
    if (isBusy())
        return;
    if (const QString why = barrier(); !why.isEmpty())
        return refuse(why);
    m_pen.act(sentence, std::move(make));
}

} // namespace flarestock
