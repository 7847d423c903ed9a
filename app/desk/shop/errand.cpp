// SPDX-License-Identifier: MIT

#include "app/desk/shop/errand.h"

#include <QDeadlineTimer>
#include <QThread>

#include <cassert>
#include <utility>

#ifdef __linux__
#include <sys/resource.h>
#include <unistd.h>
#endif

namespace flarestock {

namespace {

/// The window's thread goes first wherever there are not processors enough for both. Linux has a
/// niceness for each thread, and no priority that QThread could set.
void goBehindTheWindow()
{
#ifdef __linux__
    constexpr int Niceness = 10;
    (void)setpriority(PRIO_PROCESS, static_cast<id_t>(gettid()), Niceness);
#endif
}

} // namespace

Errand::~Errand()
{
    if (m_worker != nullptr)
        m_worker->wait();
}

void Errand::run(Work work)
{
    assert(m_worker == nullptr);
    m_back = std::make_shared<Back>();
    m_worker = QThread::create([done = std::move(work), back = m_back] {
        goBehindTheWindow();
        *back = done();
    });
    m_worker->setParent(this);
    connect(m_worker, &QThread::finished, this, [this, worker = m_worker] {
        if (m_worker == worker) // Else it was waited for.
            end();
    });
    m_worker->start();
}

void Errand::finish(int milliseconds)
{
    if (m_worker == nullptr)
        return;
    const QDeadlineTimer until =
        milliseconds < 0 ? QDeadlineTimer(QDeadlineTimer::Forever) : QDeadlineTimer(milliseconds);
    if (m_worker->wait(until))
        end();
}

void Errand::end()
{
    m_worker->deleteLater();
    m_worker = nullptr;
    const auto back = std::exchange(m_back, nullptr);
    (*back)(); // It may run the next one.
}

} // namespace flarestock
