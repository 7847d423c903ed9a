// SPDX-License-Identifier: MIT
//
// StockDesk: the area of stock: what of the shop's parts is wanted, in which order, the one that is
// looked at, what can be done with it, and what an unmarked fitting can be. Book and sieve work
// away from the window; while nobody looks at the area nothing is made.

#pragma once

#include "app/desk/caliper/what_is_this.h"
#include "app/desk/stock/bench/bench_form.h"
#include "app/desk/stock/card/part_panel.h"
#include "app/desk/stock/deeds/stock_form.h"
#include "app/desk/stock/labels/label_form.h"
#include "app/desk/stock/photo/part_photo.h"
#include "app/desk/stock/places/place_form.h"
#include "app/desk/stock/sieve.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/stock/undone/going_back.h"

namespace flarestock {

class StockDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(bool known READ isKnown NOTIFY changed)
    Q_PROPERTY(bool narrowed READ isNarrowed NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(QString belowWords READ belowWords NOTIFY changed)
    Q_PROPERTY(int belowCount READ belowCount NOTIFY changed)
    Q_PROPERTY(QString selected READ selected WRITE select NOTIFY selectedChanged)
    Q_PROPERTY(int order READ order NOTIFY changed)
    Q_PROPERTY(bool downwards READ isDownwards NOTIFY changed)
    Q_PROPERTY(flarestock::StockRows *rows READ rows CONSTANT)
    Q_PROPERTY(flarestock::Rows *narrowing READ narrowing CONSTANT)
    Q_PROPERTY(flarestock::PartPanel *panel READ panel CONSTANT)
    Q_PROPERTY(flarestock::StockForm *form READ form CONSTANT)
    Q_PROPERTY(flarestock::BenchForm *bench READ bench CONSTANT)
    Q_PROPERTY(flarestock::GoingBack *goingBack READ goingBack CONSTANT)
    Q_PROPERTY(flarestock::LabelForm *labels READ labels CONSTANT)
    Q_PROPERTY(flarestock::PartPhoto *photo READ photo CONSTANT)
    Q_PROPERTY(flarestock::PlaceForm *place READ place CONSTANT)
    Q_PROPERTY(flarestock::Rows *more READ more CONSTANT)
    Q_PROPERTY(flarestock::WhatIsThis *whatIsThis READ whatIsThis CONSTANT)
public:
    explicit StockDesk(Pen &pen, QObject *parent = nullptr);

    /// The shop as it is now; `isOther`: not the one that was on the desk before.
    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    /// The book is being made, or the lines are being sought.
    [[nodiscard]] bool isLoading() const
    {
        return m_workshop && (m_making.isUnderWay() || m_sifting.isUnderWay() || !m_book);
    }
    /// The shop was read: before that nothing is said to be enough.
    [[nodiscard]] bool isKnown() const { return m_book != nullptr; }
    [[nodiscard]] bool isNarrowed() const;
    [[nodiscard]] bool inInches() const { return m_units == Units::Inch; }
    void setInInches(bool inInches);
    [[nodiscard]] QString heading() const; ///< "Adapter, -10, in the trailer"
    [[nodiscard]] QString about() const;   ///< "10 parts; free is: …"
    [[nodiscard]] QString nothing() const; ///< What is said where no line is let through.
    [[nodiscard]] QString belowWords() const;
    [[nodiscard]] int belowCount() const { return m_book ? static_cast<int>(m_book->below) : 0; }
    [[nodiscard]] QString selected() const { return m_panel.number(); }
    void select(const QString &number);
    [[nodiscard]] int order() const { return static_cast<int>(m_asked.order); }
    [[nodiscard]] bool isDownwards() const { return m_asked.downwards; }
    [[nodiscard]] StockRows *rows() { return &m_rows; }
    [[nodiscard]] Rows *narrowing() { return &m_fields; }
    [[nodiscard]] PartPanel *panel() { return &m_panel; }
    [[nodiscard]] StockForm *form() { return &m_form; }
    [[nodiscard]] BenchForm *bench() { return &m_bench; }
    [[nodiscard]] GoingBack *goingBack() { return &m_goingBack; }
    [[nodiscard]] LabelForm *labels() { return &m_labels; }
    [[nodiscard]] PartPhoto *photo() { return &m_photo; }
    [[nodiscard]] PlaceForm *place() { return &m_place; }
    /// What else can be done with what is in hand, besides form()'s deeds: deedCells().
    [[nodiscard]] Rows *more() { return &m_more; }
    [[nodiscard]] WhatIsThis *whatIsThis() { return &m_what; }

    /// Words, or what a caliper says: "od 22.1 mm".
    Q_INVOKABLE void find(const QString &typed);
    /// A field of narrowing() and the number of its choice; 0 is any.
    Q_INVOKABLE void narrow(const QString &field, int choice);
    Q_INVOKABLE void clear();
    Q_INVOKABLE void showBelow(); ///< All that is below what we keep, and nothing else.
    /// By a column of StockOrder; once more: the other way round.
    Q_INVOKABLE void sortBy(int order);
    /// What could be that candidate of whatIsThis(), or any of them for -1.
    Q_INVOKABLE void showCandidate(int candidate);
    /// A part number, tag, lot or place. Whether it is one.
    Q_INVOKABLE bool scan(const QString &code);
    /// Enter behind what was typed, once its lines are there. Where there are none and it is such
    /// a code, that is shown whatever it was narrowed to; where there are some, linesReached().
    Q_INVOKABLE void reach(const QString &typed);

Q_SIGNALS:
    void changed();
    void selectedChanged(); ///< Another part, or what can be done with it.
    /// A scanned code has led to a part, which is selected now.
    void arrived();
    void linesReached();
    /// What was typed to find something holds no more.
    void forgotten();

private:
    void make();
    void sift();
    void showFields();
    void showSelected();
    void take(const std::shared_ptr<const StockBook> &book);
    void forget(); ///< What was asked for.
    void reached();
    [[nodiscard]] PartPanel::Meant meantBy(const QString &code) const;

    std::shared_ptr<const Workshop> m_workshop;
    std::shared_ptr<const StockBook> m_book;
    bool m_isLooking = false;
    bool m_isStale = true;            ///< The book is of a shop of before.
    bool m_isSought = false;          ///< The lines are those of a book.
    bool m_siftAgain = false;         ///< Something else was asked for while lines were sought.
    std::optional<QString> m_toReach; ///< By Enter, once the lines are there.
    Units m_units = Units::Metric;
    std::optional<std::vector<std::string>> m_along; ///< As DeedSubject::along.
    Narrowing m_asked;
    StockRows m_rows;
    Rows m_fields;
    PartPanel m_panel;
    StockForm m_form;
    BenchForm m_bench;
    GoingBack m_goingBack;
    LabelForm m_labels;
    PartPhoto m_photo;
    PlaceForm m_place;
    Rows m_more;
    WhatIsThis m_what;
    Errand m_making; ///< Last: they wait for their workers before the rest goes.
    Errand m_sifting;
};

} // namespace flarestock
