// SPDX-License-Identifier: MIT
//
// Map paper: the line map of a build on a sheet that lies across, in strokes and letters and not in
// dots, so that it is sharp at any size. The same layout as on the screen, for the width that fills
// the sheet best; light, whatever the screen is.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/words/units.h"

#include <QByteArray>
#include <QPageSize>
#include <QString>

namespace flarestock {

struct MapPaperWords {
    QString title; ///< Of the build.
    QString about; ///< Car, date, template.
    QString made;  ///< The day, as a person writes it.
    QString foot;
    QPageSize size{QPageSize::A4};
    Units units = Units::Metric;
};

/// A PDF of one page. Needs a QGuiApplication; may be called from any thread.
[[nodiscard]] QByteArray mapPdf(const WorkedOut &worked, const MapPaperWords &words);

} // namespace flarestock
