// SPDX-License-Identifier: MIT
//
// Screens: the engine with its window, and what it complains about.

#pragma once

#include "app/desk/launch/making.h"

#include <QQmlApplicationEngine>
#include <QStringList>

class QQuickWindow;

namespace flarestock {

class Desk;
class Look;

/// Fonts, style and import path; call after the application is made and before the first engine.
void prepareScreens();

class Screens {
public:
    Screens();
    /// Whether the window is there.
    [[nodiscard]] bool load();
    [[nodiscard]] QQuickWindow *window() const;
    [[nodiscard]] QQmlApplicationEngine &engine() { return m_engine; }
    /// The words of the screens and of what the desk says follow the look's language.
    void follow(Look &look, Desk &desk);
    /// Every warning of the engine so far.
    [[nodiscard]] const QStringList &warnings() const { return m_warnings; }

private:
    QStringList m_warnings;
    Making m_making; ///< Outlives the engine that uses it.
    QQmlApplicationEngine m_engine;
};

} // namespace flarestock
