// SPDX-License-Identifier: MIT
//
// Cost picture: the money of the build on the desk by side of the line, by station and by kind; and
// that of all builds of the shop, which are worked out away from the window once somebody looks.

#pragma once

#include "app/desk/plot/cost/all_builds.h"
#include "app/desk/plot/plot.h"
#include "app/desk/shop/errand.h"

#include <memory>

namespace flarestock {

class CostPicture : public QObject {
    Q_OBJECT
public:
    explicit CostPicture(QObject *parent = nullptr);

    /// The build that it shows from now on.
    void show(const WorkedOut &worked, const BuildPlan &plan);
    void clear();
    [[nodiscard]] Plot *plot() { return &m_plot; }
    [[nodiscard]] bool isSumming() const { return m_summing.isUnderWay(); }

Q_SIGNALS:
    void summed();

private:
    enum View { Side, Station, Kind, Builds };
    void draw();
    void sumUp();
    [[nodiscard]] PlotLayout drawn(int view, const PlotSpace &space) const;

    WorkedOut m_worked;
    BuildPlan m_plan;
    Errand m_summing;
    WorkedOut m_summedOf; ///< Of which build on the desk the sums are.
    std::shared_ptr<const std::vector<CostedBuild>> m_builds; ///< Nothing yet: not worked out.
    Plot m_plot;
};

} // namespace flarestock
