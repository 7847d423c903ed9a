// SPDX-License-Identifier: MIT

#include "app/buyer/ordering.h"

#include "app/workshop/clock.h"

#include <algorithm>

namespace flarestock {

namespace {

/// So many seats may have drawn a number between this one's drawing and its writing.
constexpr int Draws = 200;

Result<WrittenOrder> asItStands(const std::string &number, const ShopFile &file,
                                const Appended &written)
{
    const auto book = buyingOf(file);
    if (!book)
        return tl::unexpected(book.error());
    const BookedOrder *order = book->order(number);
    if (!order)
        return problem("order " + number, "was taken back by its action", "Make it again.");
    return WrittenOrder{*order, written.movement, written.already};
}

tl::unexpected<Problem> otherUnder(const MovementId &id)
{
    return problem("record " + id.text(), "stands in the journal already and says something else",
                   "Give this one an id of its own.");
}

/// The step of an id that stands in the journal; nothing where it does not.
Result<std::optional<Order>> writtenStep(const MovementId &id, const ShopFile &file)
{
    const auto record = file.recordOf(id);
    if (!record)
        return tl::unexpected(record.error());
    if (!*record)
        return std::optional<Order>();
    if ((*record)->kind != RecordKind::Order)
        return otherUnder(id);
    auto order = Order::read(**record);
    if (!order)
        return tl::unexpected(order.error());
    return std::optional(std::move(*order));
}

bool ordersTheSame(const Order &a, const Order &b)
{
    if (a.supplier != b.supplier || a.lines.size() != b.lines.size())
        return false;
    return std::equal(a.lines.begin(), a.lines.end(), b.lines.begin(),
                      [](const OrderLine &one, const OrderLine &other) {
                          return one.part == other.part && one.quantity == other.quantity;
                      });
}

Order signedBy(const Order &order, const By &by)
{
    Order signedOne = order;
    signedOne.id = by.action.value_or(freshId());
    signedOne.who = by.who;
    signedOne.at = by.at;
    return signedOne;
}

/// Gives each the next number of its year, and makes the action that writes them.
Result<Action> drawNumbers(std::vector<Order> &orders, const ShopFile &file)
{
    auto book = buyingOf(file);
    if (!book)
        return tl::unexpected(book.error());
    Action action;
    for (Order &order : orders) {
        order.number = book->nextNumber(order.day.substr(0, 4));
        if (const auto fault = order.fault(); !fault.empty())
            return problem("the order to " + order.supplier, fault, "Correct what was typed.");
        book->orders[order.number].steps.push_back(order);
        action.records.push_back(order.asRecord());
    }
    return action;
}

/// Signed as one action, in whose order their ids follow each other.
std::vector<Order> signedTogether(const std::vector<Order> &drafts, const By &by)
{
    std::vector<Order> orders;
    const MovementId action = by.action.value_or(freshId());
    for (const Order &draft : drafts) {
        orders.push_back(signedBy(draft, by));
        orders.back().id = idWithin(action, orders.size() - 1);
    }
    return orders;
}

Result<std::vector<WrittenOrder>> allAsTheyStand(const std::vector<Order> &orders,
                                                 const ShopFile &file, bool already)
{
    std::vector<WrittenOrder> standing;
    for (const Order &order : orders) {
        auto one = asItStands(order.number, file, {order.id, already});
        if (!one)
            return tl::unexpected(one.error());
        standing.push_back(std::move(*one));
    }
    return standing;
}

tl::unexpected<Problem> stands(const Order &now, const char *remedy)
{
    const std::string state =
        now.state == OrderState::Draft ? "a draft" : std::string(text(now.state));
    return problem("order " + now.number, "is " + state, remedy);
}

Order after(const Order &now)
{
    Order next = now;
    next.before = now.id;
    return next;
}

} // namespace

Result<Order> orderPlaced(const Order &now, const OrderWords &words, const Workshop &workshop,
                          std::int64_t at)
{
    if (now.state != OrderState::Draft)
        return stands(now, "Only a draft is placed.");
    const auto day = dayAsked(words.day, at);
    const auto due = dayAsked(words.due, at);
    if (!day || !due)
        return tl::unexpected(day ? due.error() : day.error());
    Order next = after(now);
    next.state = OrderState::Placed;
    next.day = *day;
    if (words.due.empty()) {
        const bool isPromised = !next.due.empty() && !next.hasDaysByLine();
        return isPromised ? next : withDaysOf(std::move(next), *day, workshop.catalogue);
    }
    next.due = *due;
    for (OrderLine &line : next.lines)
        line.due.clear();
    return next;
}

Result<Order> orderChanged(const Order &now, const OrderWords &words, const Workshop &workshop)
{
    const bool buysElse = !words.lines.empty() || !words.without.empty() ||
                          !words.freight.empty() || !words.discount.empty();
    if (now.state != OrderState::Draft && (buysElse || now.state != OrderState::Placed))
        return stands(now, now.state == OrderState::Placed
                               ? "Only its days and its note can change; or take the placing back."
                               : "Make a new one.");
    return changed(after(now), words, workshop);
}

Result<Order> orderEnded(const Order &now, OrderState state)
{
    const bool can = state == OrderState::Closed
                         ? now.state == OrderState::Placed
                         : now.state == OrderState::Placed || now.state == OrderState::Draft;
    if (!can)
        return stands(now, state == OrderState::Closed ? "Only a placed order is closed."
                                                       : "It stays as it is.");
    Order next = after(now);
    next.state = state;
    return next;
}

Result<BuyingBook> buyingOf(const ShopFile &file)
{
    const auto records = file.records();
    if (!records)
        return tl::unexpected(records.error());
    const auto ledger = file.ledger();
    if (!ledger)
        return tl::unexpected(ledger.error());
    return BuyingBook::of(*records, *ledger);
}

Result<Action> openingOf(const std::vector<Order> &drafts, const ShopFile &file, const By &by)
{
    std::vector<Order> orders = signedTogether(drafts, by);
    return drawNumbers(orders, file);
}

Result<Action> stepOf(const Order &next, const By &by)
{
    const Order order = signedBy(next, by);
    if (const auto fault = order.fault(); !fault.empty())
        return problem("order " + order.number, fault, "Correct what was typed.");
    return Action{{order.asRecord()}, {}};
}

Result<WrittenOrder> openOrder(const Order &draft, ShopFile &file, const By &by)
{
    Order order = signedBy(draft, by);
    const auto before = writtenStep(order.id, file);
    if (!before)
        return tl::unexpected(before.error());
    if (*before) {
        if ((*before)->before || !ordersTheSame(**before, order))
            return otherUnder(order.id);
        return asItStands((*before)->number, file, {order.id, true});
    }
    By signedAs = by;
    signedAs.action = order.id;
    auto written = openOrders({draft}, file, signedAs);
    if (!written)
        return tl::unexpected(written.error());
    return std::move(written->front());
}

Result<std::vector<WrittenOrder>> openOrders(const std::vector<Order> &drafts, ShopFile &file,
                                             const By &by)
{
    std::vector<Order> orders = signedTogether(drafts, by);
    for (int draw = 1;; ++draw) {
        const auto numbered = drawNumbers(orders, file);
        if (!numbered)
            return tl::unexpected(numbered.error());
        const auto done = file.append(*numbered);
        if (done)
            return allAsTheyStand(orders, file, false);
        const auto now = buyingOf(file);
        if (draw == Draws || !now || !now->order(orders.front().number))
            return tl::unexpected(done.error());
    }
}

Result<std::vector<WrittenOrder>> openedBefore(const MovementId &action, const ShopFile &file)
{
    std::vector<Order> orders;
    while (true) {
        const auto step = writtenStep(idWithin(action, orders.size()), file);
        if (!step)
            return tl::unexpected(step.error());
        if (!*step)
            return allAsTheyStand(orders, file, true);
        if ((*step)->before)
            return otherUnder((*step)->id);
        orders.push_back(**step);
    }
}

Result<std::optional<WrittenOrder>> repeatedStep(const std::string &number,
                                                 std::optional<OrderState> state,
                                                 const ShopFile &file, const By &by)
{
    if (!by.action)
        return std::optional<WrittenOrder>();
    const auto before = writtenStep(*by.action, file);
    if (!before)
        return tl::unexpected(before.error());
    if (!*before)
        return std::optional<WrittenOrder>();
    if ((*before)->number != number || !(*before)->before ||
        (*before)->state != state.value_or((*before)->state))
        return otherUnder(*by.action);
    auto stands = asItStands(number, file, {*by.action, true});
    if (!stands)
        return tl::unexpected(stands.error());
    return std::optional(std::move(*stands));
}

Result<WrittenOrder> writeStep(const Order &next, ShopFile &file, const By &by)
{
    const auto step = stepOf(next, by);
    if (!step)
        return tl::unexpected(step.error());
    const auto done = file.append(*step);
    if (!done)
        return tl::unexpected(done.error());
    return asItStands(next.number, file, done->front());
}

} // namespace flarestock
