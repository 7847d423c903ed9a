// SPDX-License-Identifier: MIT

#include "model/buying/order_book.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 5> StandingTexts = {"draft", "placed", "partly received",
                                                           "closed", "cancelled"};

Decimal ordered(const OrderLine &line, std::int64_t received)
{
    return line.quantity - Quantity::ofSmallest(received, line.unit).amount;
}

Result<void> book(BuyingBook &book, const Record &record)
{
    if (record.kind == RecordKind::Order) {
        auto order = Order::read(record);
        if (!order)
            return tl::unexpected(order.error());
        book.orders[record.subject].steps.push_back(std::move(*order));
    } else if (record.kind == RecordKind::Receipt) {
        auto receipt = Receipt::read(record);
        if (!receipt)
            return tl::unexpected(receipt.error());
        if (const auto at = book.orders.find(record.subject); at != book.orders.end())
            at->second.receipts.push_back(std::move(*receipt));
    }
    return {};
}

} // namespace

std::string_view text(OrderStanding standing) noexcept
{
    return StandingTexts[static_cast<std::size_t>(standing)];
}

std::int64_t BookedOrder::received(std::string_view part) const
{
    std::int64_t sum = 0;
    for (const Receipt &receipt : receipts) {
        if (receipt.countsForOrder() && receipt.part == part)
            sum += receipt.quantity;
    }
    return sum;
}

Decimal BookedOrder::awaited(const OrderLine &line) const
{
    const auto gone = notComing.find(line.part);
    const Decimal rest =
        ordered(line, received(line.part) + (gone == notComing.end() ? 0 : gone->second));
    return now().state == OrderState::Placed && rest.sign() > 0 ? rest : Decimal();
}

OrderStanding BookedOrder::standing() const
{
    switch (now().state) {
    case OrderState::Draft:
        return OrderStanding::Draft;
    case OrderState::Closed:
        return OrderStanding::Closed;
    case OrderState::Cancelled:
        return OrderStanding::Cancelled;
    case OrderState::Placed:
        break;
    }
    if (!isOnItsWay())
        return OrderStanding::Closed;
    return hasCome() ? OrderStanding::PartlyReceived : OrderStanding::Placed;
}

bool BookedOrder::isOnItsWay() const
{
    const auto &lines = now().lines;
    return std::any_of(lines.begin(), lines.end(),
                       [this](const OrderLine &line) { return awaited(line).sign() > 0; });
}

std::string BookedOrder::nextDue() const
{
    const std::string *first = nullptr;
    for (const OrderLine &line : now().lines) {
        const std::string &due = now().dueOf(line);
        if (awaited(line).sign() > 0 && !due.empty() && (first == nullptr || due < *first))
            first = &due;
    }
    return first == nullptr ? now().due : *first;
}

const Order *BookedOrder::former() const noexcept
{
    const auto &before = steps.back().before;
    const auto at = std::find_if(steps.begin(), steps.end(),
                                 [&](const Order &step) { return before && step.id == *before; });
    return at == steps.end() ? nullptr : &*at;
}

Result<BuyingBook> BuyingBook::of(const std::vector<Record> &records,
                                  const std::function<bool(const MovementId &)> &isTakenBack)
{
    BuyingBook all;
    for (const Record &record : records) {
        if (record.kind != RecordKind::Order && record.kind != RecordKind::Receipt)
            continue;
        const auto action = MovementId::parse(record.field("action"));
        if (action && isTakenBack(*action))
            continue;
        if (auto booked = book(all, record); !booked)
            return tl::unexpected(booked.error());
    }
    return all;
}

Result<BuyingBook> BuyingBook::of(const std::vector<Record> &records, const Ledger &ledger)
{
    return of(records, [&ledger](const MovementId &id) { return ledger.isTakenBack(id); });
}

const BookedOrder *BuyingBook::order(std::string_view number) const noexcept
{
    const auto found = orders.find(number);
    return found == orders.end() ? nullptr : &found->second;
}

std::string BuyingBook::nextNumber(std::string_view year) const
{
    std::uint64_t greatest = 0;
    for (const auto &[number, order] : orders) {
        if (!number.starts_with(year) || number.size() < 6 || number[4] != '-')
            continue;
        std::uint64_t count = 0;
        std::from_chars(number.data() + 5, number.data() + number.size(), count);
        greatest = std::max(greatest, count);
    }
    std::string count = std::to_string(greatest + 1);
    if (count.size() < 4)
        count.insert(0, 4 - count.size(), '0');
    return std::string(year) + '-' + count;
}

} // namespace flarestock
