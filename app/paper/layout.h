// SPDX-License-Identifier: MIT
//
// Layout: which rows of a paper stand on which page. The sums stay together, and never alone: the
// last row goes with them.

#pragma once

#include <QVector>

namespace flarestock {

/// Rows from `first` to before `end`; only the last page has the sums.
struct PageRows {
    int first = 0;
    int end = 0;
};

/// Heights in one unit, whatever it is.
struct Heights {
    QVector<double> rows;
    double firstPage = 0; ///< For rows, on the first page.
    double otherPage = 0;
    double sums = 0; ///< Of the sums and what stays with them.
};

/// A row that is higher than a page has one of its own. At least one page.
[[nodiscard]] QVector<PageRows> pagesOf(const Heights &heights);

} // namespace flarestock
