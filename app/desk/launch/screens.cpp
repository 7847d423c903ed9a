// SPDX-License-Identifier: MIT

#include "app/desk/launch/screens.h"

#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"

#include <QFont>
#include <QGuiApplication>
#include <QQmlError>
#include <QQuickStyle>
#include <QQuickWindow>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace flarestock {

namespace {

/// Memory that was used and is free again stays with the process: given back to the system and
/// asked for anew, each page of it is a fault, in the midst of a frame.
void keepMemory()
{
#ifdef __GLIBC__
    constexpr int MiB = 1024 * 1024;
    mallopt(M_MMAP_THRESHOLD, 32 * MiB); // The most that it takes.
    mallopt(M_TRIM_THRESHOLD, 128 * MiB);
#endif
}

} // namespace

void prepareScreens()
{
    keepMemory();
    // The engine makes no machine code of its own while somebody waits: each piece that it makes
    // is a change of the process's memory map, which all processors have to hear of.
    if (!qEnvironmentVariableIsSet("QV4_FORCE_INTERPRETER"))
        qputenv("QV4_FORCE_INTERPRETER", "1");
    if (!qEnvironmentVariableIsSet("QT_QUICK_CONTROLS_STYLE"))
        QQuickStyle::setStyle(QStringLiteral("Fusion"));
    // One family and hinting whatever the desktop prefers: figures of equal width, no boxes.
    QGuiApplication::setFont(QFont(QStringLiteral("DejaVu Sans")));
    QQuickWindow::setTextRenderType(QQuickWindow::NativeTextRendering);
}

Screens::Screens()
{
    QObject::connect(&m_engine, &QQmlEngine::warnings, &m_engine,
                     [this](const QList<QQmlError> &errors) {
                         for (const QQmlError &error : errors)
                             m_warnings.append(error.toString());
                     });
    m_engine.setIncubationController(&m_making); // Before a window comes, which else has its own.
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
}

bool Screens::load()
{
    m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Flarestock/Screens/Main.qml")));
    return window() != nullptr;
}

void Screens::follow(Look &look, Desk &desk)
{
    QObject::connect(&look, &Look::languageChanged, &m_engine, [this, &desk] {
        desk.sayAgain();
        m_engine.retranslate();
    });
}

QQuickWindow *Screens::window() const
{
    const auto roots = m_engine.rootObjects();
    return roots.isEmpty() ? nullptr : qobject_cast<QQuickWindow *>(roots.constFirst());
}

} // namespace flarestock
