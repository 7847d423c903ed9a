// SPDX-License-Identifier: MIT

#include "app/desk/opened/opened.h"

#include <utility>

namespace flarestock {

void Opened::show(const QString &spot, Detail detail)
{
    const auto become = std::exchange(m_spot, spot) == spot ? &Rows::become : &Rows::showOther;
    (m_pieces.*become)(std::move(detail.pieces));
    (m_ways.*become)(detail.ways);
    m_detail = std::move(detail);
    Q_EMIT changed();
}

void Opened::weigh(int way, const Weighed &weighed)
{
    QVariantList &cells = m_detail.ways.at(static_cast<std::size_t>(way)).cells;
    const QString own = cells.at(1).toString();
    cells[1] = QString(own + QStringLiteral("; ") + weighed.says);
    cells[3] = weighed.worseBy;
    m_ways.become(m_detail.ways);
}

} // namespace flarestock
