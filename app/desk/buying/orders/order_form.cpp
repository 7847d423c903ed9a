// SPDX-License-Identifier: MIT

#include "app/desk/buying/orders/order_form.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

/// "Order 2026-0007 drafted." of a new one, which gets its number when it is written.
QString saidNew(const Wrote &wrote)
{
    for (const Record &record : wrote.action.records)
        if (const auto order = Order::read(record))
            return BuyingWords::tr("Order %1 drafted.").arg(said(order->number));
    return BuyingWords::tr("Drafted.");
}

QString saidStep(OrderDeed deed, const QString &number)
{
    if (deed == OrderDeed::Place)
        return BuyingWords::tr("Order %1 placed.").arg(number);
    return deed == OrderDeed::Change ? BuyingWords::tr("Order %1 changed.").arg(number)
                                     : BuyingWords::tr("Charged late on order %1.").arg(number);
}

} // namespace

const BookedOrder *OrderSubject::order() const
{
    return workshop->bought.orders.order(number);
}

void OrderForm::begin(OrderDeed deed, const OrderSubject &subject)
{
    pen().hear();
    m_deed = deed;
    m_subject = subject;
    m_outlook.clear();
    ask(orderFields(deed, subject));
    Q_EMIT changed();
}

QString OrderForm::title() const
{
    if (!m_deed)
        return {};
    const QString number = said(m_subject.number);
    switch (*m_deed) {
    case OrderDeed::New:
        return tr("A new order");
    case OrderDeed::Place:
        return tr("Place order %1").arg(number);
    case OrderDeed::Change:
        return tr("Change order %1").arg(number);
    case OrderDeed::Cancel:
        return tr("Cancel order %1?").arg(number);
    case OrderDeed::Late:
        break;
    }
    return tr("What came late on order %1").arg(number);
}

QString OrderForm::about() const
{
    if (!m_deed)
        return {};
    switch (*m_deed) {
    case OrderDeed::New:
        return tr("It begins as a draft with one line; more are added by changing it.");
    case OrderDeed::Place:
        return tr("From now on it counts as on its way. Send its paper to the supplier: nothing is "
                  "sent from here.");
    case OrderDeed::Change:
        return m_subject.order()->now().state == OrderState::Placed
                   ? tr("It is with the supplier: only its day and its note change here.")
                   : QString();
    case OrderDeed::Cancel:
        return tr("It is with the supplier: tell him, nothing is sent from here. Its pieces are no "
                  "longer expected, and what waits for them is short again.");
    case OrderDeed::Late:
        break;
    }
    return tr(
        "What is still here becomes dearer by its share; what has been built in keeps the cost "
        "that it was built in with.");
}

QString OrderForm::button() const
{
    if (!m_deed)
        return {};
    switch (*m_deed) {
    case OrderDeed::New:
        return tr("Draft it");
    case OrderDeed::Place:
        return tr("Place it");
    case OrderDeed::Change:
        return tr("Change it");
    case OrderDeed::Cancel:
        return tr("Cancel it");
    case OrderDeed::Late:
        break;
    }
    return tr("Put it on the cost");
}

QString OrderForm::fieldOf(const QString &code) const
{
    const bool hasPart = m_deed == OrderDeed::New || m_deed == OrderDeed::Change;
    if (!hasPart || !m_subject.workshop->part(code.trimmed().toStdString()) ||
        shownFields().rowOf(QStringLiteral("part")) < 0)
        return {};
    return QStringLiteral("part");
}

void OrderForm::lookAhead(const QVariantMap &values)
{
    if (!m_deed || !m_subject.workshop)
        return;
    m_outlook = saidMoreForNoMore(*m_deed, m_subject, values);
    Q_EMIT outlookChanged();
}

void OrderForm::carryOut(const QVariantMap &values)
{
    if (!m_deed)
        return;
    if (*m_deed == OrderDeed::New)
        return pen().act(Pen::Sentence(saidNew), orderStep(*m_deed, m_subject, values));
    if (*m_deed == OrderDeed::Cancel)
        return pen().act(tr("Order %1 cancelled.").arg(said(m_subject.number)),
                         orderEnd(m_subject, OrderState::Cancelled));
    pen().act(saidStep(*m_deed, said(m_subject.number)), orderStep(*m_deed, m_subject, values));
}

} // namespace flarestock
