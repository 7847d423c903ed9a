// SPDX-License-Identifier: MIT
//
// AbreastDesk: the builds of the shop side by side, by their days: who gets the pieces that are not
// enough for all. Days are tried without being written; what comes of them is worked out away from
// the window, only while it is looked at.

#pragma once

#include "app/desk/abreast/abreast_rows.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/pen.h"
#include "app/desk/shop/shop_reading.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class AbreastDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(int shown READ shown WRITE setShown NOTIFY shownChanged)
    Q_PROPERTY(int changedCount READ changedCount NOTIFY changed)
    Q_PROPERTY(bool trying READ isTrying NOTIFY daysChanged)
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed)
    Q_PROPERTY(QString meanwhile READ meanwhile NOTIFY daysChanged)
    Q_PROPERTY(QString part READ part WRITE setPart NOTIFY inHandChanged)
    Q_PROPERTY(QString build READ build WRITE setBuild NOTIFY inHandChanged)
    Q_PROPERTY(int column READ column NOTIFY inHandChanged)
    Q_PROPERTY(QString inHand READ inHand NOTIFY inHandChanged)
    Q_PROPERTY(QString why READ why NOTIFY inHandChanged)
    Q_PROPERTY(bool lacks READ lacks NOTIFY inHandChanged)
    Q_PROPERTY(QString whyNotReserve READ whyNotReserve NOTIFY inHandChanged)
    Q_PROPERTY(flarestock::Rows *heads READ heads CONSTANT)
    Q_PROPERTY(flarestock::Rows *lines READ lines CONSTANT)
public:
    explicit AbreastDesk(Pen &pen, QObject *parent = nullptr);

    /// The shop as it is now; `isOther`: not the one that was on the desk before.
    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    [[nodiscard]] bool isLoading() const
    {
        return m_workshop && (m_making.isUnderWay() || !m_now || m_isStale);
    }
    [[nodiscard]] bool inInches() const { return m_units == Units::Inch; }
    void setInInches(bool inInches);
    [[nodiscard]] QString about() const;   ///< "5 builds, 12 parts are not enough for all"
    [[nodiscard]] QString nothing() const; ///< What is said where no line is shown.
    [[nodiscard]] int shown() const { return static_cast<int>(m_shown); } ///< AbreastShown.
    void setShown(int shown);
    [[nodiscard]] int changedCount() const; ///< Parts with a cell that the tried days change.

    [[nodiscard]] bool isTrying() const { return !m_moved.empty(); }
    [[nodiscard]] QString outcome() const { return m_outcome; } ///< Of the days that are tried.
    /// What has changed in the shop since days are tried; empty where nothing.
    [[nodiscard]] QString meanwhile() const { return m_meanwhile; }

    [[nodiscard]] QString part() const { return m_part; }
    void setPart(const QString &part);
    [[nodiscard]] QString build() const { return m_build; }
    void setBuild(const QString &build);
    [[nodiscard]] int column() const { return m_heads.rowOf(m_build); }
    [[nodiscard]] QString inHand() const; ///< The cell in hand in words.
    [[nodiscard]] QString why() const;
    [[nodiscard]] bool lacks() const; ///< It is short there.
    [[nodiscard]] QString whyNotReserve() const;
    [[nodiscard]] Rows *heads() { return &m_heads; }
    [[nodiscard]] Rows *lines() { return &m_lines; }

    /// Tries a build so many days later, or earlier.
    Q_INVOKABLE void move(const QString &build, int days);
    /// Tries it by a day as it was typed; why that is none, empty where it is one.
    Q_INVOKABLE QString moveTo(const QString &build, const QString &typed);
    /// The day that a build has here, as one would type it.
    Q_INVOKABLE QString typedDay(const QString &build) const;
    Q_INVOKABLE QString dayHint() const; ///< Some day, as one would type it.
    /// Writes the days that are tried, all in one step.
    Q_INVOKABLE void keep();
    /// The days are as they stand again.
    Q_INVOKABLE void asBefore();
    /// Reserves for the build in hand what it can have of the part in hand.
    Q_INVOKABLE void reserve();
    /// Words that narrow what is shown.
    Q_INVOKABLE void find(const QString &typed);
    /// A part that is shown comes into hand. Whether it is one.
    Q_INVOKABLE bool scan(const QString &code);

Q_SIGNALS:
    void changed();
    void shownChanged();
    void daysChanged(); ///< Others are tried, or none.
    void inHandChanged();
    /// What waits to be kept has to be in the shop before this is worked out.
    void begun();

private:
    static constexpr std::size_t KnownMost = 8; ///< Orders of the builds that are kept in mind.
    struct Made {
        std::shared_ptr<const DueInShop> cars;
        std::shared_ptr<const AbreastBook> before;
        std::shared_ptr<const AbreastBook> now;
        std::vector<Row> heads;
        std::vector<Row> lines;
        QString outcome;
        QString problem;
        std::vector<std::shared_ptr<const AbreastBook>> known; ///< Each of another order.

        void keep(const std::shared_ptr<const AbreastBook> &book);
        void readCars(const Workshop &workshop, const ReadShop &read, const std::string &today);
        void tell(Units units);
    };
    void make();
    void take(const std::shared_ptr<Made> &made);
    void showLines();
    void tellInHand();
    void tellDays();
    void tryDay(const BuildPlan &plan, const std::string &day);
    [[nodiscard]] std::string dayHere(const BuildPlan &plan) const; ///< Tried, or as it stands.
    void seeWhatChanged(const Workshop &was, const Workshop &is);
    [[nodiscard]] const BuildPlan *planOf(const QString &build) const;
    [[nodiscard]] const NeedLine *wantInHand() const;

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop;
    ReadShop m_read;
    std::shared_ptr<const DueInShop> m_cars; ///< Of the workshop; nullptr: not read yet.
    std::shared_ptr<const AbreastBook> m_before;
    std::shared_ptr<const AbreastBook> m_now;
    std::vector<std::shared_ptr<const AbreastBook>> m_known; ///< Of the shop as it is now.
    bool m_isLooking = false;
    bool m_isStale = true;
    bool m_isInHandTold = true; ///< Otherwise it is soon.
    Units m_units = Units::Metric;
    AbreastShown m_shown = AbreastShown::Contested;
    MovedBuilds m_moved;
    QString m_typed;
    QString m_part;
    QString m_build;
    QString m_outcome;
    QString m_meanwhile;
    QString m_problem;
    std::vector<Row> m_all;
    Rows m_heads;
    Rows m_lines;
    Errand m_making; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
