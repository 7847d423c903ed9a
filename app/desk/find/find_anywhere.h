// SPDX-License-Identifier: MIT
//
// FindAnywhere: what the find field offers besides what its area shows: whatever of the shop has
// the words that were typed, by kind, and which area shows it. Book and search work away from the
// window; nothing is made before something is sought.

#pragma once

#include "app/desk/find/find_book.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class FindAnywhere : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::Rows *rows READ rows CONSTANT)
    Q_PROPERTY(bool looking READ isLooking NOTIFY changed)
public:
    static constexpr std::size_t MostEach = 4;

    explicit FindAnywhere(QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop);

    /// kind title detail target area
    [[nodiscard]] Rows *rows() { return &m_rows; }
    /// What is shown is of what was typed before.
    [[nodiscard]] bool isLooking() const { return m_making.isUnderWay() || m_looking.isUnderWay(); }

    /// Words; of the kinds in `without` nothing is offered, as the area shows them itself.
    Q_INVOKABLE void find(const QString &typed, const QStringList &without);

Q_SIGNALS:
    void changed();

private:
    void make();
    void look();

    std::shared_ptr<const Workshop> m_workshop;
    std::shared_ptr<const FindBook> m_book;
    QString m_typed;
    QStringList m_without;
    bool m_isStale = false; ///< Something else was typed while it was looked for.
    Rows m_rows;
    Errand m_making; ///< Last: they wait for their workers before the rest goes.
    Errand m_looking;
};

} // namespace flarestock
