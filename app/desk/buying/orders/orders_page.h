// SPDX-License-Identifier: MIT
//
// Orders page: the orders of the shop, the one in hand with its lines, what can be done with it,
// and its papers for the supplier.

#pragma once

#include "app/desk/buying/orders/order_form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/words/units.h"

#include <QUrl>

namespace flarestock {

class OrdersPage : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString selected READ selected WRITE select NOTIFY changed)
    Q_PROPERTY(QString line READ line WRITE setLine NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString state READ state NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(bool writing READ isWriting NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *orders READ orders CONSTANT)
    Q_PROPERTY(flarestock::Rows *lines READ lines CONSTANT)
    Q_PROPERTY(flarestock::Rows *sums READ sums CONSTANT)
    Q_PROPERTY(flarestock::Rows *facts READ facts CONSTANT)
    Q_PROPERTY(flarestock::Rows *deeds READ deeds CONSTANT)
    Q_PROPERTY(flarestock::OrderForm *form READ form CONSTANT)
public:
    explicit OrdersPage(Pen &pen, QObject *parent = nullptr);

    /// nullptr: nothing is known yet. `orders` are its orderListRows().
    void show(const std::shared_ptr<const Workshop> &workshop, std::vector<Row> orders,
              Units units);
    void setShop(const ShopOnDesk &shop, const std::string &today);
    void find(const QString &typed);

    [[nodiscard]] QString selected() const { return m_selected; }
    void select(const QString &number);
    [[nodiscard]] QString line() const { return m_line; } ///< The part of the line in hand.
    void setLine(const QString &part);
    [[nodiscard]] QString heading() const; ///< "2026-0007, Ridgemoor Fittings"
    [[nodiscard]] QString state() const;   ///< "placed", "partly received"
    [[nodiscard]] QString nothing() const; ///< What is said where no order is shown.
    [[nodiscard]] bool isWriting() const { return m_writing.isUnderWay(); } ///< A paper.
    [[nodiscard]] Rows *orders() { return &m_orders; }
    [[nodiscard]] Rows *lines() { return &m_lines; }
    [[nodiscard]] Rows *sums() { return &m_sums; }
    [[nodiscard]] Rows *facts() { return &m_facts; }
    /// label ready detail; "new", "place", "receive", "change", "close", "cancel", "late".
    [[nodiscard]] Rows *deeds() { return &m_deeds; }
    [[nodiscard]] OrderForm *form() { return &m_form; }

    /// Does what needs no form. Whether a form has to be filled in first, which is ready then.
    Q_INVOKABLE bool begin(const QString &deed);
    /// Its paper for the supplier: "pdf" in the desk's language, "english", "csv" or "xlsx".
    Q_INVOKABLE void writePaper(const QString &kind, const QUrl &file);
    Q_INVOKABLE QString keyAt(int row) const;

Q_SIGNALS:
    void changed();
    void told(const QString &sentence); ///< A paper was written, or why not.

private:
    void showList();
    void showSelected();
    [[nodiscard]] const BookedOrder *inHand() const;

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<void>(const LookUp &)> m_read;
    std::string m_today;
    Units m_units = Units::Metric;
    std::vector<Row> m_all;
    QString m_typed;
    QString m_selected;
    QString m_opened; ///< A new one, until the list has it.
    QString m_line;
    Rows m_orders;
    Rows m_lines;
    Rows m_sums;
    Rows m_facts;
    Rows m_deeds;
    OrderForm m_form;
    Errand m_writing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
