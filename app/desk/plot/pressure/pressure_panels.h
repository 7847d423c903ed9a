// SPDX-License-Identifier: MIT
//
// Pressure panels: where the parts of a pressure line lie on a picture. Suction, pressure and
// return stand side by side, each with its own scale; a run is a column, wider the longer it is,
// but never narrower than its words and a finger need.

#pragma once

#include "app/desk/plot/plot_layout.h"
#include "app/desk/plot/pressure/pressure_line.h"
#include "app/desk/plot/round_scale.h"
#include "app/desk/words/units.h"

namespace flarestock {

struct PressureColumn {
    const PressureStep *step = nullptr;
    double left = 0;
    double right = 0;

    [[nodiscard]] double middle() const { return (left + right) / 2; }
    [[nodiscard]] double x(double share) const { return left + share * (right - left); }
};

struct PressurePanel {
    PressurePart::Side side = PressurePart::Side::Pressure;
    std::vector<PressureColumn> columns; ///< One at least.
    std::vector<PressureLimit> limits;
    double top = 0;
    double bottom = 0;
    double unitPa = 1; ///< One unit of its scale.
    QString unit;      ///< "psi", "bar", "mbar"
    RoundScale scale;

    [[nodiscard]] double left() const { return columns.front().left; }
    [[nodiscard]] double right() const { return columns.back().right; }
    [[nodiscard]] double y(double pa) const { return scale.at(pa / unitPa, bottom, top); }
};

/// Left of each panel, where the figures of its scale stand.
constexpr double PanelGutter = 44;

/// The panels of a line within that space, `high` pixels of which from `top` on are theirs.
struct PanelSpace {
    double width = 0;
    double top = 0;
    double bottom = 0;
};
[[nodiscard]] std::vector<PressurePanel> pressurePanels(const PressureLine &line,
                                                        const PanelSpace &space, Units units);

} // namespace flarestock
