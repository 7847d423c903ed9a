// SPDX-License-Identifier: MIT

#include "app/paper/layout.h"

namespace flarestock {

QVector<PageRows> pagesOf(const Heights &heights)
{
    QVector<PageRows> pages{{0, 0}};
    double left = heights.firstPage;
    const auto count = static_cast<int>(heights.rows.size());
    for (int row = 0; row < count; ++row) {
        const double height = heights.rows[row];
        const bool isLast = row + 1 == count;
        const double needed = isLast ? height + heights.sums : height;
        if (needed > left && pages.back().end > pages.back().first) {
            pages.append({row, row});
            left = heights.otherPage;
        }
        pages.back().end = row + 1;
        left -= height;
    }
    return pages;
}

} // namespace flarestock
