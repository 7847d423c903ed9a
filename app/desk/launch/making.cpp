// SPDX-License-Identifier: MIT

#include "app/desk/launch/making.h"

namespace flarestock {

Making::Making()
{
    m_next.setObjectName(QStringLiteral("making")); // A bench tells it by this.
    m_next.setInterval(0);
    connect(&m_next, &QTimer::timeout, this, [this] { incubateFor(SliceMs); });
}

void Making::incubatingObjectCountChanged(int count)
{
    if (count == 0)
        m_next.stop();
    else if (!m_next.isActive())
        m_next.start();
}

} // namespace flarestock
