// SPDX-License-Identifier: MIT
//
// Place form: a new bin, drawer, car, supplier or borrower of the shop. A place stays: it is
// written beside the journal, and no step takes it back.

#pragma once

#include "app/desk/form/form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"

namespace flarestock {

/// Its button among the deeds: deedCells(), by the key "place".
[[nodiscard]] Row placeRow();

class PlaceForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool busy READ isBusy NOTIFY changed)
public:
    explicit PlaceForm(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    void setShop(const ShopOnDesk &shop) { m_change = shop.change; }
    Q_INVOKABLE bool begin();

    [[nodiscard]] bool isBusy() const { return m_writing.isUnderWay(); }
    [[nodiscard]] QString title() const override { return tr("A new place"); }
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override { return tr("Add it"); }
    void carryOut(const QVariantMap &values) override;

Q_SIGNALS:
    /// It stands in the shop, which is to be read anew.
    void wrote(const QString &sentence);

private:
    void write(const QVariantMap &values);

    std::function<Result<ShopFile>()> m_change;
    Errand m_writing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
