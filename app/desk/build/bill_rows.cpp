// SPDX-License-Identifier: MIT

#include "app/desk/build/bill_rows.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

struct BillWords {
    Q_DECLARE_TR_FUNCTIONS(Bill)
};

/// Of what is cut a reason ends with its length: "front cylinder to tee, 2 ft 6 in".
QString saidReason(const std::string &why, const Part &part, Units units)
{
    const auto at = isLength(part.unit) ? why.rfind(", ") : std::string::npos;
    if (at == std::string::npos)
        return inWords(why);
    const auto length = Quantity::parse(std::string_view(why).substr(at + 2));
    if (!length || !isLength(length->unit))
        return inWords(why);
    return QStringList{inWords(why.substr(0, at)), saidAmount(*length, units)}.join(
        QStringLiteral(", "));
}

QString whyOf(const BillLine &line, Units units)
{
    QStringList reasons;
    for (const std::string &why : line.why)
        reasons.append(saidReason(why, *line.part, units));
    if (line.cuts.size() > 1)
        reasons.append(
            BillWords::tr("cut in %n pieces", nullptr, static_cast<int>(line.cuts.size())));
    return reasons.join(QStringLiteral(", "));
}

QString eachOf(const PricedLine &line, Units units)
{
    if (!line.unitCost)
        return BillWords::tr("no price");
    const Unit unit = line.line->need.unit;
    const Rational exact = pricePer(*line.unitCost, unit, units);
    // Four decimals are enough to read; the cost of the line is reckoned from the exact one.
    const Decimal each = exact.toDecimal(4, Rounding::HalfEven);
    return QStringList{(Rational(each) == exact ? QString() : QStringLiteral("≈ ")) +
                           localised(said(each.text())),
                       saidPriceUnit(unit, units)}
        .join(u' ')
        .trimmed();
}

QString costOf(const PricedLine &line)
{
    if (!line.cost)
        return line.otherCurrency ? BillWords::tr("other currency") : BillWords::tr("no price");
    return saidNumber(line.cost->amount);
}

/// Where the pieces of the line lie; all that is free is here where nobody has said.
Lying lyingAt(const WorkedOut &worked, std::size_t line)
{
    if (worked.lying != nullptr && line < worked.lying->size())
        return worked.lying->at(line);
    return {{}, worked.bill->lines.at(line).free, {}, {}};
}

/// The figures of one line as they are read.
struct Figures {
    QString need;
    QString here;
    QString trailer;
    QString way;
    QString got;
    QString lacking;
};

Figures figuresOf(const PricedLine &priced, const Lying &lying, Units units)
{
    const Unit unit = priced.line->need.unit;
    const auto some = [unit, units](const Decimal &amount) {
        return amount.sign() > 0 ? saidAmount({amount, unit}, units) : QString();
    };
    return {saidAmount(priced.line->need, units),
            saidAmount({lying.here, unit}, units),
            some(lying.inTrailer),
            some(lying.onTheWay),
            some(lying.got),
            some(priced.shortBy)};
}

/// The line as one sentence, for a screen reader.
QString saysOf(const BillLine &line, const Figures &figures, const QStringList &money,
               const QString &why)
{
    QStringList says{said(line.part->number), said(line.part->description),
                     BillWords::tr("need %1").arg(figures.need),
                     BillWords::tr("free here %1").arg(figures.here)};
    if (!figures.trailer.isEmpty())
        says.append(BillWords::tr("in the trailer %1").arg(figures.trailer));
    if (!figures.got.isEmpty())
        says.append(BillWords::tr("in the car %1").arg(figures.got));
    says.append(figures.lacking.isEmpty() ? BillWords::tr("not short")
                                          : BillWords::tr("short %1").arg(figures.lacking));
    if (!figures.way.isEmpty())
        says.append(BillWords::tr("on the way %1").arg(figures.way));
    says.append(BillWords::tr("each %1").arg(money.value(0)));
    says.append(BillWords::tr("cost %1").arg(money.value(1)));
    says.append(why);
    return says.join(QStringLiteral(", "));
}

Row ledgerRow(const PricedLine &priced, const Lying &lying, const QString &group, Units units)
{
    const BillLine &line = *priced.line;
    const QString number = said(line.part->number);
    const Figures figures = figuresOf(priced, lying, units);
    const QString each = eachOf(priced, units);
    const QString cost = costOf(priced);
    const QString why = whyOf(line, units);
    return {number,
            {number, said(line.part->description), why, figures.need, figures.here, figures.trailer,
             figures.way, figures.got, figures.lacking, priced.shortBy.sign() > 0, each, cost,
             group, !line.consumed, line.stations.empty() ? QString() : said(line.stations.front()),
             saysOf(line, figures, {each, cost}, why)}};
}

} // namespace

QStringList billCells()
{
    return {QStringLiteral("part"),    QStringLiteral("what"), QStringLiteral("why"),
            QStringLiteral("need"),    QStringLiteral("here"), QStringLiteral("trailer"),
            QStringLiteral("way"),     QStringLiteral("got"),  QStringLiteral("shortBy"),
            QStringLiteral("isShort"), QStringLiteral("each"), QStringLiteral("cost"),
            QStringLiteral("head"),    QStringLiteral("tool"), QStringLiteral("at"),
            QStringLiteral("says")};
}

QString billGroup(const WorkedOut &worked, const BillLine &line, Grouping grouping)
{
    if (grouping == Grouping::Kind)
        return inWords(text(line.part->kind));
    if (line.stations.empty())
        return BillWords::tr("the whole build");
    const PlacedStation *station = worked.expansion->station(line.stations.front());
    return said(station != nullptr && station->station != nullptr ? station->station->title
                                                                  : line.stations.front());
}

BillColumns billColumns(const WorkedOut &worked)
{
    BillColumns columns;
    for (std::size_t at = 0; at < worked.bill->lines.size(); ++at) {
        const Lying lying = lyingAt(worked, at);
        columns.got = columns.got || lying.got.sign() > 0;
        columns.inTrailer = columns.inTrailer || lying.inTrailer.sign() > 0;
        columns.onTheWay = columns.onTheWay || lying.onTheWay.sign() > 0;
    }
    return columns;
}

std::vector<Row> billRows(const WorkedOut &worked, Grouping grouping, Units units)
{
    std::map<QString, std::size_t> orderOfGroup;
    std::vector<std::pair<std::size_t, Row>> ordered;
    for (std::size_t at = 0; at < worked.bill->lines.size(); ++at) {
        const PricedLine &line = worked.bill->lines.at(at);
        const QString group = billGroup(worked, *line.line, grouping);
        const auto order = orderOfGroup.emplace(group, orderOfGroup.size()).first->second;
        ordered.emplace_back(order, ledgerRow(line, lyingAt(worked, at), group, units));
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
