// SPDX-License-Identifier: MIT
//
// Labels: one a page, each as large as the label, with a code that a scanner reads and the same in
// words. The code is Code 128 where that fits with bars that print sharp, else QR (ISO/IEC 18004).
//
//   {"labels":[{"code":"EL-10=B7","lines":["EL-10","lot B7","element, 10 micron"]}],
//    "width":50,"height":25,"made":"2026-11-28"}                                 (mm)

#pragma once

#include "model/exact/problem.h"

#include <QByteArray>
#include <QJsonObject>
#include <QString>
#include <QStringList>
#include <QVector>

namespace flarestock {

struct LabelSheet {
    struct Label {
        QString code;
        QStringList lines; ///< The first is larger, and never cut off.
    };
    double width = 0; ///< mm
    double height = 0;
    QString made; ///< "2026-11-28"
    QVector<Label> labels;

    /// Problem: no label, no day, no size.
    [[nodiscard]] static Result<LabelSheet> read(const QJsonObject &document);
};

/// Needs a QGuiApplication, and fonts. Problem: no code of that text fits on a label of that size.
[[nodiscard]] Result<QByteArray> pdfOf(const LabelSheet &sheet);

} // namespace flarestock
