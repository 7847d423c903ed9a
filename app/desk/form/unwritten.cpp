// SPDX-License-Identifier: MIT

#include "app/desk/form/unwritten.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace flarestock {

Unwritten::Unwritten(QObject *parent) : QObject(parent)
{
    m_soon.setSingleShot(true);
    m_soon.setInterval(AfterMs);
    connect(&m_soon, &QTimer::timeout, this, &Unwritten::tell);
}

void Unwritten::setShop(const QString &shop, const QString &text)
{
    if (shop == m_shop)
        return;
    if (m_soon.isActive())
        tell();
    m_shop = shop;
    m_told = text;
    m_now.clear();
    m_waiting.clear();
    const QJsonObject all = QJsonDocument::fromJson(text.toUtf8()).object();
    for (auto at = all.begin(); at != all.end(); ++at) {
        const QJsonObject one = at.value().toObject();
        const QDate day =
            QDate::fromString(one.value(QStringLiteral("day")).toString(), Qt::ISODate);
        if (day.isValid() && day.daysTo(QDate::currentDate()) <= DaysKept)
            m_waiting[at.key()] = {one.value(QStringLiteral("title")).toString(),
                                   one.value(QStringLiteral("filled")).toObject().toVariantMap(),
                                   day};
    }
    Q_EMIT found();
}

void Unwritten::keep(const QString &sheet, const QString &title, const QVariantMap &filled,
                     const QVariantMap &asOpened)
{
    if (filled == asOpened)
        return forget(sheet);
    m_now[sheet] = {title, filled, QDate::currentDate()};
    m_soon.start();
}

void Unwritten::forget(const QString &sheet)
{
    if (m_now.erase(sheet) > 0)
        m_soon.start();
}

QVariantMap Unwritten::takeUp(const QString &sheet)
{
    if (const auto open = m_now.find(sheet); open != m_now.end())
        return open->second.filled;
    auto waiting = m_waiting.extract(sheet);
    if (waiting.empty())
        return {};
    QVariantMap filled = waiting.mapped().filled;
    m_now.insert_or_assign(sheet, std::move(waiting.mapped()));
    Q_EMIT found();
    return filled;
}

QString Unwritten::said() const
{
    QStringList titles;
    for (const auto &[name, sheet] : m_waiting)
        titles.append(tr("“%1”").arg(sheet.title));
    return titles.isEmpty() ? QString()
                            : tr("Not written down when the desk ended: %1. Open it again: it is "
                                 "filled in as it was.")
                                  .arg(titles.join(QStringLiteral(", ")));
}

QString Unwritten::text() const
{
    QJsonObject all;
    for (const auto *sheets : {&m_waiting, &m_now}) {
        for (const auto &[name, sheet] : *sheets)
            all.insert(name, QJsonObject{{QStringLiteral("title"), sheet.title},
                                         {QStringLiteral("day"), sheet.day.toString(Qt::ISODate)},
                                         {QStringLiteral("filled"),
                                          QJsonObject::fromVariantMap(sheet.filled)}});
    }
    return all.isEmpty() ? QString()
                         : QString::fromUtf8(QJsonDocument(all).toJson(QJsonDocument::Compact));
}

void Unwritten::tell()
{
    m_soon.stop();
    if (QString now = text(); now != m_told) {
        m_told = std::move(now);
        Q_EMIT kept(m_shop, m_told);
    }
}

} // namespace flarestock
