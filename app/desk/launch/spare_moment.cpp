// SPDX-License-Identifier: MIT

#include "app/desk/launch/spare_moment.h"

#include <QCoreApplication>
#include <QEvent>
#include <QQmlEngine>

namespace flarestock {

SpareMoment::SpareMoment(QQmlEngine &engine)
{
    m_idle.setObjectName(QStringLiteral("spareMoment")); // A bench tells it by this.
    m_idle.setSingleShot(true);
    m_idle.setInterval(AfterMs);
    connect(&m_idle, &QTimer::timeout, &engine, [&engine] { engine.collectGarbage(); });
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
        break;
    default:
        break;
    }
    return QObject::eventFilter(watched, event);
}

} // namespace flarestock
