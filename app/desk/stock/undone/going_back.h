// SPDX-License-Identifier: MIT
//
// Going back: something that happened to the part in hand is taken back, however long ago, with all
// that was done together with it. What that is, is read and said before.

#pragma once

#include "app/desk/form/form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/desk/words/units.h"

namespace flarestock {

class GoingBack : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    using Read = std::function<Result<void>(const LookUp &look)>;

    explicit GoingBack(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    void setShop(const Read &read) { m_read = read; }
    void setUnits(Units units) { m_units = units; }
    /// By a movement's id, and what is said of it. Whether it is one.
    Q_INVOKABLE bool begin(const QString &movement, const QString &what);

    [[nodiscard]] QString title() const override { return tr("Take back"); }
    [[nodiscard]] QString about() const override { return m_what; }
    [[nodiscard]] QString button() const override { return tr("Take it back"); }
    [[nodiscard]] QString caution() const override;
    [[nodiscard]] QString outlook() const override { return m_says.join(u'\n'); }
    [[nodiscard]] bool isReading() const { return m_reading.isUnderWay(); }
    void carryOut(const QVariantMap &values) override;

private:
    Read m_read;
    Units m_units = Units::Metric;
    std::optional<MovementId> m_movement;
    QString m_what;
    QStringList m_says; ///< What goes back.
    Errand m_reading;   ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
