// SPDX-License-Identifier: MIT
//
// Stock form: the deed that is being filled in, with its fields; and which deeds there are for the
// pieces in hand.

#pragma once

#include "app/desk/form/form.h"
#include "app/desk/stock/deeds/stock_deed.h"

namespace flarestock {

class StockForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::Rows *deeds READ deeds CONSTANT)
public:
    explicit StockForm(Pen &pen, QObject *parent = nullptr);

    /// What there is in hand now.
    void show(const DeedSubject &subject);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    [[nodiscard]] QString caution() const override;
    [[nodiscard]] Rows *deeds() { return &m_deeds; }

    /// Begins to fill in a deed, by its key in deeds(). Whether it can be done.
    Q_INVOKABLE bool begin(const QString &deed);
    /// A bin belongs to the place.
    QString fieldOf(const QString &code) const override;
    void carryOut(const QVariantMap &values) override;

private:
    [[nodiscard]] QString ownCaution() const; ///< Of the deed, wherever it is done.

    DeedSubject m_subject;
    DeedSubject m_begun; ///< As it was when the form was begun.
    std::optional<StockDeed> m_deed;
    Rows m_deeds;
};

} // namespace flarestock
