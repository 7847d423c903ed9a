// SPDX-License-Identifier: MIT

#include "app/command/buying/order_papers.h"

#include "app/buyer/order_paper.h"
#include "app/buyer/whole_file.h"
#include "app/sheet/order_rows.h"
#include "model/exchange/papers/order_csv.h"

namespace flarestock {

namespace {

Result<void> writePdf(const PaperAsked &asked, const Order &order, const OpenShop &shop)
{
    const auto from = letterheadOf(shop.file);
    if (!from)
        return tl::unexpected(from.error());
    const auto pdf = printed(orderPaper(order, shop.workshop->catalogue, *from, asked.paper));
    if (!pdf)
        return tl::unexpected(pdf.error());
    return writeWhole(asked.pdf, {pdf->constData(), static_cast<std::size_t>(pdf->size())});
}

} // namespace

Result<void> writePapers(const PaperAsked &asked, const Order &order, const OpenShop &shop)
{
    if (asked.paper != "A4" && asked.paper != "Letter")
        return problem("the paper " + asked.paper, "is no size", "Say A4 or Letter.");
    if (!asked.pdf.empty()) {
        if (auto written = writePdf(asked, order, shop); !written)
            return written;
    }
    if (!asked.csv.empty()) {
        if (auto written = writeWhole(asked.csv, orderCsv(order)); !written)
            return written;
    }
    if (!asked.xlsx.empty()) {
        const auto bytes = xlsxOf(orderRows(order));
        return bytes ? writeWhole(asked.xlsx, *bytes) : tl::unexpected(bytes.error());
    }
    return {};
}

} // namespace flarestock
