// SPDX-License-Identifier: MIT
//
// Making: a screen that is made beside what goes on is made in slices as short as the Pace has for
// a turn. Qt's own slices (6.4) are up to 10 ms long, most of a frame.

#pragma once

#include <QObject>
#include <QQmlIncubationController>
#include <QTimer>

namespace flarestock {

class Making : public QObject, public QQmlIncubationController {
    Q_OBJECT
public:
    Making();

protected:
    void incubatingObjectCountChanged(int count) override;

private:
    QTimer m_next;
};

} // namespace flarestock
