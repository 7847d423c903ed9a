// SPDX-License-Identifier: MIT

#include "app/desk/shop/backing_up.h"

#include "app/desk/words/spoken.h"

#include <QDateTime>

namespace flarestock {

void BackingUp::setShop(const ShopOnDesk::Backups &backups)
{
    m_backups = backups;
    m_at = m_backups.newest ? m_backups.newest() : std::nullopt;
    Q_EMIT changed();
}

bool BackingUp::isDue() const
{
    const std::int64_t age = QDateTime::currentMSecsSinceEpoch() - m_at.value_or(0);
    return isPossible() && (!m_at || age > OldAfter || age < 0);
}

QString BackingUp::newest() const
{
    if (!isPossible())
        return {};
    if (isBusy())
        return tr("backing up");
    if (!m_at)
        return tr("no backup yet");
    const QDateTime at = QDateTime::fromMSecsSinceEpoch(*m_at);
    if (at.date() == QDate::currentDate())
        return tr("backed up today %1").arg(QLocale().toString(at.time(), QLocale::ShortFormat));
    return tr("backed up %1").arg(saidDate(at.date().toString(Qt::ISODate).toStdString()));
}

void BackingUp::now()
{
    if (!isPossible() || isBusy())
        return;
    m_errand.run([this, make = m_backups.make]() -> Errand::Back {
        const auto at = make();
        return [this, at] { finished(at); };
    });
    Q_EMIT changed();
}

void BackingUp::finished(const Result<std::int64_t> &at)
{
    if (at)
        m_at = *at;
    Q_EMIT changed();
    Q_EMIT told(at ? tr("Backed up beside the shop file; the copy was proved whole.")
                   : tr("Not backed up: %1").arg(saidProblem(at.error())));
}

} // namespace flarestock
