// SPDX-License-Identifier: MIT
//
// Watched application: how long the window's thread is held by each event that it handles, with
// what the painting took of it. The software renderer paints on this thread; where there is a
// graphics card another thread does, so that the two are kept apart.

#pragma once

#include <QGuiApplication>

#include <vector>

class QQuickWindow;

namespace flarestock {

/// One event, or one piece of work that was run as one. Milliseconds.
struct Held {
    double wall = 0;     ///< From its begin to its end, without painting.
    double cpu = 0;      ///< Of the processor, for this thread, without painting.
    double painting = 0; ///< By the software renderer.
    QString what;        ///< Who got which event.
    int press = 0;       ///< After which key of its round.
};

class WatchedApplication : public QGuiApplication {
public:
    using QGuiApplication::QGuiApplication;

    bool notify(QObject *receiver, QEvent *event) override;
    /// Counts the painting of this window apart, and its frames.
    void watch(QQuickWindow &window);
    /// Runs it as if it were one event.
    void hold(const char *what, const std::function<void()> &work);
    /// What was handled since this was asked last.
    [[nodiscard]] std::vector<Held> taken() { return std::exchange(m_held, {}); }
    [[nodiscard]] int frames() const { return m_frames; }

private:
    struct Clock {
        double wall = 0;
        double cpu = 0;
    };
    static Clock now();
    void begin();
    void end(const QString &what);

    std::vector<Held> m_held;
    Clock m_begun;
    Clock m_paintingBegun;
    Clock m_painted; ///< In the event that is being handled.
    int m_depth = 0;
    int m_frames = 0;
};

} // namespace flarestock
