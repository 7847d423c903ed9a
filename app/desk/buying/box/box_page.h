// SPDX-License-Identifier: MIT
//
// Box page: a box that came of an order on the bench: its pieces and what lies in their boxes,
// ticked off by hand or by scanner; what is wrong with it; and, once it is put away, what it did to
// cost.

#pragma once

#include "app/desk/buying/box/ticks.h"
#include "app/desk/buying/box/trouble_form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/words/units.h"

namespace flarestock {

class BoxPage : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString order READ order NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString count READ count NOTIFY changed)
    Q_PROPERTY(QString lacking READ lacking NOTIFY changed)
    Q_PROPERTY(QString result READ result NOTIFY changed)
    Q_PROPERTY(int row READ row WRITE setRow NOTIFY rowChanged)
    Q_PROPERTY(QString document READ document WRITE setDocument NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *ticks READ ticks CONSTANT)
    Q_PROPERTY(flarestock::Rows *troubles READ troubles CONSTANT)
    Q_PROPERTY(flarestock::Rows *came READ came CONSTANT)
    Q_PROPERTY(flarestock::TroubleForm *form READ form CONSTANT)
public:
    explicit BoxPage(Pen &pen, QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop, bool isOther);
    void setUnits(Units units);

    [[nodiscard]] QString order() const { return m_order; } ///< Its number; empty: none is open.
    [[nodiscard]] QString heading() const;                  ///< "Box of 2026-0007, Ridgemoor"
    [[nodiscard]] QString count() const;                    ///< "7 of 8 ticked"
    [[nodiscard]] QString lacking() const; ///< What of it becomes a claim, as a sentence.
    [[nodiscard]] QString result() const { return m_result; } ///< What came of it; empty before.
    [[nodiscard]] QString document() const { return m_document; } ///< The delivery note's number.
    void setDocument(const QString &document);
    /// part what amount came length mark markHint to content full lacks says; the key is its row.
    [[nodiscard]] Rows *ticks() { return &m_rows; }
    [[nodiscard]] Rows *troubles() { return &m_troubles; } ///< sentence
    [[nodiscard]] Rows *came() { return &m_came; }         ///< title detail flagged
    [[nodiscard]] TroubleForm *form() { return &m_form; }

    /// Opens a box of an order. Whether something of it is still to come.
    Q_INVOKABLE bool open(const QString &order);
    Q_INVOKABLE void close();
    Q_INVOKABLE void toggle(int row);
    Q_INVOKABLE void step(int row, int by); ///< One more, one less.
    Q_INVOKABLE void tickAll();
    /// So much of a length, as it is typed.
    Q_INVOKABLE void setAmount(int row, const QString &typed);
    Q_INVOKABLE void setMark(int row, const QString &mark);
    Q_INVOKABLE void setPlace(int row, const QString &place);
    [[nodiscard]] int row() const { return m_row; } ///< In hand; -1: none.
    void setRow(int row)
    {
        if (std::exchange(m_row, row) != row)
            Q_EMIT rowChanged();
    }
    /// Whether a box is being ticked off.
    [[nodiscard]] bool isOnBench() const { return !m_order.isEmpty() && m_result.isEmpty(); }
    /// A part number, the supplier's or ours, ticks a piece; with its lot, "PART=LOT", it also
    /// marks it. What is no part of the shop is the serial or lot of the row in hand. The row; -1
    /// where it is none of the box.
    Q_INVOKABLE int scan(const QString &code);
    /// Says that a code means nothing here.
    void isNoneOfIt(const QString &code);
    /// Something is wrong with a row: form() is ready to say what.
    Q_INVOKABLE void beginTrouble(int row);
    Q_INVOKABLE void dropTrouble(int trouble);
    /// Books it in, with its claims.
    Q_INVOKABLE void putAway();

Q_SIGNALS:
    void changed();
    void ticked(int row); ///< By a scan: the line that the code belongs to is in hand now.
    void rowChanged();
    void noted(); ///< What is wrong with a line was filled in.

private:
    /// Ticks or marks what the code means. Its row.
    [[nodiscard]] std::optional<std::size_t> take(const QString &code);
    void showTicks();
    [[nodiscard]] bool asksForMark();
    void keepTicks(); ///< For a desk that ends in the midst of it.
    void empty();
    [[nodiscard]] QString name() const; ///< Of what is kept.
    [[nodiscard]] ReceivingWords words() const;
    void told(const std::shared_ptr<const Wrote> &wrote);

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop; ///< The ticks point into it.
    std::shared_ptr<const Workshop> m_newest;
    std::function<Result<std::vector<Movement>>(const std::string &)> m_history;
    Units m_units = Units::Metric;
    QString m_order;
    QString m_document;
    QString m_result;
    int m_row = -1;
    bool m_isPuttingAway = false;
    Ticks m_ticks;
    std::vector<Trouble> m_wrong;
    Rows m_rows;
    Rows m_troubles;
    Rows m_came;
    TroubleForm m_form;
    Errand m_reading; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
