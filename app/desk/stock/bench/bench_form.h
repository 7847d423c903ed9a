// SPDX-License-Identifier: MIT
//
// Bench form: the deed at the bench that is being filled in. While it is, what it would come to is
// reckoned away from the window: which piece a length comes off, what a box's contents are worth.

#pragma once

#include "app/desk/form/form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/stock/bench/bench_deed.h"

namespace flarestock {

class BenchForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::Rows *cuts READ cuts CONSTANT)
public:
    explicit BenchForm(Pen &pen, QObject *parent = nullptr);

    /// What there is in hand now.
    void show(const DeedSubject &subject) { m_subject = subject; }
    /// Begins to fill in a deed by its name. Whether it can be done.
    Q_INVOKABLE bool begin(const QString &deed);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    [[nodiscard]] QString caution() const override;
    [[nodiscard]] QString outlook() const override;
    /// Which piece gives which lengths, as bars: cutCells().
    [[nodiscard]] Rows *cuts() { return &m_cuts; }
    [[nodiscard]] bool isReckoning() const { return m_reckoning.isUnderWay(); }

    /// A bin belongs to the place.
    QString fieldOf(const QString &code) const override;
    void lookAhead(const QVariantMap &values) override;
    void carryOut(const QVariantMap &values) override;

private:
    [[nodiscard]] QString ownCaution() const; ///< Of the deed, wherever it is done.
    void reckon();

    DeedSubject m_subject;
    DeedSubject m_begun; ///< As it was when the form was begun.
    std::optional<BenchDeed> m_deed;
    QVariantMap m_values;
    bool m_again = false; ///< Something else was filled in while the outlook was reckoned.
    QStringList m_says;
    Rows m_cuts;
    Errand m_reckoning; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
