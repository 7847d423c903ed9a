// SPDX-License-Identifier: MIT
//
// The fields of an order's form, and what was filled in as an action of the journal.

#include "app/buyer/costing/late_charge.h"
#include "app/buyer/order_lines.h"
#include "app/buyer/ordering.h"
#include "app/buyer/planned.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/orders/order_form.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_day.h"
#include "app/desk/words/typed_figures.h"
#include "app/workshop/suppliers.h"

#include <QDate>

#include <array>

namespace flarestock {

namespace {

constexpr std::array LateKinds{LateKind::Freight, LateKind::Duty, LateKind::Tax, LateKind::Credit,
                               LateKind::Other};

/// As one can type it back.
QString asTyped(const Decimal &number)
{
    return localised(said(number.text()));
}

/// The price of a line where it is not the supplier's own for so many.
QString ownPrice(const Order &order, const OrderLine &line, const Workshop &shop)
{
    for (const Supplier &supplier : shop.catalogue.suppliers()) {
        const Part *part = supplier.id == order.supplier ? shop.catalogue.find(line.part) : nullptr;
        const Offer *offer = part ? offerOf(supplier, *part, shop.catalogue) : nullptr;
        if (offer && offer->priceEach(line.quantity) == line.priceEach)
            return {};
    }
    return asTyped(line.priceEach.stripped());
}

std::vector<Row> changeFields(const OrderSubject &subject)
{
    const Order &now = subject.order()->now();
    std::vector<Row> fields;
    if (now.state == OrderState::Draft) {
        const OrderLine *line = now.line(subject.part);
        fields.push_back(typedField("part", BuyingWords::tr("part"), said(subject.part),
                                    BuyingWords::tr("type or scan it; another one is a new line")));
        fields.push_back(
            figureField("quantity", BuyingWords::tr("how many, how much"),
                        line ? saidQuantity({line->quantity.stripped(), line->unit}) : QString(),
                        BuyingWords::tr("0: it is not ordered")));
        fields.push_back(
            figureField("price",
                        line && isLength(line->unit)
                            ? BuyingWords::tr("price of one %1").arg(said(text(line->unit)))
                            : BuyingWords::tr("price of one"),
                        line ? ownPrice(now, *line, *subject.workshop) : QString(),
                        BuyingWords::tr("empty: his price for so many")));
        fields.push_back(figureField("freight", BuyingWords::tr("freight"), asTyped(now.freight)));
        fields.push_back(figureField("discount", BuyingWords::tr("discount off the goods"),
                                     asTyped(now.discount)));
    }
    fields.push_back(typedField("due", BuyingWords::tr("is to be here on"), dayAsTyped(now.due),
                                dayAsTyped("2026-12-12")));
    fields.push_back(typedField("note", BuyingWords::tr("note for the supplier"), said(now.note)));
    return fields;
}

std::vector<Row> lateFields(const OrderSubject &subject)
{
    QStringList parts{BuyingWords::tr("all that came")};
    for (const OrderLine &line : subject.order()->now().lines)
        parts.append(said(line.part));
    return {figureField("amount", BuyingWords::tr("what was charged"), {},
                        said(subject.workshop->settings.currency.code())),
            choiceField("kind", BuyingWords::tr("for what"),
                        {BuyingWords::tr("freight"), BuyingWords::tr("duty"),
                         BuyingWords::tr("tax"), BuyingWords::tr("a credit: it is paid back"),
                         BuyingWords::tr("something else")}),
            choiceField("part", BuyingWords::tr("who bears it"), parts),
            typedField("document", BuyingWords::tr("whose paper says so"), {},
                       BuyingWords::tr("carrier's invoice 4711"))};
}

std::vector<Row> newFields(const OrderSubject &subject)
{
    QStringList suppliers;
    for (const Supplier &supplier : subject.workshop->catalogue.suppliers())
        suppliers.append(said(supplier.name.empty() ? supplier.id : supplier.name));
    return {choiceField("supplier", BuyingWords::tr("of whom"), suppliers),
            typedField("part", BuyingWords::tr("part"), said(subject.part),
                       BuyingWords::tr("type or scan it")),
            figureField("quantity", BuyingWords::tr("how many, how much"), {}),
            figureField("price", BuyingWords::tr("price of one"), {},
                        BuyingWords::tr("empty: his price for so many")),
            typedField("note", BuyingWords::tr("note for the supplier"), {})};
}

std::vector<std::string> lineTyped(const QVariantMap &values)
{
    std::string line = wordsIn(values, "part") + ' ' + figuresTyped(values, "quantity");
    if (const std::string price = figuresTyped(values, "price"); !price.empty())
        line += " at " + price;
    return {line};
}

/// Only what differs from the order as it stands is said.
OrderWords changeWords(const Order &now, const QVariantMap &values)
{
    OrderWords words;
    const std::string part = wordsIn(values, "part");
    if (!part.empty() && figuresTyped(values, "quantity") == "0")
        words.without = {part};
    else if (!part.empty())
        words.lines = lineTyped(values);
    const auto amount = [&](const char *key, const Decimal &was, std::string &word) {
        if (values.contains(QString::fromLatin1(key)) && figuresTyped(values, key) != was.text())
            word = figuresTyped(values, key);
    };
    amount("freight", now.freight, words.freight);
    amount("discount", now.discount, words.discount);
    if (const std::string due = dayTyped(values, "due"); due != now.due)
        words.due = due;
    const std::string note =
        values.value(QStringLiteral("note")).toString().trimmed().toStdString();
    if (note != now.note)
        words.note = note;
    return words;
}

Result<Action> lateAction(const std::string &number, const QVariantMap &values,
                          const ShopFile &file, const std::pair<const Workshop *, By> &shop)
{
    const auto &[now, by] = shop;
    LateWords words;
    words.order = number;
    const auto kind = static_cast<std::size_t>(values.value(QStringLiteral("kind")).toInt());
    words.kind = LateKinds.at(std::min(kind, LateKinds.size() - 1));
    const auto amount = lateAmountAsked(figuresTyped(values, "amount"), words.kind);
    if (!amount)
        return tl::unexpected(amount.error());
    words.amount = *amount;
    const auto &lines = now->bought.orders.order(number)->now().lines;
    const auto part = static_cast<std::size_t>(values.value(QStringLiteral("part")).toInt());
    if (part > 0 && part <= lines.size())
        words.onlyPart = lines[part - 1].part;
    words.document = values.value(QStringLiteral("document")).toString().trimmed().toStdString();
    auto made = chargedLate(words, {now->bought, file, *now}, by);
    if (!made)
        return tl::unexpected(made.error());
    return std::move(made->action);
}

Result<Action> newAction(const OrderSubject &subject, const QVariantMap &values,
                         const ShopFile &file, const std::pair<const Workshop *, By> &shop)
{
    const auto &[now, by] = shop;
    const auto suppliers = subject.workshop->catalogue.suppliers();
    const auto at = static_cast<std::size_t>(values.value(QStringLiteral("supplier")).toInt());
    if (at >= suppliers.size())
        return problem("the shop", "has no supplier", "Write one down first.");
    OrderWords words;
    words.lines = lineTyped(values);
    if (const QString note = values.value(QStringLiteral("note")).toString(); !note.isEmpty())
        words.note = note.trimmed().toStdString();
    const auto rates = ratesOf(file);
    if (!rates)
        return tl::unexpected(rates.error());
    words.written = *rates;
    const auto draft = newOrder(suppliers[at].id, words, *now, by.at);
    if (!draft)
        return tl::unexpected(draft.error());
    return openingOf({*draft}, file, by);
}

/// The order as it stands now. Problem: it has gone on since it was looked at.
Result<const BookedOrder *> asSeen(const OrderSubject &subject, const Workshop &now)
{
    auto order = orderAsked(subject.number, now.bought.orders);
    if (order && (*order)->now().id != subject.order()->now().id)
        return problem("order " + subject.number, "was changed at another seat just now",
                       "It is shown as it is now: look at it, then do it again.");
    return order;
}

} // namespace

QString saidMoreForNoMore(OrderDeed deed, const OrderSubject &subject, const QVariantMap &values)
{
    const Catalogue &catalogue = subject.workshop->catalogue;
    const auto suppliers = catalogue.suppliers();
    const auto at = static_cast<std::size_t>(values.value(QStringLiteral("supplier")).toInt());
    const BookedOrder *order = subject.order();
    const Supplier *supplier = deed == OrderDeed::New && at < suppliers.size() ? &suppliers[at]
                               : order ? supplierById(order->now().supplier, catalogue)
                                       : nullptr;
    if (!supplier || !values.contains(QStringLiteral("quantity")) ||
        !figuresTyped(values, "price").empty())
        return {};
    const auto asked = lineAsked(lineTyped(values).front(), *supplier, catalogue);
    const Part *part = asked ? catalogue.find(asked->line.part) : nullptr;
    const Offer *offer = part ? offerOf(*supplier, *part, catalogue) : nullptr;
    const auto more = offer ? moreForNoMore(*offer, asked->line.quantity) : std::nullopt;
    if (!more)
        return {};
    const Money cost{offer->priceEach(*more) * *more, offer->currency};
    return BuyingWords::tr("%1 of them come to no more: %2.")
        .arg(saidQuantity({more->stripped(), part->unit}),
             saidMoney(cost.toMinorDigits(Rounding::HalfEven)));
}

std::vector<Row> orderFields(OrderDeed deed, const OrderSubject &subject)
{
    switch (deed) {
    case OrderDeed::New:
        return newFields(subject);
    case OrderDeed::Change:
        return changeFields(subject);
    case OrderDeed::Late:
        return lateFields(subject);
    case OrderDeed::Cancel:
        return {};
    case OrderDeed::Place:
        break;
    }
    return {typedField("day", BuyingWords::tr("goes out on"), {}, BuyingWords::tr("empty: today")),
            typedField("due", BuyingWords::tr("is to be here on"),
                       dayAsTyped(subject.order()->now().due),
                       BuyingWords::tr("empty: each line by its lead time"))};
}

Pen::MadeBy orderStep(OrderDeed deed, const OrderSubject &subject, const QVariantMap &values)
{
    return [=](const ShopFile &file, const Workshop &now, const By &by) -> Result<ToWrite> {
        if (deed == OrderDeed::New)
            return newAction(subject, values, file, {&now, by});
        const auto order = asSeen(subject, now);
        if (!order)
            return tl::unexpected(order.error());
        if (deed == OrderDeed::Late)
            return lateAction(subject.number, values, file, {&now, by});
        OrderWords words;
        words.day = dayTyped(values, "day");
        if (const std::string due = dayTyped(values, "due"); due != (*order)->now().due)
            words.due = due;
        const auto next =
            deed == OrderDeed::Place
                ? orderPlaced((*order)->now(), words, now, by.at)
                : orderChanged((*order)->now(), changeWords((*order)->now(), values), now);
        if (!next)
            return tl::unexpected(next.error());
        return stepOf(*next, by);
    };
}

Pen::MadeBy orderEnd(const OrderSubject &subject, OrderState state)
{
    return [=](const ShopFile &, const Workshop &now, const By &by) -> Result<ToWrite> {
        const auto order = asSeen(subject, now);
        if (!order)
            return tl::unexpected(order.error());
        const auto next = orderEnded((*order)->now(), state);
        if (!next)
            return tl::unexpected(next.error());
        return stepOf(*next, by);
    };
}

} // namespace flarestock
