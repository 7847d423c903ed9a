// SPDX-License-Identifier: MIT
//
// Pictures of a sheet that lies over the screen: light and dark, large and small, and no word of it
// cut short. They are written beside the others, for whoever wants to look.

#pragma once

#include "app/desk/launch/picture.h"
#include "app/desk/shop/look.h"
#include "seen.h"

#include <QDir>
#include <QTest>

namespace flarestock {

inline void pictureOfSheet(QQuickWindow &window, Look &look, const char *name)
{
    QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
    for (const bool dark : {false, true}) {
        look.setDark(dark);
        const QSize size = dark ? QSize(1024, 640) : QSize(1440, 900);
        const QImage image = pictureOf(window, size);
        QVERIFY(image.save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/%1-%2.png")
                               .arg(QString::fromLatin1(name), dark ? QStringLiteral("dark-small")
                                                                    : QStringLiteral("light"))));
        for (const QQuickItem *one : allSeen(window)) {
            bool ofScreen = false; // What lies under the sheet has a test of its own.
            for (const QQuickItem *above = one->parentItem(); above; above = above->parentItem())
                ofScreen = ofScreen || above->objectName() == QStringLiteral("billList") ||
                           above->objectName() == QStringLiteral("findingList") ||
                           above->objectName() == QStringLiteral("lineMap") ||
                           above->objectName() == QStringLiteral("abreastList");
            if (!ofScreen)
                QVERIFY2(!one->property("truncated").toBool(),
                         qPrintable(one->property("text").toString()));
        }
    }
    look.setDark(false);
    (void)pictureOf(window, QSize(1440, 900));
}

} // namespace flarestock
