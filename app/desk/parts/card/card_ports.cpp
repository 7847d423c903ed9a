// SPDX-License-Identifier: MIT

#include "app/desk/parts/card/card_ports.h"

#include "app/desk/stock/card/part_card.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

namespace flarestock {

QStringList cardPortCells()
{
    return {QStringLiteral("name"), QStringLiteral("port"), QStringLiteral("detail"),
            QStringLiteral("fits"), QStringLiteral("says")};
}

std::vector<Row> cardPortRows(const Part &card, const PortsOfShop &shop)
{
    std::vector<Row> rows = portRows(card); // name port thread says
    for (std::size_t at = 0; at < rows.size(); ++at) {
        const QString fits = saidFitting(shop.fitting(card.ports[at].port, card.number));
        const QString says = rows[at].cells.takeLast().toString();
        rows[at].cells.append(fits);
        rows[at].cells.append(QCoreApplication::translate("CardPorts", "%1; %2").arg(says, fits));
    }
    return rows;
}

} // namespace flarestock
