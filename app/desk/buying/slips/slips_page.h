// SPDX-License-Identifier: MIT
//
// Slips page: what to order of whom for all that is short: the choice of what comes first, a slip
// for each supplier, and the drafts that are made of them. Worked out away from the window, and
// only while the page is looked at.

#pragma once

#include "app/desk/buying/slips/slip_book.h"
#include "app/desk/rows/rows.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/pen.h"
#include "app/desk/words/units.h"

namespace flarestock {

class SlipsPage : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(QString aim READ aim WRITE setAim NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *aims READ aims CONSTANT)
    Q_PROPERTY(flarestock::Rows *slips READ slips CONSTANT)
public:
    explicit SlipsPage(Pen &pen, QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop, bool isOther);
    void setUnits(Units units);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    [[nodiscard]] bool isLoading() const
    {
        return m_workshop && (m_isStale || m_making.isUnderWay());
    }
    [[nodiscard]] QString aim() const; ///< "cheapest", "earliest", "parcels"
    void setAim(const QString &aim);
    [[nodiscard]] QString nothing() const; ///< What is said where there is no slip.
    [[nodiscard]] QStringList notes() const { return m_notes; }
    [[nodiscard]] Rows *aims() { return &m_aims; }
    [[nodiscard]] Rows *slips() { return &m_slips; }

    /// A slip's order as a draft; for an empty key of all slips that have none yet.
    Q_INVOKABLE void draft(const QString &key);

Q_SIGNALS:
    void changed();

private:
    void make();
    void showPlan();

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<void>(const LookUp &)> m_read;
    std::shared_ptr<const SlipBook> m_book;
    bool m_isLooking = false;
    bool m_isStale = true;
    Units m_units = Units::Metric;
    PlanAim m_aim = PlanAim::Cheapest;
    QStringList m_notes;
    Rows m_aims;
    Rows m_slips;
    Errand m_making; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
