// SPDX-License-Identifier: MIT

#include "app/desk/buying/lacking/day_strip.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"

#include <QDate>

#include <algorithm>
#include <set>
#include <utility>

namespace flarestock {

namespace {

/// Behind every day: of what nobody has said a day for.
constexpr auto NoDay = "~";
constexpr int ShareCell = 6; ///< Of stripCells().
constexpr int PartCells = 7; ///< The first of those that a part has.

struct StripDay {
    std::map<std::string, std::set<std::string>> comes; ///< Parts by order.
    std::map<std::string, std::set<std::string>> needs; ///< Parts by build or place.
    std::map<std::string, Decimal> comesOf;             ///< By part.
    std::map<std::string, Decimal> needsOf;             ///< By part.
    std::map<std::string, Decimal> lacks;               ///< By part, of the wants of that day.
    std::map<std::string, Decimal> lateComes;           ///< By part, for wants of before.
};

using StripDays = std::map<std::string, StripDay>;

/// What comes and is needed on each day, gathered from the book's lines.
class Gathered {
public:
    explicit Gathered(const BuyersBook &book) : m_today(book.today)
    {
        m_days[m_today];
        for (const OnOrder &one : book.coming) {
            StripDay &day = m_days[arrival(one.day)];
            day.comes[one.order].insert(one.part);
            day.comesOf[one.part] += one.quantity;
        }
        for (const NeedLine &line : book.needs.lines)
            add(line);
    }
    [[nodiscard]] const StripDays &days() const { return m_days; }

private:
    /// What should have come before is counted on for today.
    [[nodiscard]] std::string arrival(const std::string &day) const
    {
        return day.empty() ? NoDay : std::max(day, m_today);
    }
    void add(const NeedLine &line)
    {
        StripDay &entry = m_days[arrival(line.day)];
        const std::string &part = line.part->number;
        entry.needs[line.whom].insert(part);
        entry.needsOf[part] += line.need;
        if (line.shortBy.sign() <= 0)
            return;
        entry.lacks[part] += line.shortBy;
        for (const NeedLine::Coming &late : line.late)
            if (m_late.insert({late.order, part}).second)
                m_days[arrival(late.day)].lateComes[part] += late.quantity;
    }
    std::string m_today;
    StripDays m_days;
    std::set<std::pair<std::string, std::string>> m_late; ///< Told already, by order and part.
};

QStringList saidComes(const StripDay &day)
{
    QStringList sentences;
    for (const auto &[order, parts] : day.comes)
        sentences.append(parts.size() == 1 ? BuyingWords::tr("1 part by %1").arg(said(order))
                                           : BuyingWords::tr("%1 parts by %2")
                                                 .arg(QString::number(parts.size()), said(order)));
    return sentences;
}

QStringList saidNeeds(const StripDay &day, const Workshop &workshop)
{
    QStringList sentences;
    for (const auto &[whom, parts] : day.needs)
        sentences.append(parts.size() == 1
                             ? BuyingWords::tr("1 part for %1").arg(saidWhom(whom, workshop))
                             : BuyingWords::tr("%1 parts for %2")
                                   .arg(QString::number(parts.size()), saidWhom(whom, workshop)));
    return sentences;
}

QString saidLacks(int parts)
{
    return parts == 0   ? BuyingWords::tr("nothing short")
           : parts == 1 ? BuyingWords::tr("1 part short")
                        : BuyingWords::tr("%1 parts short").arg(parts);
}

/// A day as it is of no part. `lacking`: so many parts are short from then on.
Row dayRow(const BuyersBook &book, const std::string &day, const StripDay &entry, int lacking)
{
    const auto away = daysBetween(book.today, day);
    const QString title =
        day == NoDay ? BuyingWords::tr("no day said") : saidDayOf(day, book.today);
    const int weekday = QDate::fromString(said(day), Qt::ISODate).dayOfWeek();
    const QStringList comes = saidComes(entry);
    const QStringList needs = saidNeeds(entry, *book.workshop);
    const QString lacks = saidLacks(lacking);
    QStringList says{title};
    if (!comes.isEmpty())
        says.append(BuyingWords::tr("comes: %1").arg(comes.join(QStringLiteral(", "))));
    if (!needs.isEmpty())
        says.append(BuyingWords::tr("needed: %1").arg(needs.join(QStringLiteral(", "))));
    says.append(lacks);
    return {said(day),
            {title, away ? saidAway(*away) : QString(), weekday >= 6, comes, needs, lacks, 0.0,
             QString(), QString(), QString(), false, says.join(QStringLiteral("; "))}};
}

QString orNone(const QString &much)
{
    return much.isEmpty() ? BuyingWords::tr("none") : much;
}

/// How much of each part is on a day's list; nothing where none is.
Decimal of(const std::map<std::string, Decimal> &all, const std::string &part)
{
    const auto found = all.find(part);
    return found == all.end() ? Decimal() : found->second;
}

} // namespace

QStringList stripCells()
{
    return {QStringLiteral("day"),       QStringLiteral("away"),      QStringLiteral("weekend"),
            QStringLiteral("comes"),     QStringLiteral("needs"),     QStringLiteral("lacks"),
            QStringLiteral("share"),     QStringLiteral("partComes"), QStringLiteral("partNeeds"),
            QStringLiteral("partLacks"), QStringLiteral("partShort"), QStringLiteral("says")};
}

DayStrip::DayStrip(const BuyersBook &book, Units units)
{
    if (book.problem.empty())
        add(book, units);
}

void DayStrip::add(const BuyersBook &book, Units units)
{
    const auto much = [&](const Decimal &amount, const std::string &number) {
        const Part *part = book.workshop->part(number);
        return part && amount.sign() > 0 ? saidMuch(amount, *part, units) : QString();
    };
    const Gathered gathered(book);
    std::map<std::string, Decimal> running; // By part, what is short so far; none of it: not there.
    std::vector<int> lacking;
    for (const auto &[day, entry] : gathered.days()) {
        for (const auto &[part, lacks] : entry.lacks)
            running[part] += lacks;
        for (const auto &[part, comes] : entry.lateComes)
            running[part] -= comes;
        std::erase_if(running, [](const auto &one) { return one.second.sign() == 0; });
        lacking.push_back(
            static_cast<int>(std::count_if(running.begin(), running.end(),
                                           [](const auto &one) { return one.second.sign() > 0; })));
        // On days between nothing of it changes, and nothing is said again.
        for (const auto *all : {&entry.comesOf, &entry.needsOf, &entry.lacks, &entry.lateComes}) {
            for (const auto &[part, amount] : *all)
                m_parts[part][day] = {much(of(entry.comesOf, part), part),
                                      much(of(entry.needsOf, part), part),
                                      much(of(running, part), part)};
        }
        m_days.push_back(dayRow(book, day, entry, lacking.back()));
    }
    const int most = *std::max_element(lacking.begin(), lacking.end());
    for (std::size_t at = 0; at < m_days.size(); ++at)
        m_days[at].cells[ShareCell] = most == 0 ? 0.0 : static_cast<double>(lacking[at]) / most;
}

std::vector<Row> DayStrip::rows(const std::string &part) const
{
    std::vector<Row> rows = m_days;
    const auto ofPart = m_parts.find(part);
    if (ofPart == m_parts.end())
        return rows;
    for (Row &row : rows) {
        const auto found = ofPart->second.find(row.key.toStdString());
        if (found == ofPart->second.end())
            continue;
        const auto &[comes, needs, lacks] = found->second;
        row.cells[PartCells] = comes;
        row.cells[PartCells + 1] = needs;
        row.cells[PartCells + 2] = lacks;
        row.cells[PartCells + 3] = !lacks.isEmpty();
        if (comes.isEmpty() && needs.isEmpty() && lacks.isEmpty())
            continue;
        const QString told = BuyingWords::tr("of %1: comes %2, needed %3, short %4")
                                 .arg(said(part), orNone(comes), orNone(needs), orNone(lacks));
        row.cells.last() = QString(row.cells.constLast().toString() + QStringLiteral("; ") + told);
    }
    return rows;
}

} // namespace flarestock
