// SPDX-License-Identifier: MIT
//
// BuyingDesk: the area of buying, four pages: what is short by the day it is needed, what is best
// ordered of whom, the orders with the box that came of one, and what suppliers owe. The work on
// the shop is done away from the window, and only while the area is looked at.

#pragma once

#include "app/desk/buying/box/box_page.h"
#include "app/desk/buying/lacking/lacking_page.h"
#include "app/desk/buying/orders/orders_page.h"
#include "app/desk/buying/owed/owed_page.h"
#include "app/desk/buying/slips/slips_page.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/pen.h"

namespace flarestock {

class BuyingDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(int page READ page WRITE setPage NOTIFY changed)
    Q_PROPERTY(QString inTime READ inTime NOTIFY changed)
    Q_PROPERTY(bool canBeInTime READ canBeInTime NOTIFY changed)
    Q_PROPERTY(bool known READ isKnown NOTIFY changed)
    Q_PROPERTY(flarestock::LackingPage *lacking READ lacking CONSTANT)
    Q_PROPERTY(flarestock::SlipsPage *slips READ slips CONSTANT)
    Q_PROPERTY(flarestock::OrdersPage *orders READ orders CONSTANT)
    Q_PROPERTY(flarestock::BoxPage *box READ box CONSTANT)
    Q_PROPERTY(flarestock::OwedPage *owed READ owed CONSTANT)
public:
    enum Page { Lacking, Slips, Orders, Owed };
    Q_ENUM(Page)

    explicit BuyingDesk(Pen &pen, QObject *parent = nullptr);

    /// The shop as it is now; `isOther`: not the one that was on the desk before.
    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    [[nodiscard]] bool isLoading() const
    {
        return m_workshop && (m_making.isUnderWay() || !m_book || m_isStale);
    }
    [[nodiscard]] bool inInches() const { return m_units == Units::Inch; }
    void setInInches(bool inInches);
    [[nodiscard]] QString heading() const; ///< "Buying: 7 lines short, for two builds"
    [[nodiscard]] QString about() const;
    [[nodiscard]] int page() const { return m_page; }
    void setPage(int page);
    [[nodiscard]] QString inTime() const; ///< Whether all can still be here in time, in words.
    /// No line that an order of today does not save.
    [[nodiscard]] bool canBeInTime() const;
    /// The shop was read: before that nothing is said to be in time, or not to be owed.
    [[nodiscard]] bool isKnown() const { return m_book != nullptr; }
    [[nodiscard]] LackingPage *lacking() { return &m_lacking; }
    [[nodiscard]] SlipsPage *slips() { return &m_slips; }
    [[nodiscard]] OrdersPage *orders() { return &m_orders; }
    [[nodiscard]] BoxPage *box() { return &m_box; }
    [[nodiscard]] OwedPage *owed() { return &m_owed; }

    /// Words that narrow what is shown.
    Q_INVOKABLE void find(const QString &typed);
    /// What it means on the page that shows: an order, a claim, a piece of the box, a part that is
    /// short. Whether it is one.
    Q_INVOKABLE bool scan(const QString &code);

Q_SIGNALS:
    void changed();
    /// A scanned code has led to something that is in hand now.
    void arrived();
    /// What was typed to find something holds no more.
    void forgotten();

private:
    struct Made {
        std::shared_ptr<const BuyersBook> book;
        LackingPage::Made lacking;
        std::vector<Row> orders;
        std::vector<Row> claims;
    };
    void make();
    void take(Made made);
    void lookAtSlips();
    bool goToSupplier(const std::string &id);

    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<void>(const LookUp &)> m_read;
    std::shared_ptr<const BuyersBook> m_book;
    bool m_isLooking = false;
    bool m_isStale = true; ///< The book is of a shop of before.
    Units m_units = Units::Metric;
    int m_page = Lacking;
    int m_late = 0;
    LackingPage m_lacking;
    SlipsPage m_slips;
    OrdersPage m_orders;
    BoxPage m_box;
    OwedPage m_owed;
    Errand m_making; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
