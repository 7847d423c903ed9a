// SPDX-License-Identifier: MIT
//
// Part photo: what the part in hand looks like, where somebody has put a picture beside it; put
// there and put away as a step of the shop.

#pragma once

#include "app/desk/shop/pen.h"
#include "app/desk/stock/deeds/stock_deed.h"

#include <QUrl>

namespace flarestock {

class PartPhoto : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QUrl source READ source NOTIFY changed)
    Q_PROPERTY(QString says READ says NOTIFY changed)
public:
    explicit PartPhoto(Pen &pen, QObject *parent = nullptr) : QObject(parent), m_pen(pen) {}

    /// What there is in hand now.
    void show(const DeedSubject &subject);

    [[nodiscard]] QUrl source() const { return m_source; } ///< Empty where there is none.
    [[nodiscard]] QString says() const;                    ///< "photo of AD-8-8"

    /// Its buttons among the deeds: "photo", and "noPhoto" where there is one: deedCells().
    [[nodiscard]] std::vector<Row> deeds() const;

    /// A picture file beside the part in hand, in place of the one before.
    Q_INVOKABLE void put(const QUrl &file);
    Q_INVOKABLE void putAway();

Q_SIGNALS:
    void changed();

private:
    Pen &m_pen;
    std::string m_part;     ///< Empty: none is in hand.
    std::string m_document; ///< As the shop has it.
    QUrl m_source;
};

} // namespace flarestock
