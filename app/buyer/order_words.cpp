// SPDX-License-Identifier: MIT

#include "app/buyer/order_words.h"

#include "app/buyer/order_lines.h"
#include "app/workshop/suppliers.h"
#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <QDate>

#include <algorithm>

namespace flarestock {

namespace {

/// An amount of the order's currency, not below zero. Problem: none.
Result<Decimal> amountAsked(const std::string &typed, const std::string &option,
                            const Currency &currency)
{
    const auto amount = Decimal::parse(typed);
    if (!amount)
        return tl::unexpected(wrongIn(option, amount.error()));
    auto whole = amount->rescaledExact(currency.minorDigits());
    if (!whole || whole->sign() < 0)
        return problem(option + " " + typed, "is no amount of " + std::string(currency.code()),
                       "Say it in whole minor units, not below zero.");
    return whole;
}

/// The rate of an order of that day.
Result<Decimal> rateAsked(const OrderWords &words, const Currency &currency, const std::string &day,
                          const Workshop &workshop)
{
    const std::string &typed = words.rate;
    const std::string own(workshop.settings.currency.code());
    if (currency == workshop.settings.currency)
        return Decimal(1);
    const auto written = words.written ? words.written->of(currency, day) : std::nullopt;
    if (typed.empty() && written)
        return *written;
    if (typed.empty())
        return problem("an order in " + std::string(currency.code()),
                       "needs the rate at which it counts in " + own,
                       "Say how much " + own +
                           " one is: --rate 1.0842; or write it into rates.csv.");
    auto rate = Decimal::parse(typed);
    if (!rate)
        return tl::unexpected(wrongIn("--rate", rate.error()));
    if (rate->sign() <= 0)
        return problem("--rate " + typed, "is no rate", "Say more than zero.");
    return rate;
}

Result<void> putLines(Order &order, const std::vector<OrderLineAsked> &asked)
{
    for (const OrderLineAsked &one : asked) {
        const OrderLine &line = one.line;
        const auto &currency = one.currency;
        if (currency && !(*currency == order.currency))
            return problem(line.part, "is offered in " + std::string(currency->code()),
                           "Say its price in " + std::string(order.currency.code()) +
                               ", or order it by itself.");
        const auto same = std::find_if(order.lines.begin(), order.lines.end(),
                                       [&](const OrderLine &has) { return has.part == line.part; });
        if (same == order.lines.end())
            order.lines.push_back(line);
        else
            *same = line;
    }
    return {};
}

Result<void> dropLines(Order &order, const OrderWords &words, const Catalogue &catalogue)
{
    for (const std::string &typed : words.without) {
        const auto part = partAsked(typed, catalogue);
        const std::string number = part ? (*part)->number : typed;
        if (std::erase_if(order.lines,
                          [&](const OrderLine &line) { return line.part == number; }) == 0)
            return problem(typed, "is not in order " + order.number,
                           "Look: flarestock order show.");
    }
    return {};
}

/// His days from order to delivery, of the offer that the line was made of.
int leadOf(const OrderLine &line, const std::string &supplier, const Catalogue &catalogue)
{
    const Part *part = catalogue.find(line.part);
    const Offer *offer = nullptr;
    for (const Offer &one : part ? catalogue.offers(*part) : std::span<const Offer>()) {
        if (one.supplier != supplier || (offer && one.supplierNumber != line.supplierNumber))
            continue;
        if (!offer || offer->supplierNumber != line.supplierNumber)
            offer = &one;
    }
    const Supplier *of = supplierById(supplier, catalogue);
    return offer ? offer->leadDays : of ? of->leadDays : 0;
}

/// Whether its days are what its supplier's leads say, and nobody's promise.
bool goesByLeads(const Order &order, const Catalogue &catalogue)
{
    if (order.hasDaysByLine())
        return true;
    return !order.due.empty() && withDaysOf(order, order.day, catalogue).saysAs(order);
}

Result<void> putAmounts(Order &order, const OrderWords &words)
{
    if (!words.freight.empty()) {
        const auto freight = amountAsked(words.freight, "--freight", order.currency);
        if (!freight)
            return tl::unexpected(freight.error());
        order.freight = *freight;
    }
    if (!words.discount.empty()) {
        const auto discount = amountAsked(words.discount, "--discount", order.currency);
        if (!discount)
            return tl::unexpected(discount.error());
        order.discount = *discount;
    }
    return {};
}

Result<void> putDays(Order &order, const OrderWords &words)
{
    for (OrderLine &line : order.lines)
        if (!words.due.empty())
            line.due.clear();
    for (const auto &[typed, day] :
         {std::pair(&words.due, &order.due), std::pair(&words.day, &order.day)}) {
        if (typed->empty())
            continue;
        const auto asked = dayAsked(*typed, 0);
        if (!asked)
            return tl::unexpected(asked.error());
        *day = *asked;
    }
    if (words.note)
        order.note = *words.note;
    return {};
}

Result<std::vector<OrderLineAsked>> linesAsked(const std::vector<std::string> &typed,
                                               const Supplier &supplier, const Catalogue &catalogue)
{
    std::vector<OrderLineAsked> lines;
    for (const std::string &one : typed) {
        auto line = lineAsked(one, supplier, catalogue);
        if (!line)
            return tl::unexpected(line.error());
        const bool twice =
            std::any_of(lines.begin(), lines.end(), [&](const OrderLineAsked &before) {
                return before.line.part == line->line.part;
            });
        if (twice)
            return problem(line->line.part, "stands in two lines", "Say it once, all of it.");
        lines.push_back(std::move(*line));
    }
    return lines;
}

} // namespace

Result<const Supplier *> supplierAsked(const std::string &typed, const Catalogue &catalogue)
{
    std::vector<std::string_view> ids;
    for (const Supplier &supplier : catalogue.suppliers()) {
        if (folded(supplier.id) == folded(typed))
            return &supplier;
        ids.push_back(supplier.id);
    }
    return problem("supplier " + typed, "is not in this shop", wordRemedy(typed, ids));
}

Result<const BookedOrder *> orderAsked(const std::string &typed, const BuyingBook &book)
{
    if (const BookedOrder *order = book.order(typed))
        return order;
    std::vector<std::string_view> numbers;
    for (auto at = book.orders.rbegin(); at != book.orders.rend(); ++at)
        numbers.push_back(at->first);
    return problem("order " + typed, "is not in this shop",
                   numbers.empty() ? "There is none yet: flarestock order new."
                                   : wordRemedy(typed, numbers));
}

std::optional<Decimal> freightOf(const Supplier &supplier, const Decimal &goods)
{
    std::optional<Decimal> cost;
    for (const auto &step : supplier.freight) {
        if (step.from <= goods)
            cost = step.cost;
    }
    return cost;
}

Order withDaysOf(Order order, const std::string &day, const Catalogue &catalogue)
{
    const QDate from = QDate::fromString(QString::fromStdString(day), Qt::ISODate);
    order.due.clear();
    for (OrderLine &line : order.lines) {
        line.due = from.addDays(leadOf(line, order.supplier, catalogue))
                       .toString(Qt::ISODate)
                       .toStdString();
        order.due = std::max(order.due, line.due);
    }
    for (OrderLine &line : order.lines)
        if (line.due == order.due)
            line.due.clear();
    return order;
}

Result<Order> newOrder(const std::string &supplier, const OrderWords &words,
                       const Workshop &workshop, std::int64_t now)
{
    const auto found = supplierAsked(supplier, workshop.catalogue);
    if (!found)
        return tl::unexpected(found.error());
    if (words.lines.empty())
        return problem("an order", "needs a line", "Say --line \"PART QUANTITY\".");
    const auto lines = linesAsked(words.lines, **found, workshop.catalogue);
    const auto day = dayAsked(words.day, now);
    if (!lines || !day)
        return tl::unexpected(lines ? day.error() : lines.error());
    std::optional<Currency> currency = (*found)->currency;
    for (auto line = lines->begin(); !currency && line != lines->end(); ++line)
        currency = line->currency;
    const Currency paid = currency.value_or(workshop.settings.currency);
    const auto rate = rateAsked(words, paid, *day, workshop);
    if (!rate)
        return tl::unexpected(rate.error());
    Order order{
        {}, {}, (*found)->id, paid, OrderState::Draft, {}, {}, {}, (*found)->tax, *rate, *day, {},
        {}, {}, now,          {}};
    if (const auto put = putLines(order, *lines); !put)
        return tl::unexpected(put.error());
    order.freight = freightOf(**found, order.goods()).value_or(Decimal());
    if (const auto put = putAmounts(order, words); !put)
        return tl::unexpected(put.error());
    if (const auto put = putDays(order, words); !put)
        return tl::unexpected(put.error());
    return order;
}

Result<Order> changed(const Order &order, const OrderWords &words, const Workshop &workshop)
{
    Order next = order;
    const Supplier *supplier = supplierById(order.supplier, workshop.catalogue);
    if (!words.lines.empty()) {
        if (!supplier)
            return problem("supplier " + order.supplier, "is not in this shop any more",
                           "Make a new order of another one.");
        const auto lines = linesAsked(words.lines, *supplier, workshop.catalogue);
        if (!lines)
            return tl::unexpected(lines.error());
        if (const auto put = putLines(next, *lines); !put)
            return tl::unexpected(put.error());
    }
    if (const auto dropped = dropLines(next, words, workshop.catalogue); !dropped)
        return tl::unexpected(dropped.error());
    const bool hasOtherLines = !words.lines.empty() || !words.without.empty();
    if (hasOtherLines && goesByLeads(order, workshop.catalogue))
        next = withDaysOf(next, next.day, workshop.catalogue);
    if (supplier && freightOf(*supplier, order.goods()) == order.freight)
        next.freight = freightOf(*supplier, next.goods()).value_or(next.freight);
    if (const auto put = putAmounts(next, words); !put)
        return tl::unexpected(put.error());
    if (const auto put = putDays(next, words); !put)
        return tl::unexpected(put.error());
    if (next.saysAs(order))
        return problem("order " + order.number, "says that already", "Say what is to change.");
    return next;
}

} // namespace flarestock
