// SPDX-License-Identifier: MIT
//
// TrailerDesk: the area of the trailer: for which event it is packed, its drawers, the one that is
// pulled out, what to bring into them and what to take out. The book is made away from the window;
// while nobody looks at the area nothing is made.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/trailer/carry/carry_desk.h"
#include "app/desk/trailer/copies/copies_desk.h"
#include "app/desk/trailer/drawers/load_list.h"

namespace flarestock {

class TrailerDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(QString allThere READ allThere NOTIFY changed)
    Q_PROPERTY(int allThereMark READ allThereMark NOTIFY changed)
    Q_PROPERTY(QStringList events READ events NOTIFY changed)
    Q_PROPERTY(QString packed READ packed NOTIFY changed)
    Q_PROPERTY(QString drawer READ drawer WRITE pullOut NOTIFY changed)
    Q_PROPERTY(QString drawerTitle READ drawerTitle NOTIFY changed)
    Q_PROPERTY(QString drawerAbout READ drawerAbout NOTIFY changed)
    Q_PROPERTY(bool drawerLacks READ drawerLacks NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *drawers READ drawers CONSTANT)
    Q_PROPERTY(flarestock::Rows *inDrawer READ inDrawer CONSTANT)
    Q_PROPERTY(flarestock::LoadList *load READ load CONSTANT)
    Q_PROPERTY(flarestock::LoadList *unload READ unload CONSTANT)
    Q_PROPERTY(flarestock::CarryDesk *carry READ carry CONSTANT)
    Q_PROPERTY(flarestock::CopiesDesk *copies READ copies CONSTANT)
public:
    explicit TrailerDesk(Pen &pen, QObject *parent = nullptr);

    /// The shop as it is now; `isOther`: not the one that was on the desk before.
    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    [[nodiscard]] bool isLoading() const
    {
        return (m_workshop && (m_making.isUnderWay() || !m_book)) ||
               (m_carry.isLooking() && m_carry.isLoading());
    }
    [[nodiscard]] bool inInches() const { return m_units == Units::Inch; }
    void setInInches(bool inInches);
    [[nodiscard]] QString heading() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString nothing() const;  ///< What is said where there is no drawer.
    [[nodiscard]] QString allThere() const; ///< "103 of 111 pieces"
    [[nodiscard]] int allThereMark() const;
    /// What it can be packed for: as of today, then the events to come.
    [[nodiscard]] QStringList events() const;
    [[nodiscard]] QString packed() const;                     ///< The one of events() that holds.
    [[nodiscard]] QString drawer() const { return m_drawer; } ///< A key of drawers().
    void pullOut(const QString &drawer); ///< As it is scanned or typed; another one: none is.
    [[nodiscard]] QString drawerTitle() const;
    [[nodiscard]] QString drawerAbout() const;
    [[nodiscard]] bool drawerLacks() const; ///< Something that it is to hold.
    [[nodiscard]] Rows *drawers() { return &m_drawers; }
    [[nodiscard]] Rows *inDrawer() { return &m_inDrawer; }
    [[nodiscard]] LoadList *load() { return &m_load; }
    [[nodiscard]] LoadList *unload() { return &m_unload; }
    [[nodiscard]] CarryDesk *carry() { return &m_carry; }
    [[nodiscard]] CopiesDesk *copies() { return &m_copies; }

    Q_INVOKABLE void packFor(int event); ///< One of events().
    /// A drawer is pulled out; a part or lot of the load list is ticked, another one's drawer is
    /// pulled out. Whether it is one.
    Q_INVOKABLE bool scan(const QString &code);
    /// Whether the shop knows such a part, so that it may lie elsewhere.
    Q_INVOKABLE bool knows(const QString &code) const;

Q_SIGNALS:
    void changed();
    /// A scanned code has pulled out a drawer, or ticked a line of the load list.
    void arrivedAtDrawer();
    void arrivedAtLoad();

private:
    void make();
    void take(const std::shared_ptr<const TrailerBook> &book, const TripsSeen &trips);
    void show();
    [[nodiscard]] const Drawer *drawerOf(const QString &code) const; ///< nullptr: it is none.
    [[nodiscard]] const Event *packedFor() const;
    [[nodiscard]] std::vector<const Event *> coming() const; ///< The next first.

    std::shared_ptr<const Workshop> m_workshop;
    ReadShop m_read;
    std::shared_ptr<const TrailerBook> m_book;
    TripsSeen m_seen;
    bool m_isLooking = false;
    bool m_isStale = true; ///< The book is of a shop, or for an event, of before.
    Units m_units = Units::Metric;
    std::string m_event; ///< Its id; empty: as of today.
    QString m_drawer;
    Rows m_drawers;
    Rows m_inDrawer;
    LoadList m_load;
    LoadList m_unload;
    CarryDesk m_carry;
    CopiesDesk m_copies;
    Errand m_making; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
