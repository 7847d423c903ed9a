// SPDX-License-Identifier: MIT

#include "app/buyer/order_paper.h"

#include "model/buying/totals.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

namespace flarestock {

namespace {

QString said(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QJsonArray texts(const std::vector<std::string> &all)
{
    QJsonArray array;
    for (const std::string &one : all)
        array.append(said(one));
    return array;
}

QJsonArray pair(const QString &name, const std::string &text)
{
    return {name, said(text)};
}

QJsonObject column(const QString &title, double width, bool right = false)
{
    return {{QStringLiteral("title"), title},
            {QStringLiteral("width"), width},
            {QStringLiteral("right"), right}};
}

/// At least the currency's digits, more where the price has them.
std::string priceText(const Decimal &price, const Currency &currency)
{
    const Decimal stripped = price.stripped();
    return stripped.scale() >= currency.minorDigits()
               ? stripped.text()
               : price.rescaled(currency.minorDigits(), Rounding::HalfEven).text();
}

/// "12 in", or "12" of pieces.
std::string quantityText(const OrderLine &line)
{
    const std::string amount = line.quantity.stripped().text();
    return line.unit == Unit::Each ? amount : amount + ' ' + std::string(text(line.unit));
}

QJsonArray rowsOf(const Order &order, const OrderTotals &totals)
{
    QJsonArray rows;
    for (std::size_t at = 0; at < order.lines.size(); ++at) {
        const OrderLine &line = order.lines[at];
        rows.append(QJsonArray{
            QString::number(at + 1), said(line.supplierNumber),
            said(line.description + "\nours: " + line.part), said(quantityText(line)),
            said(priceText(line.priceEach, order.currency)), said(totals.lines[at].goods.text())});
    }
    return rows;
}

QJsonArray sumsOf(const Order &order, const Amounts &all)
{
    QJsonArray sums{pair(QStringLiteral("Goods"), all.goods.text())};
    if (!all.discount.isZero())
        sums.append(pair(QStringLiteral("Discount"), (-all.discount).text()));
    if (!all.freight.isZero())
        sums.append(pair(QStringLiteral("Freight"), all.freight.text()));
    if (!order.tax.percent.isZero())
        sums.append(
            pair(said("Tax " + order.tax.percent.stripped().text() + " %"), all.tax.text()));
    sums.append(pair(said("Total " + std::string(order.currency.code())), all.total().text()));
    return sums;
}

std::vector<std::string> addressOf(const Order &order, const Catalogue &catalogue)
{
    for (const Supplier &supplier : catalogue.suppliers()) {
        if (supplier.id != order.supplier)
            continue;
        std::vector<std::string> lines{supplier.name};
        lines.insert(lines.end(), supplier.address.begin(), supplier.address.end());
        return lines;
    }
    return {order.supplier};
}

} // namespace

Result<Letterhead> letterheadOf(const ShopFile &file)
{
    const auto documents = file.documents();
    if (!documents)
        return tl::unexpected(documents.error());
    const auto found = documents->find("letterhead.toml");
    if (found == documents->end())
        return Letterhead{file.settings().title, {}, {}};
    return readLetterhead(found->second, "letterhead.toml");
}

QByteArray orderPaper(const Order &order, const Catalogue &catalogue, const Letterhead &from,
                      const std::string &size)
{
    const OrderTotals totals = totalsOf(order);
    std::vector<std::string> sender{from.name};
    sender.insert(sender.end(), from.lines.begin(), from.lines.end());
    QJsonArray facts{pair(QStringLiteral("Date"), order.day)};
    if (!order.due.empty())
        facts.append(pair(QStringLiteral("Wanted by"), order.due));
    facts.append(pair(QStringLiteral("Currency"), std::string(order.currency.code())));
    const bool isDraft = order.state == OrderState::Draft;
    const QJsonObject paper{
        {QStringLiteral("paper"), said(size)},
        {QStringLiteral("title"), isDraft ? QStringLiteral("Draft of order")
                                  : order.state == OrderState::Cancelled
                                      ? QStringLiteral("Cancelled order")
                                      : QStringLiteral("Order")},
        {QStringLiteral("number"), said(order.number)},
        {QStringLiteral("made"), said(order.day)},
        {QStringLiteral("from"), texts(sender)},
        {QStringLiteral("to"), texts(addressOf(order, catalogue))},
        {QStringLiteral("facts"), facts},
        {QStringLiteral("columns"),
         QJsonArray{
             column(QStringLiteral("#"), 5, true), column(QStringLiteral("Your number"), 20),
             column(QStringLiteral("What"), 39), column(QStringLiteral("Quantity"), 12, true),
             column(QStringLiteral("Each"), 12, true), column(QStringLiteral("Amount"), 14, true)}},
        {QStringLiteral("rows"), rowsOf(order, totals)},
        {QStringLiteral("sums"), sumsOf(order, totals.all)},
        {QStringLiteral("note"), said(order.note)},
        {QStringLiteral("foot"), said(from.foot)}};
    return QJsonDocument(paper).toJson(QJsonDocument::Compact);
}

Result<QByteArray> printed(const QByteArray &paper)
{
    const QString program =
        QCoreApplication::applicationDirPath() + QStringLiteral("/flarestock-paper");
    QProcess process;
    process.start(program, QStringList());
    if (!process.waitForStarted())
        return problem("flarestock-paper", "does not lie beside this program, or cannot be started",
                       "Install it again.");
    process.write(paper);
    process.closeWriteChannel();
    const bool ended = process.waitForFinished(60'000);
    if (!ended || process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0)
        return problem("the paper",
                       "was not made: " + process.readAllStandardError().trimmed().toStdString(),
                       "Correct that, then ask for it again.");
    return process.readAllStandardOutput();
}

} // namespace flarestock
