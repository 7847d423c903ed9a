// SPDX-License-Identifier: MIT
//
// Build pictures: what stands in the place of the line map when somebody would rather see where
// the pressure goes, whether the pump carries it, or what the money goes into. They follow the
// build on the desk: each answer and each pick draws the one that is looked at anew.
//
// The flow is worked out away from the window; the picture of before stays until it is there.

#pragma once

#include "app/desk/build/build_desk.h"
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
public:
    enum Picture { Line, Pressure };
    Q_ENUM(Picture)

    /// `build` outlives it.
    explicit BuildPictures(BuildDesk &build, QObject *parent = nullptr);

    /// Which one is looked at, as Picture counts them; the others are not worked out.
    [[nodiscard]] int shown() const { return m_shown; }
    void setShown(int shown);
    /// What is shown is of the build before still.
    [[nodiscard]] bool isWorking() const { return m_errand.isUnderWay(); }
    [[nodiscard]] Plot *pressure() { return &m_pressure; }

Q_SIGNALS:
    void shownChanged();
    void workingChanged();

private:
    struct Worked; ///< A build and its flow.
    void follow();
    void workOut();
    void draw();

    BuildDesk &m_build;
    int m_shown = Line;
    Errand m_errand;
    std::shared_ptr<const Worked> m_worked; ///< What is drawn.
    WorkedOut m_asked;                      ///< Of which the flow was asked for last.
    Plot m_pressure;
};

} // namespace flarestock
