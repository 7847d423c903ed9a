// SPDX-License-Identifier: MIT

#include "app/desk/build/opened.h"

namespace flarestock {

void Opened::show(const QString &stop, Detail detail)
{
    m_stop = stop;
    m_pieces.become(std::move(detail.pieces));
    m_ways.become(std::move(detail.ways));
    m_detail = std::move(detail);
    Q_EMIT changed();
}

} // namespace flarestock
