// SPDX-License-Identifier: MIT

#include "app/desk/launch/picture.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QQuickWindow>

namespace flarestock {

namespace {

/// Layouts settle over a few turns of the event loop.
constexpr int SettleMs = 150;

void settle()
{
    QElapsedTimer since;
    since.start();
    while (since.elapsed() < SettleMs)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

} // namespace

QImage pictureOf(QQuickWindow &window, const QSize &size)
{
    window.resize(size);
    settle();
    return window.grabWindow();
}

Result<void> writePicture(QQuickWindow &window, const QSize &size, const QString &file)
{
    const QImage image = pictureOf(window, size);
    if (image.isNull())
        return problem("the screen", "could not be painted", "Try QT_QUICK_BACKEND=software.");
    if (!image.save(file, "PNG"))
        return problem(file.toStdString(), "cannot be written",
                       "Give a folder that may be written.");
    return {};
}

} // namespace flarestock
