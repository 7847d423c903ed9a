// SPDX-License-Identifier: MIT
//
// Over time: how much of the part in hand was in stock over the last year, as a picture and as the
// sentence that says the same.

#pragma once

#include "app/desk/stock/overtime/on_hand.h"
#include "app/desk/stock/stock_book.h"
#include "app/desk/words/units.h"

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class OverTime : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool isThere READ isThere NOTIFY changed)
    Q_PROPERTY(QString says READ says NOTIFY changed)
    Q_PROPERTY(QString most READ most NOTIFY changed)
    Q_PROPERTY(QString from READ from NOTIFY changed)
    Q_PROPERTY(QString to READ to NOTIFY changed)
    Q_PROPERTY(double kept READ kept NOTIFY changed)
    Q_PROPERTY(QString keptWords READ keptWords NOTIFY changed)
    Q_PROPERTY(QVariantList steps READ steps NOTIFY changed)
public:
    explicit OverTime(QObject *parent = nullptr) : QObject(parent) {}

    /// Of an entry of the book; nothing is drawn where there is no time to look back on.
    void show(const OnHand &hand, const StockEntry &entry, Units units);
    void clear();

    [[nodiscard]] bool isThere() const { return m_hand.isThere() && m_part != nullptr; }
    /// "Between 3 and 14 over the last year; 11 now. 20 came, 9 went."
    [[nodiscard]] QString says() const;
    [[nodiscard]] QString most() const; ///< At the top of the picture; at its foot is nothing.
    [[nodiscard]] QString from() const; ///< The first day.
    [[nodiscard]] QString to() const;
    /// What the shop keeps of it, as a share of the height; below zero where that is not in the
    /// picture.
    [[nodiscard]] double kept() const;
    [[nodiscard]] QString keptWords() const;
    /// As StepDrawing takes them: of each day {at, level, came, went}, 0 to 1 from the left and
    /// from the foot; the first is where the picture begins.
    [[nodiscard]] QVariantList steps() const;

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] std::int64_t top() const;
    [[nodiscard]] QString amount(std::int64_t smallest) const;

    OnHand m_hand;
    const Part *m_part = nullptr; ///< Of the book that the panel shows.
    std::int64_t m_kept = 0;
    Units m_units = Units::Metric;
};

} // namespace flarestock
