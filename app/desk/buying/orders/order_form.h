// SPDX-License-Identifier: MIT
//
// Order form: what is filled in before an order is made by hand, placed or changed, or before what
// was charged late is put on what came of it. The buyer's own code makes the step, as it does for
// the commands.

#pragma once

#include "app/desk/form/form.h"
#include "app/workshop/workshop.h"

namespace flarestock {

enum class OrderDeed : std::uint8_t { New, Place, Change, Late, Cancel };

/// The order that it is done with; a new one has no number.
struct OrderSubject {
    std::shared_ptr<const Workshop> workshop;
    std::string number;
    std::string part; ///< Of the line in hand; may be empty.

    [[nodiscard]] const BookedOrder *order() const; ///< nullptr where it has no number.
};

class OrderForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    explicit OrderForm(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    void begin(OrderDeed deed, const OrderSubject &subject);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    [[nodiscard]] QString outlook() const override { return m_outlook; }
    [[nodiscard]] QString fieldOf(const QString &code) const override;
    /// Says where more pieces would cost no more.
    void lookAhead(const QVariantMap &values) override;
    void carryOut(const QVariantMap &values) override;
    [[nodiscard]] bool isFor(OrderDeed deed) const { return m_deed == deed; }

private:
    std::optional<OrderDeed> m_deed;
    OrderSubject m_subject;
    QString m_outlook;
};

/// What more pieces of the line that is filled in would cost where that is no more; else empty.
[[nodiscard]] QString saidMoreForNoMore(OrderDeed deed, const OrderSubject &subject,
                                        const QVariantMap &values);
/// The fields of its form.
[[nodiscard]] std::vector<Row> orderFields(OrderDeed deed, const OrderSubject &subject);
/// What was filled in as an action; an order that has gone on since is refused.
[[nodiscard]] Pen::MadeBy orderStep(OrderDeed deed, const OrderSubject &subject,
                                    const QVariantMap &values);
/// Closes or cancels it.
[[nodiscard]] Pen::MadeBy orderEnd(const OrderSubject &subject, OrderState state);

} // namespace flarestock
