// SPDX-License-Identifier: MIT

#include "app/desk/trailer/carry/carry_rows.h"

#include "app/desk/language/sentences.h"
#include "app/desk/trailer/carry/carry_words.h"
#include "app/desk/words/spoken.h"

#include <QRegularExpression>

namespace flarestock {

namespace {

/// So many bars behind what is carried, and so many in all.
constexpr std::int64_t BarsBehind = 2;
constexpr std::int64_t BarsMost = 12;
constexpr qsizetype DecimalsMost = 4; ///< Of a figure that is read.

QString number(std::int64_t count)
{
    return QLocale().toString(static_cast<qlonglong>(count));
}

/// Figures of more decimals than anybody reads, with four of them that say something; a sum that is
/// not quite that is said to be near it.
QString shortened(const QString &text)
{
    static const QRegularExpression isLong(
        QStringLiteral("(= )?(\\b\\d+)\\.(0*)(\\d{5,}|\\d+)\\b"));
    QString words;
    qsizetype from = 0;
    for (auto at = isLong.globalMatch(text); at.hasNext();) {
        const auto one = at.next();
        const bool isBelowOne = one.captured(2) == QStringLiteral("0");
        const auto decimals = (isBelowOne ? one.capturedLength(3) : 0) + DecimalsMost;
        if (one.capturedLength(3) + one.capturedLength(4) <= decimals)
            continue;
        const QString exact = QString(one.captured(2) + u'.' + one.captured(3) + one.captured(4));
        const auto number = Decimal::parse(exact.toStdString());
        words += text.mid(from, one.capturedStart() - from);
        words += one.capturedLength(1) > 0 ? QStringLiteral("≈ ") : QString();
        words += number ? said(number->rescaled(static_cast<int>(decimals), Rounding::HalfEven)
                                   .stripped()
                                   .text())
                        : exact;
        from = one.capturedEnd();
    }
    return words + text.mid(from);
}

/// With the person's decimal sign and days.
QString inPersonsWords(const std::string &text)
{
    return saidFigures(shortened(inWords(text)));
}

QString saidSpending(const CarryLine &line)
{
    if (line.spending == Spending::Wear)
        return CarrySaid::tr("wears out, counted");
    if (line.spending == Spending::Crash)
        return line.demand ? CarrySaid::tr("crash, in sets") : CarrySaid::tr("crash, a judgement");
    return line.demand->form() == SpareDemand::Form::Poisson ? CarrySaid::tr("by chance, Poisson")
                                                             : CarrySaid::tr("by chance, few uses");
}

/// The chance that so many of it suffice; nothing where nobody can tell.
std::optional<double> coveredBy(const CarryLine &line, std::int64_t pieces)
{
    if (!line.demand)
        return std::nullopt;
    return line.demand->covered(pieces / line.perUse);
}

QString saidCovered(const CarryLine &line, std::int64_t pieces)
{
    const auto covered = coveredBy(line, pieces);
    return covered ? saidPercent(*covered) : QString();
}

Row spareRow(const CarryBook &book, const SparePart &spare)
{
    const QString what = spare.part ? said(spare.part->description) : QString();
    const auto carried = book.carried(spare);
    if (!carried)
        return {said(spare.number),
                {said(spare.number), what, QString(), number(spare.there), QString(),
                 inPersonsWords(spare.why), QString(), false, false,
                 CarrySaid::tr("%1, %2").arg(said(spare.number), inPersonsWords(spare.why))}};
    const CarryLine &line = spare.carry->line;
    const std::int64_t lacks = spare.lacks(*carried);
    const QString missing = lacks > 0 ? CarrySaid::tr("%1 missing").arg(number(lacks)) : QString();
    const QString covered = saidCovered(line, *carried);
    QStringList says{said(spare.number), what, CarrySaid::tr("carry %1").arg(number(*carried)),
                     CarrySaid::tr("there: %1").arg(number(spare.there))};
    for (const QString &more : {missing, saidSpending(line), covered}) {
        if (!more.isEmpty())
            says.append(more);
    }
    return {said(spare.number),
            {said(spare.number), what, number(*carried), number(spare.there), missing,
             saidSpending(line), covered, lacks > 0, true, says.join(QStringLiteral(", "))}};
}

QString saidRateSource(const SparePart &spare, const CarryBook &book)
{
    const CarryLine &line = spare.carry->line;
    if (line.spending == Spending::Wear)
        return CarrySaid::tr("the interval in the list of spares, and how far each piece has run");
    if (line.uses) {
        QStringList events;
        for (const std::string &id : spare.carry->seenAt) {
            const Event *event = book.workshop->season.event(id);
            events.append(said(event ? event->title : id));
        }
        return CarrySaid::tr("the shop's own history at %1").arg(events.join(QStringLiteral(", ")));
    }
    return line.demand ? CarrySaid::tr("the rate in the list of spares")
                       : CarrySaid::tr("so many sets as the list of spares says");
}

QString saidForm(const CarryLine &line)
{
    QString form = line.demand->form() == SpareDemand::Form::Poisson
                       ? CarrySaid::tr("Poisson")
                       : CarrySaid::tr("predictive: the rate itself is only known from few uses");
    if (!line.other)
        return form;
    const bool isPoisson = line.other->form() == SpareDemand::Form::Poisson;
    return CarrySaid::tr("%1. %2 would say %3.")
        .arg(form, isPoisson ? CarrySaid::tr("Poisson") : CarrySaid::tr("Predictive"),
             number(line.other->fewest(line.certainty)));
}

QString saidEvents(const PartCarry &carry)
{
    QStringList events;
    for (const Event *event : carry.events)
        events.append(said(event->title));
    QString all = events.join(QStringLiteral(", "));
    if (carry.until.empty())
        return all;
    return (events.size() == 1 ? CarrySaid::tr("%1, the next event at least; %2")
                               : CarrySaid::tr("%1; %2"))
        .arg(all, inPersonsWords(carry.until));
}

} // namespace

QString saidPercent(double probability)
{
    return localised(said(percentText(probability)));
}

QStringList spareCells()
{
    return {QStringLiteral("part"),    QStringLiteral("what"),    QStringLiteral("carry"),
            QStringLiteral("there"),   QStringLiteral("missing"), QStringLiteral("spentBy"),
            QStringLiteral("covered"), QStringLiteral("isShort"), QStringLiteral("isKnown"),
            QStringLiteral("says")};
}

std::vector<Row> spareRows(const CarryBook &book)
{
    std::vector<Row> rows;
    for (const SparePart &part : book.parts)
        rows.push_back(spareRow(book, part));
    return rows;
}

QStringList sumCells()
{
    return {QStringLiteral("title"), QStringLiteral("detail")};
}

std::vector<Row> sumRows(const CarryBook &book, const SparePart &spare)
{
    if (!spare.carry)
        return {};
    const CarryLine &line = spare.carry->line;
    std::vector<Row> rows;
    const auto add = [&rows](const char *key, const QString &title, const QString &detail) {
        rows.push_back({QString::fromLatin1(key), {title, detail}});
    };
    add("rate", CarrySaid::tr("from"), saidRateSource(spare, book));
    add("sum", line.demand ? CarrySaid::tr("to be expected") : CarrySaid::tr("counted"),
        inPersonsWords(line.sum));
    if (line.demand)
        add("form", CarrySaid::tr("law"), saidForm(line));
    add("why", CarrySaid::tr("why"), inPersonsWords(line.why));
    add("events", CarrySaid::tr("for"), saidEvents(*spare.carry));
    add("fitted", CarrySaid::tr("fitted"), said(spare.carry->fitted));
    const auto carried = book.carried(spare);
    if (line.demand && line.spending == Spending::Chance)
        add("met", CarrySaid::tr("fill rate"),
            CarrySaid::tr("of all that will be wanted %1 is there; that is another measure")
                .arg(saidPercent(line.demand->met(*carried))));
    return rows;
}

QStringList barCells()
{
    return {QStringLiteral("pieces"),    QStringLiteral("chance"),  QStringLiteral("percent"),
            QStringLiteral("isCarried"), QStringLiteral("isThere"), QStringLiteral("says")};
}

std::vector<Row> barRows(const CarryBook &book, const SparePart &spare)
{
    const auto carried = book.carried(spare);
    if (!carried || !spare.carry->line.demand)
        return {};
    const CarryLine &line = spare.carry->line;
    const std::int64_t uses = *carried / line.perUse;
    const std::int64_t first = std::max<std::int64_t>(0, uses + BarsBehind + 1 - BarsMost);
    std::vector<Row> rows;
    for (std::int64_t at = first; at <= uses + BarsBehind; ++at) {
        const double chance = line.demand->covered(at);
        const QString pieces = number(at * line.perUse);
        rows.push_back(
            {pieces,
             {pieces, chance, saidPercent(chance), at == uses, at == spare.there / line.perUse,
              CarrySaid::tr("%1 suffice with %2").arg(pieces, saidPercent(chance))}});
    }
    return rows;
}

QString saidOccasion(const Occasion &occasion)
{
    if (occasion.events.empty())
        return CarrySaid::tr("until what is ordered now can be here");
    const Event &last = *occasion.events.back();
    const QString until = CarrySaid::tr("%1, %2").arg(said(last.title), saidDate(last.firstDay));
    if (occasion.isOnly)
        return CarrySaid::tr("only %1").arg(until);
    const auto count = static_cast<int>(occasion.events.size());
    return count == 1 ? CarrySaid::tr("the next event: %1").arg(until)
                      : CarrySaid::tr("the next %1 events, to %2").arg(count).arg(until);
}

QString saidCarry(const CarryBook &book, const SparePart &spare)
{
    const auto carried = book.carried(spare);
    if (!carried)
        return inPersonsWords(spare.why);
    const CarryLine &line = spare.carry->line;
    const auto covered = coveredBy(line, *carried);
    if (line.spending == Spending::Wear) {
        const QString during =
            CarrySaid::tr("Carry %1: so many are due before the running is over.")
                .arg(number(*carried));
        return line.due.after > 0
                   ? CarrySaid::tr("%1 %2 more when it is.").arg(during, number(line.due.after))
                   : during;
    }
    return covered ? CarrySaid::tr("Carry %1: nothing lacks with %2.")
                         .arg(number(*carried), saidPercent(*covered))
                   : CarrySaid::tr("Carry %1: a judgement, which no chance stands behind.")
                         .arg(number(*carried));
}

QString saidKit(const CarryBook &book)
{
    if (!book.kit)
        return localised(inWords(book.noKit));
    const Currency &currency = book.workshop->settings.currency;
    const auto money = [&currency](std::int64_t micros, Rounding rounding) {
        return saidMoney({Decimal::scaled(micros, 6).rescaled(2, rounding), currency});
    };
    const KitPlan &plan = book.kit->plan;
    QString words = CarrySaid::tr("All of it together costs %1; nothing of what is used by chance "
                                  "lacks with %2.")
                        .arg(money(plan.best.cost + book.kit->besidesCost, Rounding::HalfEven),
                             saidPercent(plan.best.covered));
    words += u' ';
    words += plan.isProven
                 ? CarrySaid::tr("No kit of that certainty costs less.")
                 : CarrySaid::tr("That no other costs less is not proven; none costs less than %1.")
                       .arg(money(plan.noLess + book.kit->besidesCost, Rounding::Floor));
    return words;
}

} // namespace flarestock
