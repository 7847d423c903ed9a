// SPDX-License-Identifier: MIT

#include "app/desk/plot/cost/cost_picture.h"

#include "app/desk/language/sentences.h"
#include "app/desk/plot/cost/cost_plot.h"
#include "app/desk/plot/flow_shown.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// "fuel 9,120.10, oil 812.50": what each kind of system comes to, in the order of the builds.
QString bySystem(const std::vector<CostedBuild> &builds)
{
    std::vector<std::pair<std::string, Decimal>> sums;
    for (const CostedBuild &build : builds) {
        auto sum = std::find_if(sums.begin(), sums.end(),
                                [&build](const auto &one) { return one.first == build.system; });
        if (sum == sums.end())
            sum = sums.insert(sums.end(), {build.system, Decimal()});
        sum->second += build.bar.all();
    }
    QStringList words;
    for (const auto &[system, sum] : sums)
        words.append(QString(inWords(system) + u' ' + saidNumber(sum)));
    return words.join(QStringLiteral(", "));
}

} // namespace

CostPicture::CostPicture(QObject *parent) : QObject(parent)
{
    connect(&m_plot, &Plot::drawn, this, [this] {
        if (m_plot.view() == Builds)
            sumUp();
    });
}

void CostPicture::show(const WorkedOut &worked, const BuildPlan &plan)
{
    m_worked = worked;
    m_plan = plan;
    draw();
}

void CostPicture::clear()
{
    m_worked = {};
    m_builds.reset();
    m_plot.clear();
}

void CostPicture::draw()
{
    QStringList views{tr("by side"), tr("by station"), tr("by kind")};
    if (m_worked.workshop != nullptr)
        views.append(tr("all builds"));
    m_plot.show(views, [this](int view, const PlotSpace &space) { return drawn(view, space); });
}

PlotLayout CostPicture::drawn(int view, const PlotSpace &space) const
{
    CostShown shown;
    shown.currency = said(m_worked.bill->total.currency.code());
    if (view != Builds) {
        shown.title = tr("What the money goes into");
        shown.bars = view == Side
                         ? costBySide(m_worked)
                         : costBy(m_worked, view == Kind ? Grouping::Kind : Grouping::Station);
        shown.says = costSays(shown.bars, shown.currency);
        return costPlot(shown, space);
    }
    shown.title = tr("What the builds come to, the earliest served first");
    if (!m_builds) {
        PlotLayout plot;
        plot.space = space;
        plot.title = shown.title;
        plot.whyNone = tr("The builds are being worked out …");
        return plot;
    }
    for (const CostedBuild &build : *m_builds)
        shown.bars.push_back(build.bar);
    shown.says =
        costSays(shown.bars, shown.currency) + QString(u' ') + asSentences({bySystem(*m_builds)});
    return costPlot(shown, space);
}

void CostPicture::sumUp()
{
    if (m_summing.isUnderWay() || m_worked.workshop == nullptr ||
        (m_builds && m_summedOf.expansion == m_worked.expansion))
        return;
    m_summedOf = m_worked;
    m_summing.run([this, worked = m_worked, plan = m_plan]() -> Errand::Back {
        auto builds = std::make_shared<const std::vector<CostedBuild>>(costOfBuilds(worked, plan));
        return [this, builds] {
            m_builds = builds;
            if (m_worked.expansion != nullptr)
                draw(); // It looks again whether the build is another by then.
            Q_EMIT summed();
        };
    });
}

} // namespace flarestock
