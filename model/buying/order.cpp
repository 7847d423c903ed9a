// SPDX-License-Identifier: MIT

#include "model/buying/order.h"

#include "model/journal/notes/lot_facts.h"

#include <algorithm>
#include <array>
#include <set>
#include <tuple>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 4> StateTexts = {"draft", "placed", "closed", "cancelled"};

bool isDigit(char letter) noexcept
{
    return letter >= '0' && letter <= '9';
}

bool isDayOrNone(const std::string &day)
{
    return day.empty() || isDay(day);
}

std::string faultOf(const OrderLine &line)
{
    if (line.part.empty())
        return "has a line without a part";
    if (line.quantity.sign() <= 0)
        return "has nothing to order in the line of " + line.part;
    if (line.pack.sign() <= 0)
        return "has no pack in the line of " + line.part;
    if (line.priceEach.sign() < 0)
        return "has a price below zero in the line of " + line.part;
    if (!isDayOrNone(line.due))
        return "has a day that is none in the line of " + line.part;
    return {};
}

std::string faultOf(const std::vector<OrderLine> &lines)
{
    std::set<std::string_view> parts;
    for (const OrderLine &line : lines) {
        if (auto fault = faultOf(line); !fault.empty())
            return fault;
        if (!parts.insert(line.part).second)
            return "has " + line.part + " in two lines";
    }
    return lines.empty() ? "has no line" : "";
}

/// Not below zero, and whole in minor digits.
bool isAmount(const Decimal &amount, const Currency &currency)
{
    return amount.sign() >= 0 && amount.rescaledExact(currency.minorDigits()).has_value();
}

} // namespace

bool isOrderNumber(std::string_view text) noexcept
{
    if (text.size() < 9 || text.size() > 13 || text[4] != '-')
        return false;
    const auto year = text.substr(0, 4);
    const auto count = text.substr(5);
    return std::all_of(year.begin(), year.end(), isDigit) &&
           std::all_of(count.begin(), count.end(), isDigit) &&
           std::any_of(count.begin(), count.end(), [](char digit) { return digit != '0'; }) &&
           (count.size() == 4 || count.front() != '0');
}

std::string_view text(OrderState state) noexcept
{
    return StateTexts[static_cast<std::size_t>(state)];
}

Result<OrderState> parseOrderState(std::string_view text)
{
    const auto *const at = std::find(StateTexts.begin(), StateTexts.end(), text);
    if (at == StateTexts.end())
        return problem(std::string(text), "is no state of an order",
                       "Say draft, placed, closed or cancelled.");
    return static_cast<OrderState>(at - StateTexts.begin());
}

const OrderLine *Order::line(std::string_view part) const noexcept
{
    const auto found = std::find_if(lines.begin(), lines.end(),
                                    [&](const OrderLine &line) { return line.part == part; });
    return found == lines.end() ? nullptr : &*found;
}

const std::string &Order::dueOf(const OrderLine &line) const noexcept
{
    return line.due.empty() ? due : line.due;
}

bool Order::hasDaysByLine() const noexcept
{
    return std::any_of(lines.begin(), lines.end(),
                       [](const OrderLine &line) { return !line.due.empty(); });
}

std::string Order::fault() const
{
    if (!isOrderNumber(number))
        return "has no number such as 2026-0007";
    if (supplier.empty())
        return "says nothing of its supplier";
    if (auto fault = faultOf(lines); !fault.empty())
        return fault;
    if (!isAmount(discount, currency) || !isAmount(freight, currency))
        return "has a discount or freight that is no amount of " + std::string(currency.code());
    if (discount > goods())
        return "has a discount of more than its goods";
    if (tax.percent.sign() < 0)
        return "has a tax below zero";
    if (rate.sign() <= 0)
        return "has no rate of its currency";
    if (!isDay(day) || !isDayOrNone(due))
        return "has a day that is none";
    return {};
}

bool Order::saysAs(const Order &other) const
{
    const auto said = [](const Order &order) {
        return std::tie(order.number, order.supplier, order.currency, order.state, order.lines,
                        order.discount, order.freight, order.tax, order.rate, order.day, order.due,
                        order.note);
    };
    return said(*this) == said(other);
}

Decimal OrderLine::cost(std::int32_t minorDigits) const
{
    return (quantity * priceEach).rescaled(minorDigits, Rounding::HalfEven);
}

Decimal Order::goods() const
{
    Decimal sum = Decimal::scaled(0, currency.minorDigits());
    for (const OrderLine &line : lines)
        sum += line.cost(currency.minorDigits());
    return sum;
}

} // namespace flarestock
