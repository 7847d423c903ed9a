// SPDX-License-Identifier: MIT
//
// Spare moment: the engine of the screens looks now and then for what nobody needs any more, and
// holds the window for half a frame and more (Qt 6.4 does it in one piece). So it is let do that
// when nobody has touched the window for a moment; of a person who goes on and on (an arrow held
// down), between two keys, before the engine would do it by itself in the midst of one. By itself
// it does it for each 128 KiB of text that it has read: a list changed five times. Of a text of
// its own that stays it takes the measure, and lets twice as much go by.

#pragma once

#include <QJSValue>
#include <QObject>
#include <QTimer>

class QQmlEngine;

namespace flarestock {

class SpareMoment : public QObject {
    Q_OBJECT
public:
    /// Nobody does anything for so long.
    static constexpr int AfterMs = 700;
    /// So many keys, clicks and turns of a wheel without a pause.
    static constexpr int DoneAtMost = 40;
    /// After a key, when its frame is drawn; a key that is held comes again after 30 ms.
    static constexpr int BetweenMs = 20;
    /// Characters of the text that stays: 4 MiB.
    static constexpr int TextThatStays = 2 * 1024 * 1024;

    /// Of the application that there is.
    explicit SpareMoment(QQmlEngine &engine);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QJSValue m_holder; ///< Of the text that stays.
    QTimer m_idle;
    QTimer m_between;
    int m_done = 0; ///< Since the engine was last let do it.
};

} // namespace flarestock
