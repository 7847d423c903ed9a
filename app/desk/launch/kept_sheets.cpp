// SPDX-License-Identifier: MIT

#include "app/desk/launch/kept_sheets.h"

#include "app/desk/launch/settings.h"
#include "app/desk/shop/desk.h"

#include <QCryptographicHash>
#include <QDir>
#include <QStandardPaths>

namespace flarestock {

KeptSheets::KeptSheets(Desk &desk) : m_desk(desk)
{
    connect(&desk, &Desk::shopChanged, this, &KeptSheets::begin);
    connect(&desk.pen()->unwritten(), &Unwritten::kept, this,
            [this](const QString &shop, const QString &text) {
                if (m_lock && !shop.isEmpty())
                    rememberSheets(shop, text);
            });
    begin();
}

void KeptSheets::begin()
{
    const QString shop = m_desk.shopPath();
    Unwritten &unwritten = m_desk.pen()->unwritten();
    if (shop == unwritten.shop())
        return;
    unwritten.setShop({}, {}); // Tells what is still to be kept of the one before.
    m_lock.reset();
    if (shop.isEmpty())
        return;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::TempLocation);
    const QByteArray name =
        QCryptographicHash::hash((QDir::homePath() + shop).toUtf8(), QCryptographicHash::Sha256);
    auto lock = std::make_unique<QLockFile>(folder + QStringLiteral("/flarestock-") +
                                            QString::fromLatin1(name.toHex().first(24)) +
                                            QStringLiteral(".lock"));
    lock->setStaleLockTime(0); // By its process only: a desk is open for days.
    if (lock->tryLock(0))
        m_lock = std::move(lock);
    unwritten.setShop(shop, m_lock ? lastSheets(shop) : QString());
}

} // namespace flarestock
