// SPDX-License-Identifier: MIT

#include "app/desk/buying/box/box_kept.h"

#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

/// "EP-460 1": what is to come in a row.
QString dueIn(const Tick &tick)
{
    return said(tick.part->number + ' ' + std::to_string(tick.count));
}

} // namespace

QVariantMap keptOfBox(const BoxSaid &box)
{
    QVariantList rows;
    bool isSaid = !box.wrong.empty() || !box.document.isEmpty();
    for (const Tick &tick : box.ticks.all()) {
        isSaid = isSaid || tick.came != 0 || !tick.mark.empty();
        rows.append(
            QStringList{dueIn(tick), QString::number(tick.came), said(tick.mark), said(tick.to)});
    }
    if (!isSaid)
        return {};
    QVariantList wrong;
    for (const Trouble &one : box.wrong)
        wrong.append(
            QStringList{said(text(one.fault)), said(one.part), said(one.quantity), said(one.came)});
    return {{QStringLiteral("rows"), rows},
            {QStringLiteral("wrong"), wrong},
            {QStringLiteral("document"), box.document}};
}

void putBackInBox(const QVariantMap &kept, const BoxSaid &box)
{
    const auto cellsOf = [&kept](const char *key) {
        std::vector<QStringList> rows;
        for (const QVariant &one : kept.value(QString::fromLatin1(key)).toList()) {
            if (one.toStringList().size() == 4)
                rows.push_back(one.toStringList());
        }
        return rows;
    };
    const std::vector<QStringList> rows = cellsOf("rows");
    const bool isSame = std::equal(
        rows.begin(), rows.end(), box.ticks.all().begin(), box.ticks.all().end(),
        [](const QStringList &row, const Tick &tick) { return row.at(0) == dueIn(tick); });
    if (!isSame)
        return;
    for (std::size_t at = 0; at < rows.size(); ++at) {
        Tick &tick = box.ticks.at(at);
        tick.came = std::max<std::int64_t>(0, rows[at].at(1).toLongLong());
        tick.mark = rows[at].at(2).toStdString();
        tick.to = rows[at].at(3).toStdString();
    }
    for (const QStringList &one : cellsOf("wrong")) {
        if (const auto fault = parseClaimFault(one.at(0).toStdString()))
            box.wrong.push_back({*fault, one.at(1).toStdString(), one.at(2).toStdString(),
                                 one.at(3).toStdString()});
    }
    box.document = kept.value(QStringLiteral("document")).toString();
}

} // namespace flarestock
