// SPDX-License-Identifier: MIT
//
// Making: a screen that is made beside what goes on is made in short slices. Qt's own slices (6.4)
// are up to 10 ms long, most of a frame.

#pragma once

#include <QObject>
#include <QQmlIncubationController>
#include <QTimer>

namespace flarestock {

class Making : public QObject, public QQmlIncubationController {
    Q_OBJECT
public:
    /// A slice goes on for so long, and until what is under way by then is made: one component's
    /// objects are, in one piece.
    static constexpr int SliceMs = 1;

    Making();

protected:
    void incubatingObjectCountChanged(int count) override;

private:
    QTimer m_next;
};

} // namespace flarestock
