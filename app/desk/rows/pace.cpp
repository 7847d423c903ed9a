// SPDX-License-Identifier: MIT

#include "app/desk/rows/pace.h"

#include <utility>

namespace flarestock {

Pace::Pace()
{
    m_next.setObjectName(QStringLiteral("pace")); // A bench tells it by this.
    m_next.setSingleShot(true);
    connect(&m_next, &QTimer::timeout, this, &Pace::turn);
}

Pace &Pace::instance()
{
    static Pace pace;
    return pace;
}

Pace *Pace::create(QQmlEngine *, QJSEngine *)
{
    QJSEngine::setObjectOwnership(&instance(), QJSEngine::CppOwnership);
    return &instance();
}

void Pace::work(QObject *whose, Step step)
{
    if (!m_isInSteps) {
        while (step())
            continue;
        return;
    }
    m_waiting.push_back({whose, std::move(step)});
    if (!m_next.isActive())
        m_next.start(0);
}

void Pace::later(QObject *whose, std::function<void()> piece)
{
    work(whose, [piece = std::move(piece)] {
        piece();
        return false;
    });
}

bool Pace::takesFrame()
{
    if (m_frame.isValid() && m_frame.elapsed() < FrameMs)
        return false;
    m_frame.start();
    return true;
}

void Pace::turn()
{
    QElapsedTimer since;
    since.start();
    while (!m_waiting.empty() && since.elapsed() < TurnMs) {
        const Waiting &now = m_waiting.front(); // It stays where it is if a step adds others.
        if (!now.whose || !now.step())
            m_waiting.pop_front();
    }
    if (!m_waiting.empty())
        m_next.start(0);
}

} // namespace flarestock
