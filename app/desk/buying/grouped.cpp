// SPDX-License-Identifier: MIT

#include "app/desk/buying/grouped.h"

namespace flarestock {

void becomeGrouped(Rows &rows, std::vector<Row> wanted, const QString &section)
{
    const auto names = rows.roleNames();
    const int cell = names.key(section.toLatin1()) - names.key(QByteArrayLiteral("key")) - 1;
    std::vector<Row> staying;
    for (const Row &row : wanted) {
        const int was = rows.rowOf(row.key);
        if (was >= 0 && rows.cell(was, section) == row.cells.at(cell))
            staying.push_back(row);
    }
    rows.become(std::move(staying));
    rows.become(std::move(wanted));
}

} // namespace flarestock
