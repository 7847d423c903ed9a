// SPDX-License-Identifier: MIT
//
// Lot search: where a lot, a serial, a tag or a part came from and went, which cars carry it, and
// what to do about it, as a list. What happened is read away from the window.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/service/garage_book.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_reading.h"
#include "app/desk/words/units.h"
#include "app/garage/lots/lot_trace.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class LotSearch : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString asked READ asked NOTIFY changed)
    Q_PROPERTY(QString says READ says NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *acts READ acts CONSTANT)
    Q_PROPERTY(flarestock::Rows *came READ came CONSTANT)
public:
    explicit LotSearch(QObject *parent = nullptr);

    /// What is asked about is sought anew in another book.
    void setBook(const std::shared_ptr<const GarageBook> &book, const ReadShop &read);
    void setUnits(Units units);
    void seek(const QString &what);
    void forget();

    [[nodiscard]] bool isBusy() const { return m_seeking.isUnderWay(); }
    [[nodiscard]] QString asked() const { return m_asked; }
    /// What there is to say where the list is empty: what to do first, what was not found.
    [[nodiscard]] QString says() const;
    /// mark todo title amount where detail free says; the key is the number in the list.
    [[nodiscard]] Rows *acts() { return &m_acts; }
    /// head title detail figure flagged says: where it came from and went.
    [[nodiscard]] Rows *came() { return &m_came; }
    /// The position of a car that a row of acts() is about; an empty one where it is in none.
    [[nodiscard]] CarPosition at(const QString &key) const;

Q_SIGNALS:
    void changed();

private:
    void showRows();

    std::shared_ptr<const GarageBook> m_book;
    ReadShop m_read;
    Units m_units = Units::Metric;
    QString m_asked;
    QString m_problem;
    std::shared_ptr<const LotTrace> m_trace; ///< Of m_traced.
    std::shared_ptr<const GarageBook> m_traced;
    bool m_seekAgain = false;
    Rows m_acts;
    Rows m_came;
    Errand m_seeking; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
