// SPDX-License-Identifier: MIT
//
// Build pictures: what stands in the place of the line map when somebody would rather see where
// the pressure goes, whether the pump carries it, or what the money goes into. They follow the
// build on the desk: each answer and each pick draws the one that is looked at anew.
//
// The flow is worked out away from the window; the picture of before stays until it is there.

#pragma once

#include "app/desk/build/build_desk.h"
#include "app/desk/plot/cost/cost_picture.h"
#include "app/desk/plot/plot.h"
#include "app/desk/shop/errand.h"

#include <memory>

namespace flarestock {

class BuildPictures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(int shown READ shown WRITE setShown NOTIFY shownChanged)
    Q_PROPERTY(bool isWorking READ isWorking NOTIFY workingChanged)
    Q_PROPERTY(flarestock::Plot *pressure READ pressure CONSTANT)
    Q_PROPERTY(flarestock::Plot *pump READ pump CONSTANT)
    Q_PROPERTY(flarestock::Plot *cost READ cost CONSTANT)
public:
    enum Picture { Line, Pressure, Pump, Cost };
    Q_ENUM(Picture)

    /// `build` outlives it.
    explicit BuildPictures(BuildDesk &build, QObject *parent = nullptr);

    /// Which one is looked at, as Picture counts them; the others are not worked out.
    [[nodiscard]] int shown() const { return m_shown; }
    void setShown(int shown);
    /// What is shown is of the build before still.
    [[nodiscard]] bool isWorking() const { return m_errand.isUnderWay() || m_cost.isSumming(); }
    [[nodiscard]] Plot *pressure() { return &m_pressure; }
    [[nodiscard]] Plot *pump() { return &m_pump; }
    [[nodiscard]] Plot *cost() { return m_cost.plot(); }

Q_SIGNALS:
    void shownChanged();
    void workingChanged();

private:
    struct Worked; ///< A build and its flow.
    void follow();
    void workOut();
    void draw();
    void drawPressure();
    void drawPump();

    BuildDesk &m_build;
    int m_shown = Line;
    Errand m_errand;
    std::shared_ptr<const Worked> m_worked; ///< What is drawn.
    WorkedOut m_asked;                      ///< Of which the flow was asked for last.
    Plot m_pressure;
    Plot m_pump;
    CostPicture m_cost;
};

} // namespace flarestock
