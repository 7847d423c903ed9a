// SPDX-License-Identifier: MIT
//
// What the build desk says about the build as a whole, and what is open on its map.

#include "app/desk/build/build_desk.h"
#include "app/desk/build/caliper_rows.h"
#include "app/desk/build/find_rows.h"
#include "app/desk/build/finding_rows.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr int FoundMost = 12;

int openJoints(const Expansion &expansion)
{
    return static_cast<int>(
        std::count_if(expansion.joints.begin(), expansion.joints.end(),
                      [](const PlacedJoint &joint) { return standing(joint) == Standing::Open; }));
}

} // namespace

QString BuildDesk::id() const
{
    return said(m_plan.id);
}

QString BuildDesk::title() const
{
    if (!m_plan.title.empty())
        return said(m_plan.title);
    return m_worked.form == nullptr ? QString() : said(m_worked.form->title);
}

QString BuildDesk::about() const
{
    if (!isOpen())
        return {};
    QStringList parts;
    if (!m_carTitle.isEmpty())
        parts.append(m_carTitle);
    if (!m_plan.by.empty())
        parts.append(tr("build by %1").arg(saidDate(m_plan.by)));
    parts.append(m_plan.title.empty() ? tr("template tried out, not planned")
                                      : said(m_worked.form->title));
    return parts.join(QStringLiteral("  ·  "));
}

bool BuildDesk::isEverythingHere() const
{
    return isOpen() && m_worked.bill->complete && openJoints(*m_worked.expansion) == 0;
}

QString BuildDesk::everythingHere() const
{
    if (!isOpen())
        return {};
    const int all = static_cast<int>(m_worked.bill->lines.size());
    const int open = openJoints(*m_worked.expansion);
    const int lacking = shortLines(*m_worked.bill);
    if (lacking == 0)
        return open == 0 ? tr("all %1 lines are here").arg(all)
                         : tr("all %1 lines, %2 joints open").arg(all).arg(open);
    return tr("%1 of %2 lines short").arg(lacking).arg(all);
}

QString BuildDesk::anythingStopped() const
{
    if (!isOpen())
        return {};
    const int stops = count(*m_worked.findings, Severity::Stop);
    const int cautions = count(*m_worked.findings, Severity::Caution);
    if (stops == 0 && cautions == 0)
        return tr("no finding stops it");
    QStringList parts;
    parts.append(stops == 0   ? tr("no stop")
                 : stops == 1 ? tr("1 stop")
                              : tr("%1 stops").arg(stops));
    if (cautions > 0)
        parts.append(cautions == 1 ? tr("1 caution") : tr("%1 cautions").arg(cautions));
    return parts.join(QStringLiteral(", "));
}

int BuildDesk::stoppedMark() const
{
    if (!isOpen())
        return Standing::Note;
    if (count(*m_worked.findings, Severity::Stop) > 0)
        return Standing::Trap;
    return count(*m_worked.findings, Severity::Caution) > 0 ? Standing::Caution : Standing::Note;
}

QString BuildDesk::total() const
{
    return isOpen() ? saidMoney(m_worked.bill->total) : QString();
}

QString BuildDesk::billFoot() const
{
    if (!isOpen())
        return {};
    const auto &joints = m_worked.expansion->joints;
    const auto fitting = std::count_if(joints.begin(), joints.end(), [](const PlacedJoint &joint) {
        return joint.way && fits(joint.way->verdict());
    });
    QString foot = tr("%1 lines  ·  %2 of %3 joints fit")
                       .arg(m_worked.bill->lines.size())
                       .arg(fitting)
                       .arg(joints.size());
    const auto unpriced = m_worked.bill->unpriced.size();
    if (unpriced > 0)
        foot += tr("  ·  %1 without a price, not in the total").arg(unpriced);
    return foot;
}

QString BuildDesk::answerProblem() const
{
    return m_refused.isEmpty() ? QString() : m_refused.first().problem;
}

QString BuildDesk::worstSpot() const
{
    const PlacedJoint *worst = nullptr;
    for (const PlacedJoint &joint : m_worked.expansion->joints) {
        if (worst == nullptr || gravity(standing(joint)) > gravity(standing(*worst)))
            worst = &joint;
    }
    return worst == nullptr ? QString() : QString(QStringLiteral("joint|") + said(worst->id));
}

bool BuildDesk::isSpot(const QString &spot) const
{
    const QString kind = spot.section(u'|', 0, 0);
    const std::string id = spot.section(u'|', 1).toStdString();
    if (kind == QStringLiteral("joint"))
        return m_worked.expansion->joint(id) != nullptr;
    if (kind == QStringLiteral("station"))
        return m_worked.expansion->station(id) != nullptr;
    const PlacedRun *run = m_worked.expansion->run(id);
    return kind == QStringLiteral("run") && run != nullptr && run->joints.size() > 1;
}

/// `spot` is one of this build (isSpot()).
Detail BuildDesk::detailOf(const QString &spot) const
{
    const std::string id = spot.section(u'|', 1).toStdString();
    if (spot.startsWith(QStringLiteral("joint|")))
        return jointDetail(m_worked, *m_worked.expansion->joint(id), m_units);
    if (spot.startsWith(QStringLiteral("station|")))
        return stationDetail(m_worked, *m_worked.expansion->station(id), m_units);
    return runDetail(m_worked, *m_worked.expansion->run(id), m_units);
}

void BuildDesk::openSpot(const QString &spot)
{
    if (!isOpen() || !isSpot(spot))
        return;
    m_opened.show(spot, detailOf(spot));
    m_weighing.stop();
    if (!spot.startsWith(QStringLiteral("joint|"))) // A way of a joint knows what it costs itself.
        m_weighing.begin(m_workOut, m_plan, m_worked);
}

void BuildDesk::openAt(const QString &id)
{
    if (!isOpen() || id.isEmpty())
        return;
    for (const char *kind : {"joint|", "station|", "run|"}) {
        const QString spot = QString(QString::fromLatin1(kind) + id);
        if (isSpot(spot))
            return openSpot(spot);
    }
    const PlacedRun *run = m_worked.expansion->run(id.toStdString());
    if (run != nullptr && !run->joints.empty()) // Without a line: its one joint.
        openSpot(QString(QStringLiteral("joint|") + said(run->joints.front())));
}

void BuildDesk::refreshOpened()
{
    const QString spot = m_opened.spot();
    if (!spot.isEmpty())
        openSpot(isSpot(spot) ? spot : worstSpot());
}

void BuildDesk::find(const QString &typed)
{
    std::vector<Row> rows;
    if (const auto caliper = caliperTyped(typed); isOpen() && caliper)
        rows = caliperRows(m_worked, *caliper, FoundMost);
    else if (isOpen())
        rows = foundRows(m_worked, typed, FoundMost, m_units);
    std::set<QString> joints;
    for (const Row &row : rows) {
        if (row.cells.value(0).toString() == QStringLiteral("joint"))
            joints.insert(row.cells.value(3).toString());
    }
    m_map.setFound(std::move(joints));
    m_found.showOther(std::move(rows));
}

} // namespace flarestock
