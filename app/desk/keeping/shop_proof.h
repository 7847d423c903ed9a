// SPDX-License-Identifier: MIT
//
// ShopProof: the shop on the desk is proved whole, away from the window: its chains, every balance
// against what all movements add up to. Nothing is written. Where it is not whole, the newest
// backup that is is named.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class ShopProof : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(bool damaged READ isDamaged NOTIFY changed)
    Q_PROPERTY(QString finding READ finding NOTIFY changed)
    Q_PROPERTY(QString remedy READ remedy NOTIFY changed)
    Q_PROPERTY(QString backup READ backup NOTIFY changed)
    Q_PROPERTY(QStringList damages READ damages NOTIFY changed)
public:
    explicit ShopProof(QObject *parent = nullptr) : QObject(parent) {}

    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    [[nodiscard]] bool isDamaged() const { return m_isDamaged; } ///< Or cannot be read.
    [[nodiscard]] QString finding() const { return m_finding; }  ///< Empty: not proved yet.
    [[nodiscard]] QString remedy() const { return m_remedy; }    ///< Empty where it is whole.
    [[nodiscard]] QString backup() const { return m_backup; }    ///< A good one to go on from.
    [[nodiscard]] QStringList damages() const { return m_damages; }

    Q_INVOKABLE void prove();

    /// What one look has found.
    struct Found;

Q_SIGNALS:
    void changed();

private:
    void finished(const Found &found);
    void sayRemedy(const Found &found);

    std::string m_file;
    bool m_canRead = false;
    bool m_isDamaged = false;
    QString m_finding;
    QString m_remedy;
    QString m_backup;
    QStringList m_damages;
    Errand m_errand;
};

} // namespace flarestock
