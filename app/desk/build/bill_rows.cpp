// SPDX-License-Identifier: MIT

#include "app/desk/build/bill_rows.h"

#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

struct BillWords {
    Q_DECLARE_TR_FUNCTIONS(Bill)
};

QString groupOf(const WorkedOut &worked, const BillLine &line, Grouping grouping)
{
    if (grouping == Grouping::Kind)
        return said(text(line.part->kind));
    if (line.stations.empty())
        return BillWords::tr("the whole build");
    const PlacedStation *station = worked.expansion->station(line.stations.front());
    return said(station != nullptr && station->station != nullptr ? station->station->title
                                                                  : line.stations.front());
}

QString whyOf(const BillLine &line)
{
    QStringList reasons;
    for (const std::string &why : line.why)
        reasons.append(said(why));
    if (line.cuts.size() > 1)
        reasons.append(
            BillWords::tr("cut in %n pieces", nullptr, static_cast<int>(line.cuts.size())));
    return reasons.join(QStringLiteral(", "));
}

QString eachOf(const PricedLine &line)
{
    if (!line.unitCost)
        return BillWords::tr("no price");
    // Four decimals are enough to read; the cost of the line is reckoned from the exact one.
    const Decimal each = line.unitCost->toDecimal(4, Rounding::HalfEven);
    return (Rational(each) == *line.unitCost ? QString() : QStringLiteral("≈ ")) +
           localised(said(each.text()));
}

QString costOf(const PricedLine &line)
{
    if (!line.cost)
        return line.otherCurrency ? BillWords::tr("other currency") : BillWords::tr("no price");
    return saidNumber(line.cost->amount);
}

Row ledgerRow(const PricedLine &priced, const QString &group)
{
    const BillLine &line = *priced.line;
    const Unit unit = line.need.unit;
    const bool isShort = priced.shortBy.sign() > 0;
    const QString number = said(line.part->number);
    const QString what = said(line.part->description);
    const QString why = whyOf(line);
    const QString need = saidQuantity(line.need);
    const QString free = saidQuantity({priced.free, unit});
    const QString lacking = isShort ? saidQuantity({priced.shortBy, unit}) : QString();
    const QStringList says{number,
                           what,
                           BillWords::tr("need %1").arg(need),
                           BillWords::tr("free %1").arg(free),
                           isShort ? BillWords::tr("short %1").arg(lacking)
                                   : BillWords::tr("not short"),
                           BillWords::tr("each %1").arg(eachOf(priced)),
                           BillWords::tr("cost %1").arg(costOf(priced)),
                           why};
    return {number,
            {number, what, why, need, free, lacking, isShort, eachOf(priced), costOf(priced), group,
             !line.consumed, line.stations.empty() ? QString() : said(line.stations.front()),
             says.join(QStringLiteral(", "))}};
}

} // namespace

QStringList billCells()
{
    return {QStringLiteral("part"),    QStringLiteral("what"), QStringLiteral("why"),
            QStringLiteral("need"),    QStringLiteral("free"), QStringLiteral("shortBy"),
            QStringLiteral("isShort"), QStringLiteral("each"), QStringLiteral("cost"),
            QStringLiteral("head"),    QStringLiteral("tool"), QStringLiteral("at"),
            QStringLiteral("says")};
}

std::vector<Row> billRows(const WorkedOut &worked, Grouping grouping)
{
    std::map<QString, std::size_t> orderOfGroup;
    std::vector<std::pair<std::size_t, Row>> ordered;
    for (const PricedLine &line : worked.bill->lines) {
        const QString group = groupOf(worked, *line.line, grouping);
        const auto order = orderOfGroup.emplace(group, orderOfGroup.size()).first->second;
        ordered.emplace_back(order, ledgerRow(line, group));
    }
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    std::vector<Row> rows;
    rows.reserve(ordered.size());
    // The cell "head" is the group where it begins and empty below: a view's own sections are not
    // drawn anew where rows change under them.
    const qsizetype head = billCells().indexOf(QStringLiteral("head"));
    QString before;
    for (auto &[order, row] : ordered) {
        const QString group = row.cells.at(head).toString();
        if (group == before)
            row.cells[head] = QString();
        before = group;
        rows.push_back(std::move(row));
    }
    return rows;
}

int shortLines(const PricedBill &bill)
{
    return static_cast<int>(
        std::count_if(bill.lines.begin(), bill.lines.end(),
                      [](const PricedLine &line) { return line.shortBy.sign() > 0; }));
}

int changedLines(const PricedBill &before, const PricedBill &after)
{
    std::map<std::string, const PricedLine *> was;
    for (const PricedLine &line : before.lines)
        was.emplace(line.line->part->number, &line);
    int changed = 0;
    for (const PricedLine &line : after.lines) {
        const auto found = was.find(line.line->part->number);
        if (found == was.end()) {
            ++changed;
            continue;
        }
        const PricedLine &old = *found->second;
        const bool same =
            old.line->need == line.line->need && old.free == line.free && old.cost == line.cost;
        changed += same ? 0 : 1;
        was.erase(found);
    }
    return changed + static_cast<int>(was.size());
}

} // namespace flarestock
