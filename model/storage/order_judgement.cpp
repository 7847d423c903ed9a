// SPDX-License-Identifier: MIT

#include "model/storage/order_judgement.h"

#include "model/buying/order_steps.h"
#include "model/storage/failure.h"
#include "model/storage/shop_rows.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

namespace {

BuyingBook bookOf(const ShopConnection &connection, const std::string &number)
{
    std::vector<Record> records;
    for (const RecordKind kind : {RecordKind::Order, RecordKind::Receipt}) {
        connection.runAgain(
            sql::SelectRecordsAbout, {text(number), text(std::string(text(kind)))},
            [&](const QSqlQuery &row) { records.push_back(recordRow(row).record); });
    }
    auto book = BuyingBook::of(records, [&connection](const MovementId &action) {
        return connection.one(sql::SelectReversal, {idBytes(action)}).isValid();
    });
    if (!book)
        throw StorageFailure{book.error()};
    return std::move(*book);
}

void judgeOrder(const BookedOrder *standing, const Record &record)
{
    const auto next = Order::read(record);
    if (!next)
        throw StorageFailure{next.error()};
    if (auto why = notWrittenBecause(standing, *next); !why.empty())
        throw StorageFailure{{"order " + record.subject, std::move(why),
                              "Look at it as it is now: flarestock order show."}};
}

void judgeReceipt(const BookedOrder *standing, const Record &record)
{
    const auto state = standing ? standing->now().state : OrderState::Draft;
    if (state == OrderState::Draft || state == OrderState::Cancelled)
        throw StorageFailure{
            {"order " + record.subject,
             standing ? "is not placed: nothing of it can come" : "does not stand in this shop",
             "Place it first, or receive without an order."}};
}

} // namespace

void throwIfNotBought(const ShopConnection &connection, const Record &record)
{
    if (record.kind != RecordKind::Order && record.kind != RecordKind::Receipt)
        return;
    const BuyingBook book = bookOf(connection, record.subject);
    const BookedOrder *standing = book.order(record.subject);
    if (record.kind == RecordKind::Order)
        judgeOrder(standing, record);
    else
        judgeReceipt(standing, record);
}

} // namespace flarestock
