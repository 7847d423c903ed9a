// SPDX-License-Identifier: MIT
//
// ServiceDesk: the area of service: the cars with their pieces in place, what is due across all of
// them, where a lot went, and what can be done to the position in hand. The garage book is made
// away from the window; while nobody looks at the area nothing is made.

#pragma once

#include "app/desk/service/deeds/work_form.h"
#include "app/desk/service/lot/lot_search.h"
#include "app/desk/service/papers/paper_form.h"
#include "app/desk/service/piece_words.h"
#include "app/desk/stock/undone/going_back.h"

namespace flarestock {

class ServiceDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString tab READ tab WRITE setTab NOTIFY changed)
    Q_PROPERTY(QString selected READ selected WRITE select NOTIFY selectedChanged)
    Q_PROPERTY(bool rings READ hasRings WRITE setRings NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(QString overdue READ overdue NOTIFY changed)
    Q_PROPERTY(int overdueMark READ overdueMark NOTIFY changed)
    Q_PROPERTY(QString dueNext READ dueNext NOTIFY changed)
    Q_PROPERTY(QString car READ car NOTIFY changed)
    Q_PROPERTY(QString pieceTitle READ pieceTitle NOTIFY changed)
    Q_PROPERTY(QString pieceAbout READ pieceAbout NOTIFY changed)
    Q_PROPERTY(QString pieceState READ pieceState NOTIFY changed)
    Q_PROPERTY(int pieceMark READ pieceMark NOTIFY changed)
    Q_PROPERTY(QString opened READ opened NOTIFY changed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *tabs READ tabs CONSTANT)
    Q_PROPERTY(flarestock::Rows *positions READ positions CONSTANT)
    Q_PROPERTY(flarestock::Rows *due READ due CONSTANT)
    Q_PROPERTY(flarestock::Rows *lines READ lines CONSTANT)
    Q_PROPERTY(flarestock::WorkForm *form READ form CONSTANT)
    Q_PROPERTY(flarestock::GoingBack *goingBack READ goingBack CONSTANT)
    Q_PROPERTY(flarestock::LotSearch *lot READ lot CONSTANT)
    Q_PROPERTY(flarestock::PaperForm *paper READ paper CONSTANT)
public:
    explicit ServiceDesk(Pen &pen, QObject *parent = nullptr);

    /// The shop as it is now; `isOther`: not the one that was on the desk before.
    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    [[nodiscard]] bool isLoading() const
    {
        return m_workshop && m_read && (m_making.isUnderWay() || m_isStale || m_lot.isBusy());
    }
    [[nodiscard]] bool inInches() const { return m_units == Units::Inch; }
    void setInInches(bool inInches);
    /// "due", "car|" and the id of a car, "lot".
    [[nodiscard]] QString tab() const { return m_tab; }
    void setTab(const QString &tab);
    /// A key of the list that shows.
    [[nodiscard]] QString selected() const { return m_selected; }
    void select(const QString &key);
    /// Rings and washers of which nothing else is known are listed too.
    [[nodiscard]] bool hasRings() const { return m_hasRings; }
    void setRings(bool rings);
    [[nodiscard]] QString heading() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString nothing() const; ///< What is said where the list is empty.
    [[nodiscard]] QString overdue() const; ///< Of the car that shows, or of all.
    [[nodiscard]] int overdueMark() const;
    [[nodiscard]] QString dueNext() const;
    [[nodiscard]] QString car() const; ///< The id of the car in hand; empty where none is.
    [[nodiscard]] QString pieceTitle() const;
    [[nodiscard]] QString pieceAbout() const;
    [[nodiscard]] QString pieceState() const;
    [[nodiscard]] int pieceMark() const;
    /// "Before the fuel line is opened"; empty where nothing that is opened is in hand.
    [[nodiscard]] QString opened() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] Rows *tabs() { return &m_tabs; }
    [[nodiscard]] Rows *positions() { return &m_positions; }
    [[nodiscard]] Rows *due() { return &m_due; }
    [[nodiscard]] Rows *lines() { return &m_lines; }
    [[nodiscard]] WorkForm *form() { return &m_form; }
    [[nodiscard]] GoingBack *goingBack() { return &m_goingBack; }
    [[nodiscard]] LotSearch *lot() { return &m_lot; }
    [[nodiscard]] PaperForm *paper() { return &m_paper; }
    [[nodiscard]] const std::shared_ptr<const GarageBook> &book() const { return m_book; }
    /// What is in hand; its position is empty where only a car is.
    [[nodiscard]] CarPosition inHand() const;

    Q_INVOKABLE void find(const QString &typed); ///< Only what says these words.
    Q_INVOKABLE void seekLot(const QString &what);
    Q_INVOKABLE void step(int tabs); ///< So many tabs on.
    /// A tag, lot, serial, part, position or car. Whether it is one that was ever here.
    Q_INVOKABLE bool scan(const QString &code);

Q_SIGNALS:
    void changed();
    void selectedChanged();
    void arrived(); ///< A scanned code has led to a position, which is in hand now.
    void explained(const QString &sentence);
    void forgotten(); ///< What was typed to find something holds no more.

private:
    void make();
    void take(const std::shared_ptr<const GarageBook> &book);
    void showRows();
    void showInHand();
    void holdPiece();
    void showPiece();
    void keepInHand(int row);
    [[nodiscard]] std::string carShown() const; ///< Empty: all of them.
    [[nodiscard]] Rows &shown();
    [[nodiscard]] std::vector<CarPosition> meantBy(const QString &code) const;

    std::shared_ptr<const Workshop> m_workshop;
    ReadShop m_read;
    std::shared_ptr<const GarageBook> m_book;
    QString m_problem; ///< Why no book could be made.
    bool m_isLooking = false;
    bool m_isStale = true; ///< The book is of a shop of before.
    Units m_units = Units::Metric;
    QString m_tab = QStringLiteral("due");
    QString m_selected;
    QString m_words;
    bool m_hasRings = false;
    Rows m_tabs;
    Rows m_positions;
    Rows m_due;
    Rows m_lines;
    WorkForm m_form;
    GoingBack m_goingBack;
    LotSearch m_lot;
    PaperForm m_paper;
    Errand m_making; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
