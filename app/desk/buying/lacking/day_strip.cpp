// SPDX-License-Identifier: MIT

#include "app/desk/buying/lacking/day_strip.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"

#include <QDate>

#include <algorithm>

namespace flarestock {

namespace {

/// Behind every day: of what nobody has said a day for.
constexpr auto NoDay = "~";

struct StripDay {
    std::map<std::string, std::set<std::string>> comes; ///< Parts by order.
    std::map<std::string, std::set<std::string>> needs; ///< Parts by build or place.
    std::map<std::string, Decimal> lacks;               ///< By part, of the wants of that day.
    std::map<std::string, Decimal> lateComes;           ///< By part, for wants of before.
};

class Strip {
public:
    Strip(const BuyersBook &book, std::string part, Units units)
        : m_book(book), m_part(std::move(part)), m_units(units)
    {
        m_days[book.today];
        for (const OnOrder &one : book.coming)
            m_days[arrival(one.day)].comes[one.order].insert(one.part);
        for (const NeedLine &line : book.needs.lines)
            add(line);
    }

    std::vector<Row> rows()
    {
        std::vector<Row> rows;
        std::vector<int> shortOnes;
        std::map<std::string, Decimal> running;
        for (const auto &[day, entry] : m_days) {
            for (const auto &[part, lacks] : entry.lacks)
                running[part] += lacks;
            for (const auto &[part, comes] : entry.lateComes)
                running[part] -= comes;
            shortOnes.push_back(
                static_cast<int>(std::count_if(running.begin(), running.end(), [](const auto &one) {
                    return one.second.sign() > 0;
                })));
            rows.push_back(row(day, entry, {shortOnes.back(), running[m_part]}));
        }
        const int most = *std::max_element(shortOnes.begin(), shortOnes.end());
        for (std::size_t at = 0; at < rows.size(); ++at)
            rows[at].cells[6] = most == 0 ? 0.0 : static_cast<double>(shortOnes[at]) / most;
        return rows;
    }

private:
    struct Running {
        int parts = 0;
        Decimal ofPart;
    };

    /// What should have come before is counted on for today.
    [[nodiscard]] std::string arrival(const std::string &day) const
    {
        return day.empty() ? NoDay : std::max(day, m_book.today);
    }
    void add(const NeedLine &line)
    {
        const std::string day = line.day.empty() ? NoDay : std::max(line.day, m_book.today);
        StripDay &entry = m_days[day];
        entry.needs[line.whom].insert(line.part->number);
        if (line.shortBy.sign() <= 0)
            return;
        entry.lacks[line.part->number] += line.shortBy;
        for (const NeedLine::Coming &late : line.late)
            if (m_late.insert({late.order, line.part->number}).second)
                m_days[arrival(late.day)].lateComes[line.part->number] += late.quantity;
    }
    [[nodiscard]] QStringList told(const std::map<std::string, std::set<std::string>> &all,
                                   bool isOrders) const
    {
        QStringList sentences;
        for (const auto &[who, parts] : all) {
            const auto count = static_cast<int>(parts.size());
            sentences.append(
                isOrders ? BuyingWords::tr("%1 by %2").arg(QString::number(count), said(who))
                         : BuyingWords::tr("%1 for %2")
                               .arg(QString::number(count), saidWhom(who, *m_book.workshop)));
        }
        return sentences;
    }
    [[nodiscard]] Decimal comingOfPart(const std::string &day) const
    {
        Decimal sum;
        for (const OnOrder &one : m_book.coming)
            if (one.part == m_part && arrival(one.day) == day)
                sum += one.quantity;
        return sum;
    }
    [[nodiscard]] Decimal neededOfPart(const std::string &day) const
    {
        Decimal sum;
        for (const NeedLine &line : m_book.needs.lines)
            if (line.part->number == m_part &&
                (line.day.empty() ? NoDay : std::max(line.day, m_book.today)) == day)
                sum += line.need;
        return sum;
    }
    [[nodiscard]] QString much(const Decimal &amount) const
    {
        const Part *part = m_book.workshop->part(m_part);
        return part && amount.sign() > 0 ? saidMuch(amount, *part, m_units) : QString();
    }
    [[nodiscard]] Row row(const std::string &day, const StripDay &entry,
                          const Running &running) const
    {
        const bool isDay = day != NoDay;
        const auto away = daysBetween(m_book.today, day);
        const QString title = isDay ? saidDayOf(day, m_book.today) : BuyingWords::tr("no day said");
        const int weekday = QDate::fromString(said(day), Qt::ISODate).dayOfWeek();
        const QStringList comes = told(entry.comes, true);
        const QStringList needs = told(entry.needs, false);
        const QString lacks = running.parts == 0 ? BuyingWords::tr("nothing short")
                              : running.parts == 1
                                  ? BuyingWords::tr("1 part short")
                                  : BuyingWords::tr("%1 parts short").arg(running.parts);
        const QString partComes = much(comingOfPart(day));
        const QString partNeeds = much(neededOfPart(day));
        const QString partLacks = much(running.ofPart);
        QStringList says{title};
        if (!comes.isEmpty())
            says.append(BuyingWords::tr("comes: %1").arg(comes.join(QStringLiteral(", "))));
        if (!needs.isEmpty())
            says.append(BuyingWords::tr("needed: %1").arg(needs.join(QStringLiteral(", "))));
        says.append(lacks);
        if (!partComes.isEmpty() || !partNeeds.isEmpty() || !partLacks.isEmpty())
            says.append(
                BuyingWords::tr("of %1: comes %2, needed %3, short %4")
                    .arg(said(m_part), orNone(partComes), orNone(partNeeds), orNone(partLacks)));
        return {said(day),
                {title, away ? saidAway(*away) : QString(), weekday >= 6, comes, needs, lacks, 0.0,
                 partComes, partNeeds, partLacks, running.ofPart.sign() > 0,
                 says.join(QStringLiteral("; "))}};
    }
    static QString orNone(const QString &much)
    {
        return much.isEmpty() ? BuyingWords::tr("none") : much;
    }

    const BuyersBook &m_book;
    std::string m_part;
    Units m_units;
    std::map<std::string, StripDay> m_days;
    std::set<std::pair<std::string, std::string>> m_late; ///< Told already, by order and part.
};

} // namespace

QStringList stripCells()
{
    return {QStringLiteral("day"),       QStringLiteral("away"),      QStringLiteral("weekend"),
            QStringLiteral("comes"),     QStringLiteral("needs"),     QStringLiteral("lacks"),
            QStringLiteral("share"),     QStringLiteral("partComes"), QStringLiteral("partNeeds"),
            QStringLiteral("partLacks"), QStringLiteral("partShort"), QStringLiteral("says")};
}

std::vector<Row> stripRows(const BuyersBook &book, const std::string &part, Units units)
{
    return Strip(book, part, units).rows();
}

} // namespace flarestock
