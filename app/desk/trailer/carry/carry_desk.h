// SPDX-License-Identifier: MIT
//
// CarryDesk: how many spares to carry: for which events, how certain, of which parts, each by
// itself or all as a kit; the sum behind the one in hand; and what was found made the level of a
// drawer. It reckons away from the window, and only while somebody looks.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/pen.h"
#include "app/desk/trailer/carry/carry_book.h"

namespace flarestock {

class CarryDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QStringList occasions READ occasions NOTIFY changed)
    Q_PROPERTY(QString occasion READ occasion NOTIFY changed)
    Q_PROPERTY(QString certainty READ certainty NOTIFY changed)
    Q_PROPERTY(double certain READ certain NOTIFY changed)
    Q_PROPERTY(QString certaintyProblem READ certaintyProblem NOTIFY changed)
    Q_PROPERTY(bool together READ isTogether WRITE setTogether NOTIFY changed)
    Q_PROPERTY(QString kit READ kit NOTIFY changed)
    Q_PROPERTY(QString selected READ selected WRITE select NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QStringList drawers READ drawers NOTIFY changed)
    Q_PROPERTY(int drawer READ drawer NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *rows READ rows CONSTANT)
    Q_PROPERTY(flarestock::Rows *sum READ sum CONSTANT)
    Q_PROPERTY(flarestock::Rows *bars READ bars CONSTANT)
public:
    explicit CarryDesk(Pen &pen, QObject *parent = nullptr);

    /// The shop as it is now; `isOther`: not the one that was on the desk before.
    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    [[nodiscard]] bool isLoading() const
    {
        return m_workshop && m_problem.isEmpty() && (m_making.isUnderWay() || !m_book);
    }
    [[nodiscard]] QString problem() const { return m_problem; } ///< Why nothing could be reckoned.
    [[nodiscard]] QStringList occasions() const;
    [[nodiscard]] QString occasion() const; ///< The one of occasions() that holds.
    [[nodiscard]] QString certainty() const { return m_certainty; } ///< As it was typed.
    [[nodiscard]] double certain() const { return m_wanted; }       ///< 0 to 1.
    [[nodiscard]] QString certaintyProblem() const { return m_certaintyProblem; }
    [[nodiscard]] bool isTogether() const { return m_isTogether; }
    void setTogether(bool together);
    [[nodiscard]] QString kit() const; ///< What it costs and covers; empty where none is asked for.
    [[nodiscard]] QString selected() const { return m_selected; } ///< A key of rows().
    void select(const QString &number);
    [[nodiscard]] QString sentence() const; ///< Of the one in hand.
    [[nodiscard]] QStringList drawers() const;
    /// Of drawers(): the one that is to hold the part in hand already, or where it lies, or where
    /// its kind is kept; -1: none of these.
    [[nodiscard]] int drawer() const;
    [[nodiscard]] Rows *rows() { return &m_rows; }
    [[nodiscard]] Rows *sum() { return &m_sum; }
    [[nodiscard]] Rows *bars() { return &m_bars; }

    Q_INVOKABLE void carryFor(int occasion); ///< One of occasions().
    /// "95 %", "0.95"; certaintyProblem() says what is wrong with it.
    Q_INVOKABLE void beCertain(const QString &typed);
    /// Another part than those of spares.csv, by its number. Whether the shop has it.
    Q_INVOKABLE bool add(const QString &number);
    /// Makes what is found for the part in hand what one of drawers() is to hold.
    Q_INVOKABLE void keep(int drawer);
    /// The same of all parts: each in the drawer that is to hold some already, else in that one.
    Q_INVOKABLE void keepAll(int drawer);

Q_SIGNALS:
    void changed();

private:
    void make();
    void reckon();
    void show();
    [[nodiscard]] CarryBook::Asked asked() const;
    [[nodiscard]] std::optional<std::string> drawerOf(std::string_view part) const;
    [[nodiscard]] std::optional<std::string> likelyDrawer(const Part &part) const;
    [[nodiscard]] std::vector<CarriedPart> found(const std::string &drawer) const;
    void write(const QString &sentence, const std::vector<CarriedPart> &parts);

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<void>(const LookUp &look)> m_read; ///< As ShopOnDesk::read.
    std::shared_ptr<const SpareBook> m_spares; ///< Of m_workshop; nothing: not read yet.
    std::shared_ptr<const CarryBook> m_book;
    bool m_isLooking = false;
    bool m_isStale = true; ///< The book is of a shop of before, or something else was asked for.
    QString m_problem;
    std::size_t m_occasion = 0;
    QString m_certainty;
    double m_wanted = 0.95;
    QString m_certaintyProblem;
    bool m_isTogether = false;
    std::vector<std::string> m_added;
    QString m_selected;
    Rows m_rows;
    Rows m_sum;
    Rows m_bars;
    Errand m_making; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
