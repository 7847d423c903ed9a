// SPDX-License-Identifier: MIT
//
// Port shape: one end of a part as a bench drawing shows it, made from its words alone: thread or
// none, cone, ring, taper, barb, turning nut; a female in section with its walls hatched.

#pragma once

#include "model/ports/port.h"

#include <QColor>

class QPainter;

namespace flarestock {

struct ShapeInks {
    QColor line;
    QColor hatch; ///< Thread flanks, walls in section, braid.
    QColor paper;
    QColor ring; ///< What seals.
};

/// The diameter by which ports are drawn in proportion, in millimetres: that of its thread, or of
/// its tube. 12 where the tables have none.
[[nodiscard]] double diameterMm(const Port &port);

/// Paints it along +x from a body's face at 0, `radius` being half the diameter on paper. Returns
/// how far it reaches.
double paintPort(QPainter *painter, const Port &port, double radius, const ShapeInks &inks);

} // namespace flarestock
