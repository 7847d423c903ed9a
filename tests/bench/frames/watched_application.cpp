// SPDX-License-Identifier: MIT

#include "watched_application.h"

#include <QEvent>
#include <QMetaEnum>
#include <QQuickWindow>
#include <QThread>

#include <ctime>

namespace flarestock {

namespace {

double millisecondsOf(clockid_t clock)
{
    timespec time{};
    clock_gettime(clock, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

} // namespace

WatchedApplication::Clock WatchedApplication::now()
{
    return {millisecondsOf(CLOCK_MONOTONIC), millisecondsOf(CLOCK_THREAD_CPUTIME_ID)};
}

void WatchedApplication::begin()
{
    m_painted = {};
    m_begun = now();
}

void WatchedApplication::end(const QString &what)
{
    const Clock ended = now();
    m_held.push_back({ended.wall - m_begun.wall - m_painted.wall,
                      ended.cpu - m_begun.cpu - m_painted.cpu, m_painted.wall, what});
}

bool WatchedApplication::notify(QObject *receiver, QEvent *event)
{
    if (thread() != QThread::currentThread())
        return QGuiApplication::notify(receiver, event);
    const bool isOutermost = m_depth++ == 0;
    QString what; // The receiver may be gone afterwards.
    if (isOutermost) {
        what = QStringLiteral("%1 %2 %3")
                   .arg(QString::fromLatin1(receiver->metaObject()->className()),
                        receiver->objectName(),
                        QString::fromLatin1(
                            QMetaEnum::fromType<QEvent::Type>().valueToKey(event->type())));
        begin();
    }
    const bool taken = QGuiApplication::notify(receiver, event);
    if (--m_depth == 0 && isOutermost)
        end(what);
    return taken;
}

void WatchedApplication::hold(const char *what, const std::function<void()> &work)
{
    ++m_depth;
    begin();
    work();
    end(QString::fromLatin1(what));
    --m_depth;
}

void WatchedApplication::watch(QQuickWindow &window)
{
    QObject::connect(
        &window, &QQuickWindow::beforeRendering, this, [this] { m_paintingBegun = now(); },
        Qt::DirectConnection);
    QObject::connect(
        &window, &QQuickWindow::afterRendering, this,
        [this] {
            const Clock ended = now();
            m_painted.wall += ended.wall - m_paintingBegun.wall;
            m_painted.cpu += ended.cpu - m_paintingBegun.cpu;
        },
        Qt::DirectConnection);
    QObject::connect(
        &window, &QQuickWindow::frameSwapped, this, [this] { ++m_frames; }, Qt::DirectConnection);
}

} // namespace flarestock
