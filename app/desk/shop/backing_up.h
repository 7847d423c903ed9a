// SPDX-License-Identifier: MIT
//
// BackingUp: whether the shop has a backup beside its file, of when, and one more at the press of a
// button. The copy is made and proved whole away from the window.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class BackingUp : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool possible READ isPossible NOTIFY changed)
    Q_PROPERTY(bool due READ isDue NOTIFY changed)
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
    Q_PROPERTY(QString newest READ newest NOTIFY changed)
public:
    /// How old the newest may be before a further one is called for: a day, in milliseconds.
    static constexpr std::int64_t OldAfter = 86'400'000;

    explicit BackingUp(QObject *parent = nullptr) : QObject(parent) {}

    /// The shop that is on the desk now.
    void setShop(const ShopOnDesk::Backups &backups);

    [[nodiscard]] bool isPossible() const { return static_cast<bool>(m_backups.make); }
    /// There is none, or the newest is older than a day, or from a day to come: a clock was wrong.
    [[nodiscard]] bool isDue() const;
    [[nodiscard]] bool isBusy() const { return m_errand.isUnderWay(); }
    /// "backed up today 14:02", "backed up Fri 27 Nov 2026", "no backup yet"; empty where none can
    /// be.
    [[nodiscard]] QString newest() const;

    /// Makes one; told() says when it is there, or why it is not.
    Q_INVOKABLE void now();

Q_SIGNALS:
    void changed();
    void told(const QString &sentence);

private:
    void finished(const Result<std::int64_t> &at);

    ShopOnDesk::Backups m_backups;
    std::optional<std::int64_t> m_at; ///< Of the newest, milliseconds since 1970, UTC.
    Errand m_errand;
};

} // namespace flarestock
