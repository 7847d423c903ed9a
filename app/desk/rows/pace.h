// SPDX-License-Identifier: MIT
//
// Pace: where somebody sits at the window, what is new on the screen is made some at a time, so
// that a key is not kept waiting by a hundred lines made in one piece. Where nobody does, in a test
// or for a picture, all is made at once.

#pragma once

#include <QElapsedTimer>
#include <QJSEngine>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <deque>
#include <functional>

class QQmlEngine;

namespace flarestock {

class Pace : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool inSteps READ isInSteps CONSTANT)
public:
    /// So long all steps of one turn of the event loop take together, and the one more that is
    /// under way by then.
    static constexpr int TurnMs = 1;

    /// So long one frame is whose it is: one of a screen of 60 or 75 a second.
    static constexpr int FrameMs = 13;

    /// Does one piece of the work; whether there is more.
    using Step = std::function<bool()>;

    /// The one that there is.
    static Pace &instance();
    static Pace *create(QQmlEngine *engine, QJSEngine *);

    [[nodiscard]] bool isInSteps() const { return m_isInSteps; }
    /// Before the screens are made.
    void setInSteps(bool inSteps) { m_isInSteps = inSteps; }
    /// Does the work from the next turn on, after what waits already; not once `whose` is gone. All
    /// of it now where nothing goes in steps.
    void work(QObject *whose, Step step);
    /// Work that is one piece.
    void later(QObject *whose, std::function<void()> piece);
    /// Whether nobody else has had this frame for lines of his own: who is told so makes some.
    Q_INVOKABLE bool takesFrame();
    [[nodiscard]] bool isBusy() const { return !m_waiting.empty(); }

private:
    struct Waiting {
        QPointer<QObject> whose;
        Step step;
    };
    Pace();
    void turn();

    bool m_isInSteps = false;
    std::deque<Waiting> m_waiting;
    QElapsedTimer m_frame; ///< Since one was taken.
    QTimer m_next;
};

} // namespace flarestock
