// SPDX-License-Identifier: MIT

#include "app/desk/opened/weighing.h"

#include "app/desk/opened/detail_words.h"
#include "app/desk/words/spoken.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

std::set<QString> shortParts(const WorkedOut &worked)
{
    std::set<QString> numbers;
    for (const PricedLine &line : worked.bill->lines) {
        if (line.shortBy.sign() > 0)
            numbers.insert(said(line.line->part->number));
    }
    return numbers;
}

std::set<QString> openPlaces(const WorkedOut &worked)
{
    std::set<QString> places;
    for (const PlacedJoint &joint : worked.expansion->joints) {
        if (!joint.way)
            places.insert(said(joint.at));
    }
    return places;
}

std::set<QString> stopsOf(const WorkedOut &worked)
{
    std::set<QString> stops;
    for (const Finding &finding : *worked.findings) {
        if (finding.severity == Severity::Stop)
            stops.insert(said(finding.about));
    }
    return stops;
}

/// What is in `then` and not in `now`.
QStringList added(const std::set<QString> &now, const std::set<QString> &then)
{
    QStringList more;
    for (const QString &one : then) {
        if (!now.contains(one))
            more.append(one);
    }
    return more;
}

QString saidDifference(const Money &now, const Money &then)
{
    const Money more{then.amount - now.amount, then.currency};
    if (more.amount.isZero())
        return DetailWords::tr("same total");
    const QString sign = more.amount.sign() > 0 ? QStringLiteral("+") : QString();
    return DetailWords::tr("total %1%2").arg(sign, saidMoney(more));
}

} // namespace

Weighed weighed(const WorkedOut &now, const WorkedOut &then)
{
    const QStringList lacking = added(shortParts(now), shortParts(then));
    const QStringList found = added(shortParts(then), shortParts(now));
    const QStringList open = added(openPlaces(now), openPlaces(then));
    const QStringList stops = added(stopsOf(now), stopsOf(then));
    const QString comma = QStringLiteral(", ");
    QStringList says{saidDifference(now.bill->total, then.bill->total)};
    if (!open.isEmpty())
        says.append(DetailWords::tr("nothing closes the %1").arg(open.join(comma)));
    if (!stops.isEmpty())
        says.append(DetailWords::tr("stop: %1").arg(stops.join(comma)));
    if (!lacking.isEmpty())
        says.append(DetailWords::tr("leaves short: %1").arg(lacking.join(comma)));
    if (!found.isEmpty())
        says.append(DetailWords::tr("no longer short: %1").arg(found.join(comma)));
    return {says.join(QStringLiteral("; ")),
            static_cast<int>(lacking.size() + open.size() + stops.size())};
}

Weighing::Weighing(Opened &opened, QObject *parent) : QObject(parent), m_opened(opened)
{
    m_soon.setSingleShot(true);
    connect(&m_soon, &QTimer::timeout, this, &Weighing::weighNext);
}

void Weighing::begin(const WorkOut &workOut, const BuildPlan &plan, const WorkedOut &now)
{
    m_workOut = workOut;
    m_plan = plan;
    m_now = now;
    m_next = 0;
    ++m_begun;
    m_soon.start(RestMs);
}

void Weighing::stop()
{
    ++m_begun;
    m_soon.stop();
    m_now = {};
}

void Weighing::weighNext()
{
    if (m_errand.isUnderWay()) // Of what was open before.
        return m_soon.start(RestMs);
    const Rows &ways = *m_opened.ways();
    const auto isInUse = [&ways](int row) {
        return ways.cell(row, QStringLiteral("inUse")).toBool();
    };
    while (m_next < ways.count() && isInUse(m_next))
        ++m_next;
    if (m_next >= std::min(ways.count(), OthersMax))
        return stop();
    BuildPlan plan = m_plan;
    plan.picks.insert_or_assign(m_opened.slotName().toStdString(),
                                ways.cell(m_next, QStringLiteral("pick")).toString().toStdString());
    m_errand.run([this, plan, workOut = m_workOut, now = m_now, begun = m_begun]() -> Errand::Back {
        const auto then = workOut(plan);
        Weighed weight = then ? weighed(now, *then) : Weighed{saidProblem(then.error()), 1};
        return [this, begun, weight = std::move(weight)] {
            if (begun != m_begun)
                return;
            m_opened.weigh(m_next, weight);
            ++m_next;
            m_soon.start(0);
        };
    });
}

} // namespace flarestock
