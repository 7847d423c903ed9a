// SPDX-License-Identifier: MIT
//
// Stock form: the deed that is being filled in, with its fields; and which deeds there are for the
// pieces in hand.

#pragma once

#include "app/desk/stock/deeds/stock_deed.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class StockForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString button READ button NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *deeds READ deeds CONSTANT)
    Q_PROPERTY(flarestock::Rows *fields READ fields CONSTANT)
public:
    explicit StockForm(Pen &pen, QObject *parent = nullptr);

    /// What there is in hand now.
    void show(const DeedSubject &subject);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString button() const;
    [[nodiscard]] QString caution() const; ///< Where the deed can hurt somebody; else empty.
    [[nodiscard]] Rows *deeds() { return &m_deeds; }
    [[nodiscard]] Rows *fields() { return &m_fields; }

    /// Begins to fill in a deed, by its key in deeds(). Whether it can be done.
    Q_INVOKABLE bool begin(const QString &deed);
    /// Which field a scanned code belongs to: a bin to the place; empty where to none.
    Q_INVOKABLE QString fieldOf(const QString &code) const;
    /// Writes it; by the keys of fields(), a choice as its number.
    Q_INVOKABLE void finish(const QVariantMap &values);

Q_SIGNALS:
    void changed();

private:
    Pen &m_pen;
    DeedSubject m_subject;
    DeedSubject m_begun; ///< As it was when the form was begun.
    std::optional<StockDeed> m_deed;
    Rows m_deeds;
    Rows m_fields;
};

} // namespace flarestock
