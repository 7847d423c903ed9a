// SPDX-License-Identifier: MIT

#include "app/desk/launch/self_test.h"

#include "app/desk/launch/picture.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFontDatabase>
#include <QJSValue>
#include <QQuickWindow>

#include <cstdio>

namespace flarestock {

namespace {

QStringList heardWarnings;

void hear(QtMsgType type, const QMessageLogContext &, const QString &message)
{
    // A missing runtime folder is the environment's fault and nothing to do with the screens.
    const bool ofEnvironment = message.contains(QStringLiteral("XDG_RUNTIME_DIR"));
    if (type != QtDebugMsg && type != QtInfoMsg && !ofEnvironment)
        heardWarnings.append(message);
    std::fprintf(stderr, "%s\n", qPrintable(message));
}

bool isOneColour(const QImage &image)
{
    const QRgb first = image.pixel(0, 0);
    for (int y = 0; y < image.height(); y += 3) {
        for (int x = 0; x < image.width(); x += 3) {
            if (image.pixel(x, y) != first)
                return false;
        }
    }
    return true;
}

/// Opens each spot of the map, the groupings and a search, as hands would.
void walkThrough(BuildDesk &build)
{
    QString spot = build.map()->step({}, LineMap::First);
    for (QString before; spot != before; spot = build.map()->step(spot, LineMap::On)) {
        build.openSpot(spot);
        before = spot;
        if (build.map()->step(spot, LineMap::On) == spot)
            break;
    }
    build.setByKind(true);
    build.find(QStringLiteral("-6"));
    build.setByKind(false);
    build.find({});
}

} // namespace

void waitForAreas(const Desk &desk)
{
    QElapsedTimer since;
    since.start();
    do
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    while (desk.isLoading() && since.elapsed() < 10'000);
}

void listenToWarnings()
{
    qInstallMessageHandler(hear);
}

QStringList warningsHeard()
{
    return heardWarnings;
}

QStringList selfTest(Screens &screens, Desk &desk, Look &look)
{
    QStringList wrong;
    QQuickWindow &window = *screens.window();
    if (QFontDatabase::families().isEmpty())
        wrong.append(QStringLiteral("no font is installed; install fonts-dejavu-core"));
    if (desk.builds()->count() == 0)
        wrong.append(QStringLiteral("the shop has neither a build nor a template"));
    const bool wasDark = look.isDark();
    for (int row = 0; row < desk.builds()->count(); ++row) {
        const QString key = desk.builds()->cell(row, QStringLiteral("key")).toString();
        if (!desk.openBuild(key)) {
            wrong.append(QString(key + QStringLiteral(": ") + desk.problem()));
            continue;
        }
        look.setDark(row % 2 == 0);
        const QSize size = row % 3 == 2 ? QSize(1024, 640) : QSize(1440, 900);
        if (isOneColour(pictureOf(window, size)))
            wrong.append(QString(key + QStringLiteral(": the screen is empty")));
        walkThrough(*desk.build());
    }
    const int areas = window.property("areaCount").toInt();
    for (int area = 1; area < areas; ++area) { // The first was looked at with each build.
        window.setProperty("area", area);
        for (const QSize size : {QSize(1024, 640), QSize(1440, 900)}) {
            look.setDark(size.width() < 1100);
            waitForAreas(desk);
            if (isOneColour(pictureOf(window, size)))
                wrong.append(QStringLiteral("area %1: the screen is empty").arg(area + 1));
        }
    }
    window.setProperty("area", 0);
    look.setDark(wasDark);
    return wrong + screens.warnings();
}

} // namespace flarestock
