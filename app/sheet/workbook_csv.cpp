// SPDX-License-Identifier: MIT

#include "app/sheet/workbook_csv.h"

#include "model/exchange/papers/order_csv.h"

namespace flarestock {

std::string csvOf(const Workbook &sheet)
{
    std::string all;
    for (std::size_t at = 0; at < sheet.columns.size(); ++at)
        all += (at == 0 ? "" : ",") + csvCell(sheet.columns[at].title);
    all += "\r\n";
    for (const auto &row : sheet.rows) {
        for (std::size_t at = 0; at < row.size(); ++at) {
            const bool isText = sheet.columns[at].kind == WorkbookColumn::Kind::Text;
            all += (at == 0 ? "" : ",") + (isText ? csvCell(row[at]) : row[at]);
        }
        all += "\r\n";
    }
    return all;
}

} // namespace flarestock
