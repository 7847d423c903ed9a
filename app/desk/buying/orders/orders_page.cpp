// SPDX-License-Identifier: MIT

#include "app/desk/buying/orders/orders_page.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/orders/orders_told.h"
#include "app/desk/papers/desk_speech.h"
#include "app/desk/words/spoken.h"
#include "app/sheet/order_rows.h"

#include <algorithm>
#include <utility>

namespace flarestock {

namespace {

QStringList deedCellNames()
{
    return {QStringLiteral("label"), QStringLiteral("ready"), QStringLiteral("detail")};
}

Row deed(const char *name, const QString &label, bool ready, const QString &detail)
{
    return {QString::fromLatin1(name), {label, ready, detail}};
}

std::vector<Row> deedsFor(const BookedOrder *order)
{
    const bool isDraft = order && order->standing() == OrderStanding::Draft;
    const bool isOpen = order && order->isOnItsWay();
    const bool canEnd = order && order->now().state == OrderState::Placed && isOpen;
    const bool canCancel = isDraft || (canEnd && !order->hasCome());
    const QString none = BuyingWords::tr("No order is in hand.");
    const auto why = [&](bool can, const QString &what, const QString &whyNot) {
        return !order ? none : can ? what : whyNot;
    };
    return {
        deed("place", BuyingWords::tr("Place"), isDraft,
             why(isDraft, BuyingWords::tr("It goes out and counts as on its way."),
                 BuyingWords::tr("Only a draft is placed."))),
        deed("receive", BuyingWords::tr("Receive a box"), isOpen,
             why(isOpen, BuyingWords::tr("What came of it is ticked off, piece by piece."),
                 isDraft ? BuyingWords::tr("It is a draft; place it first.")
                         : BuyingWords::tr("Nothing of it is still to come."))),
        deed("change", BuyingWords::tr("Change"), isDraft || isOpen,
             why(isDraft || isOpen, BuyingWords::tr("A line, its day, its freight, its note."),
                 BuyingWords::tr("It is over."))),
        deed("close", BuyingWords::tr("Close"), canEnd,
             why(canEnd, BuyingWords::tr("Nothing more of it is awaited."),
                 BuyingWords::tr("Only an order that is on its way is closed."))),
        deed("cancel", BuyingWords::tr("Cancel"), canCancel,
             why(canCancel, BuyingWords::tr("It is not wanted; tell the supplier if he has it."),
                 BuyingWords::tr("Something of it has come, or it is over."))),
        deed("late", BuyingWords::tr("Late invoice"), order && order->hasCome(),
             why(order && order->hasCome(),
                 BuyingWords::tr("Freight, duty or a credit that came after the pieces."),
                 BuyingWords::tr("Nothing has come of it that could bear a cost."))),
    };
}

/// The number of the order that an action opens; empty where it opens none.
QString openedIn(const Action &action)
{
    for (const Record &record : action.records) {
        const auto order = Order::read(record);
        if (order && !order->before)
            return said(order->number);
    }
    return {};
}

} // namespace

OrdersPage::OrdersPage(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_orders(orderListCells()), m_lines(orderLineCells()),
      m_sums(orderSumCells()), m_facts(orderFactCells()), m_deeds(deedCellNames()), m_form(pen)
{
    connect(&pen, &Pen::wrote, this,
            [this](const std::shared_ptr<const Wrote> &wrote, const QString &, bool isBack) {
                if (!isBack && m_form.isFor(OrderDeed::New))
                    m_opened = openedIn(wrote->action);
            });
}

void OrdersPage::setShop(const ShopOnDesk &shop, const std::string &today)
{
    m_read = shop.read;
    m_today = today;
}

void OrdersPage::show(const std::shared_ptr<const Workshop> &workshop, std::vector<Row> orders,
                      Units units)
{
    m_workshop = workshop;
    m_units = units;
    m_all = std::move(orders);
    showList();
}

void OrdersPage::find(const QString &typed)
{
    if (std::exchange(m_typed, typed) != typed)
        showList();
}

void OrdersPage::showList()
{
    std::vector<Row> shown;
    std::copy_if(m_all.begin(), m_all.end(), std::back_inserter(shown), [this](const Row &row) {
        return hasWords(row.cells.constLast().toString(), m_typed);
    });
    m_orders.become(std::move(shown));
    if (m_orders.rowOf(m_opened) >= 0) // What was made by hand is in hand.
        m_selected = std::exchange(m_opened, {});
    if (m_orders.rowOf(m_selected) < 0)
        m_selected = keyAt(0);
    showSelected();
}

const BookedOrder *OrdersPage::inHand() const
{
    return m_workshop ? m_workshop->bought.orders.order(m_selected.toStdString()) : nullptr;
}

void OrdersPage::showSelected()
{
    const BookedOrder *order = inHand();
    m_lines.become(order ? orderLineRows(*order, *m_workshop, m_units, m_today)
                         : std::vector<Row>());
    m_sums.showOther(order ? orderSumRows(*order, *m_workshop) : std::vector<Row>());
    m_facts.showOther(order ? orderFactRows(*order, *m_workshop, m_today) : std::vector<Row>());
    m_deeds.become(deedsFor(order));
    if (m_lines.rowOf(m_line) < 0)
        m_line = m_lines.cell(0, QStringLiteral("key")).toString();
    Q_EMIT changed();
}

void OrdersPage::select(const QString &number)
{
    if (number == m_selected || !m_workshop ||
        !m_workshop->bought.orders.order(number.toStdString()))
        return;
    if (m_orders.rowOf(number) < 0)
        find({});
    m_selected = number;
    showSelected();
}

void OrdersPage::setLine(const QString &part)
{
    if (part == m_line || m_lines.rowOf(part) < 0)
        return;
    m_line = part;
    Q_EMIT changed();
}

QString OrdersPage::heading() const
{
    const BookedOrder *order = inHand();
    return order ? tr("%1, %2").arg(m_selected,
                                    saidSupplier(order->now().supplier, m_workshop->catalogue))
                 : QString();
}

QString OrdersPage::state() const
{
    const BookedOrder *order = inHand();
    return order ? saidOrderState(order->standing()) : QString();
}

QString OrdersPage::nothing() const
{
    if (!m_workshop)
        return tr("Reading the orders …");
    if (m_orders.count() > 0)
        return {};
    return m_all.empty() ? tr("No order was made yet. Make drafts out of the slips, or a new one.")
                         : tr("No order is like that.");
}

QString OrdersPage::keyAt(int row) const
{
    return m_orders.cell(row, QStringLiteral("key")).toString();
}

bool OrdersPage::begin(const QString &name)
{
    if (!m_workshop)
        return false;
    const OrderSubject subject{m_workshop, m_selected.toStdString(), m_line.toStdString()};
    if (name == QStringLiteral("new")) {
        m_form.begin(OrderDeed::New, {m_workshop, {}, {}});
        return true;
    }
    const int row = m_deeds.rowOf(name);
    if (!m_deeds.cell(row, QStringLiteral("ready")).toBool())
        return false;
    if (name == QStringLiteral("close"))
        m_pen.act(tr("Order %1 closed.").arg(m_selected), orderEnd(subject, OrderState::Closed));
    else if (name == QStringLiteral("cancel") && inHand()->now().state == OrderState::Draft)
        m_pen.act(tr("Order %1 cancelled.").arg(m_selected),
                  orderEnd(subject, OrderState::Cancelled));
    else if (name != QStringLiteral("receive")) {
        m_form.begin(name == QStringLiteral("place")    ? OrderDeed::Place
                     : name == QStringLiteral("change") ? OrderDeed::Change
                     : name == QStringLiteral("cancel") ? OrderDeed::Cancel
                                                        : OrderDeed::Late,
                     subject);
        return true;
    }
    return false;
}

void OrdersPage::writePaper(const QString &kind, const QUrl &file)
{
    if (!inHand() || !m_read || m_writing.isUnderWay())
        return;
    const std::string path = file.toLocalFile().toStdString();
    PaperAsked asked;
    (kind == QStringLiteral("csv")    ? asked.csv
     : kind == QStringLiteral("xlsx") ? asked.xlsx
                                      : asked.pdf) = path;
    if (kind == QStringLiteral("pdf"))
        asked.speech = deskSpeech(m_units);
    m_writing.run([this, asked, path, read = m_read, number = m_selected]() -> Errand::Back {
        const auto done = read([&](const ShopFile &shop, const Workshop &now) -> Result<void> {
            const BookedOrder *order = now.bought.orders.order(number.toStdString());
            if (order == nullptr)
                return problem("order " + number.toStdString(), "is not in this shop any more");
            const auto can = canWritePapers(asked, shop);
            return can ? writePapers(asked, shop, orderPapers(order->now(), now.catalogue)) : can;
        });
        return [this, done, path, number] {
            Q_EMIT told(done ? tr("Order %1 is written to %2.").arg(number, said(path))
                             : saidProblem(done.error()));
            Q_EMIT changed();
        };
    });
    Q_EMIT changed();
}

} // namespace flarestock
