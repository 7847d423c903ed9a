// SPDX-License-Identifier: MIT

#include "app/desk/launch/spare_moment.h"

#include <QCoreApplication>
#include <QEvent>
#include <QQmlEngine>

namespace flarestock {

SpareMoment::SpareMoment(QQmlEngine &engine) : m_holder(engine.newObject())
{
    m_holder.setProperty(QStringLiteral("text"), QString(TextThatStays, u' '));
    m_idle.setObjectName(QStringLiteral("spareMoment")); // A bench tells it by this.
    m_idle.setSingleShot(true);
    m_idle.setInterval(AfterMs);
    m_between.setObjectName(QStringLiteral("betweenKeys"));
    m_between.setSingleShot(true);
    m_between.setInterval(BetweenMs);
    for (QTimer *timer : {&m_idle, &m_between}) {
        connect(timer, &QTimer::timeout, &engine, [this, &engine] {
            m_done = 0;
            engine.collectGarbage();
        });
    }
    QCoreApplication::instance()->installEventFilter(this);
}

bool SpareMoment::eventFilter(QObject *watched, QEvent *event)
{
    switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::KeyRelease:
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::Wheel:
        m_idle.start();
        if (watched->isWindowType() && ++m_done >= 2 * DoneAtMost) // Pressed, and let go.
            m_between.start();
        break;
    default:
        break;
    }
    return QObject::eventFilter(watched, event);
}

} // namespace flarestock
