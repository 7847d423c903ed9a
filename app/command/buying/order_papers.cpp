// SPDX-License-Identifier: MIT

#include "app/command/buying/order_papers.h"

#include "app/buyer/whole_file.h"
#include "model/exchange/papers/order_csv.h"

namespace flarestock {

Result<void> writePapers(const PaperAsked &asked, const Order &order, const OpenShop &)
{
    if (!asked.csv.empty()) {
        if (auto written = writeWhole(asked.csv, orderCsv(order)); !written)
            return written;
    }
    return {};
}

} // namespace flarestock
