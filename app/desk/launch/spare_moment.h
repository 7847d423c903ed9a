// SPDX-License-Identifier: MIT
//
// Spare moment: the engine of the screens looks now and then for what nobody needs any more, and
// holds the window as long as two frames (Qt 6.4 does it in one piece). So it is let do that when
// nobody has touched the window for a moment, and not in the midst of a key.

#pragma once

#include <QObject>
#include <QTimer>

class QQmlEngine;

namespace flarestock {

class SpareMoment : public QObject {
    Q_OBJECT
public:
    /// Nobody does anything for so long.
    static constexpr int AfterMs = 700;

    /// Of the application that there is.
    explicit SpareMoment(QQmlEngine &engine);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QTimer m_idle;
};

} // namespace flarestock
