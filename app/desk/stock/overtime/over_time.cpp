// SPDX-License-Identifier: MIT

#include "app/desk/stock/overtime/over_time.h"

#include "app/desk/stock/stock_rows.h"

#include <QDateTime>

#include <algorithm>

namespace flarestock {

namespace {

QString saidDay(std::int64_t at)
{
    return QLocale().toString(QDateTime::fromMSecsSinceEpoch(at).date(),
                              QStringLiteral("d MMM yyyy"));
}

} // namespace

void OverTime::show(const OnHand &hand, const StockEntry &entry, Units units)
{
    m_hand = hand;
    m_part = entry.level ? nullptr : entry.part;
    m_kept = entry.kept;
    m_units = units;
    Q_EMIT changed();
}

void OverTime::clear()
{
    m_hand = {};
    m_part = nullptr;
    Q_EMIT changed();
}

QString OverTime::amount(std::int64_t smallest) const
{
    return saidStock(smallest, *m_part, m_units);
}

std::int64_t OverTime::top() const
{
    return std::max<std::int64_t>({m_hand.most, m_hand.before, 1});
}

QString OverTime::says() const
{
    if (!isThere())
        return {};
    const QString moved = tr("%1 came, %2 went.").arg(amount(m_hand.came), amount(m_hand.went));
    const QString between =
        m_hand.least == m_hand.most
            ? tr("Always %1 since %2.").arg(amount(m_hand.now), from())
            : tr("Between %1 and %2 since %3; %4 now.")
                  .arg(amount(m_hand.least), amount(m_hand.most), from(), amount(m_hand.now));
    return tr("%1 %2").arg(between, moved);
}

QString OverTime::most() const
{
    return isThere() ? amount(top()) : QString();
}

QString OverTime::from() const
{
    return isThere() ? saidDay(m_hand.from) : QString();
}

QString OverTime::to() const
{
    return isThere() ? saidDay(m_hand.to) : QString();
}

double OverTime::kept() const
{
    const bool isIn = isThere() && m_kept > 0 && m_kept <= top();
    return isIn ? static_cast<double>(m_kept) / static_cast<double>(top()) : -1;
}

QString OverTime::keptWords() const
{
    return kept() < 0 ? QString() : tr("we keep %1").arg(amount(m_kept));
}

QVariantList OverTime::steps() const
{
    QVariantList all;
    if (!isThere())
        return all;
    const auto step = [&](std::int64_t at, std::int64_t onHand, bool came, bool went) {
        return QVariantMap{
            {QStringLiteral("at"),
             static_cast<double>(at - m_hand.from) / static_cast<double>(m_hand.to - m_hand.from)},
            {QStringLiteral("level"), static_cast<double>(onHand) / static_cast<double>(top())},
            {QStringLiteral("came"), came},
            {QStringLiteral("went"), went}};
    };
    all.append(step(m_hand.from, m_hand.before, false, false));
    for (const OnHandDay &day : m_hand.days)
        all.append(step(day.at, day.onHand, day.came, day.went));
    return all;
}

} // namespace flarestock
