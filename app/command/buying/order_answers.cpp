// SPDX-License-Identifier: MIT

#include "app/command/buying/order_answers.h"

#include "app/buyer/ordering.h"
#include "app/command/buying/order_document.h"
#include "app/command/purchase/drafting.h"
#include "app/sheet/order_rows.h"

#include <QJsonArray>

#include <functional>

namespace flarestock {

namespace {

/// The order is written; only its paper is not.
Problem afterwards(Problem problem, const WrittenOrder &written)
{
    problem.remedy += " Order " + written.order.now().number + " is written: ask for its papers " +
                      "by flarestock order show.";
    return problem;
}

void say(const OrderAsked &asked, OpenShop &shop, const WrittenOrder &written,
         const std::string &done)
{
    const Catalogue &catalogue = shop.workshop->catalogue;
    const auto made = writePapers(asked, shop.file, orderPapers(written.order.now(), catalogue));
    if (!made)
        return shop.outcome.refuse(afterwards(made.error(), written));
    if (shop.asked.json) {
        QJsonObject document = orderDocument(written.order, catalogue);
        document.insert(QStringLiteral("record"), jsonText(written.record.text()));
        document.insert(QStringLiteral("already"), written.already);
        return shop.outcome.print(document);
    }
    shop.outcome.print((written.already ? "was done already: " : "") + done + ", record " +
                       written.record.text());
    shop.outcome.print(orderSheet(written.order, catalogue));
}

/// What a step makes of an order.
using Step = std::function<Result<Order>(const Order &now)>;
struct StepWords {
    std::optional<OrderState> becomes; ///< Nothing: it stays what it is.
    const char *done;
};

void answerStep(const OrderAsked &asked, OpenShop &shop, const StepWords &words, const Step &step)
{
    const auto order = orderAsked(asked.number, shop.workshop->bought.orders);
    if (!order)
        return shop.outcome.refuse(order.error());
    const std::string &number = (*order)->now().number;
    const std::string done = std::string(words.done) + ": order " + number;
    const auto repeated = repeatedStep(number, words.becomes, shop.file, shop.by);
    if (!repeated)
        return shop.outcome.refuse(repeated.error());
    if (*repeated)
        return say(asked, shop, **repeated, done);
    const auto next = step((*order)->now());
    if (!next)
        return shop.outcome.refuse(next.error());
    if (const auto can = canWritePapers(asked, shop.file); !can)
        return shop.outcome.refuse(can.error());
    const auto written = writeStep(*next, shop.file, shop.by);
    if (!written)
        return shop.outcome.refuse(written.error());
    say(asked, shop, *written, done);
}

} // namespace

void answerNewOrder(const OrderAsked &asked, OpenShop &shop)
{
    if (asked.fromPlan)
        return answerFromPlan(asked, shop);
    if (asked.supplier.empty())
        return shop.outcome.refuse({"--supplier", "is required",
                                    "Say whom the order goes to, or draft what is short: "
                                    "--from-plan."});
    OrderWords words = asked;
    const auto rates = ratesOf(shop.file);
    if (!rates)
        return shop.outcome.refuse(rates.error());
    words.written = *rates;
    const auto draft = newOrder(asked.supplier, words, *shop.workshop, shop.by.at);
    if (!draft)
        return shop.outcome.refuse(draft.error());
    if (const auto can = canWritePapers(asked, shop.file); !can)
        return shop.outcome.refuse(can.error());
    const auto written = openOrder(*draft, shop.file, shop.by);
    if (!written)
        return shop.outcome.refuse(written.error());
    say(asked, shop, *written, "drafted: order " + written->order.now().number);
}

void answerOrderList(const OrderAsked &asked, OpenShop &shop)
{
    std::vector<const BookedOrder *> orders;
    for (const auto &[number, order] : shop.workshop->bought.orders.orders) {
        const auto state = text(order.standing());
        const bool isOpen = order.standing() < OrderStanding::Closed;
        if (asked.state.empty() || asked.state == state || (asked.state == "open" && isOpen))
            orders.push_back(&order);
    }
    if (!asked.json)
        return shop.outcome.print(orderList(orders, shop.workshop->catalogue));
    QJsonArray entries;
    for (const BookedOrder *order : orders)
        entries.append(orderEntry(*order, shop.workshop->catalogue));
    shop.outcome.print(QJsonObject{{QStringLiteral("orders"), entries}});
}

void answerShowOrder(const OrderAsked &asked, OpenShop &shop)
{
    const auto order = orderAsked(asked.number, shop.workshop->bought.orders);
    if (!order)
        return shop.outcome.refuse(order.error());
    const auto making = orderPapers((*order)->now(), shop.workshop->catalogue);
    if (const auto made = writePapers(asked, shop.file, making); !made)
        return shop.outcome.refuse(made.error());
    if (asked.json)
        return shop.outcome.print(orderDocument(**order, shop.workshop->catalogue));
    shop.outcome.print(orderSheet(**order, shop.workshop->catalogue));
}

void answerPlaceOrder(const OrderAsked &asked, OpenShop &shop)
{
    answerStep(asked, shop, {OrderState::Placed, "placed"}, [&](const Order &now) {
        return orderPlaced(now, asked, *shop.workshop, shop.by.at);
    });
}

void answerChangeOrder(const OrderAsked &asked, OpenShop &shop)
{
    answerStep(asked, shop, {std::nullopt, "changed"},
               [&](const Order &now) { return orderChanged(now, asked, *shop.workshop); });
}

void answerCloseOrder(const OrderAsked &asked, OpenShop &shop)
{
    answerStep(asked, shop, {OrderState::Closed, "closed"},
               [](const Order &now) { return orderEnded(now, OrderState::Closed); });
}

void answerCancelOrder(const OrderAsked &asked, OpenShop &shop)
{
    answerStep(asked, shop, {OrderState::Cancelled, "cancelled"},
               [](const Order &now) { return orderEnded(now, OrderState::Cancelled); });
}

} // namespace flarestock
