// SPDX-License-Identifier: MIT

#include "model/storage/new_shop.h"

#include "model/storage/journal_writer.h"
#include "model/storage/shop_sql.h"
#include "model/storage/upkeep/backup.h"

namespace flarestock {

void writeShop(ShopConnection &connection, const NewShop &shop)
{
    writeShopRow(connection, {shop.settings.title, std::string(shop.settings.currency.code()),
                              std::string(text(shop.settings.costing)), shop.now});
    std::int64_t sequence = 0;
    for (const auto &place : shop.places)
        writePlace(connection, place, ++sequence);
    for (const auto &[name, content] : shop.documents)
        writeDocument(connection, name, content, {shop.who, shop.now});
    JournalWriter writer(connection);
    for (const auto &movement : shop.opening)
        static_cast<void>(writer.append(movement));
    for (const auto &record : shop.records)
        static_cast<void>(writer.append(record));
    writer.finish();
    for (const auto &check : shop.boxChecks)
        writeBoxCheck(connection, check);
}

void writePlace(ShopConnection &connection, const Place &place, std::int64_t sequence)
{
    connection.run(sql::InsertPlace,
                   {number(sequence), text(place.id), text(place.title),
                    text(std::string(text(place.kind))), sealOf(canonicalBytes(place))});
}

void writeShopRow(ShopConnection &connection, const ShopRow &shop)
{
    connection.run(sql::InsertShop, {text(shop.title), text(shop.currency), text(shop.costing),
                                     number(shop.madeAt), shopSeal(shop)});
}

QByteArray shopSeal(const ShopRow &shop)
{
    std::vector<std::string> texts{shop.title, shop.currency};
    if (!shop.costing.empty())
        texts.push_back(shop.costing);
    texts.push_back(std::to_string(shop.madeAt));
    return sealOf(canonicalBytes(texts));
}

void beginReplica(ShopConnection &connection)
{
    connection.run(sql::InsertReplica, {randomReplicaId(), QByteArray(32, '\0')});
}

void writeDocument(ShopConnection &connection, const std::string &name, const std::string &written,
                   const Written &by)
{
    const std::string content = withoutMark(written);
    const auto newest = [&] { return connection.run(sql::SelectNewestDocument, {text(name)}); };
    std::int64_t version = 1;
    if (auto query = newest(); connection.next(query)) {
        if (query.value(1).toString().toStdString() == content)
            return;
        version = query.value(0).toLongLong() + 1;
    }
    std::int64_t sequence = 1;
    QByteArray previous;
    if (auto last = connection.run(sql::SelectLastDocument); connection.next(last)) {
        sequence = last.value(0).toLongLong() + 1;
        previous = last.value(1).toByteArray();
    }
    const auto seal =
        sealOf(canonicalBytes(std::vector<std::string>{name, std::to_string(version), content,
                                                       by.who, std::to_string(by.at)}),
               previous);
    connection.run(sql::InsertDocument,
                   {QVariant::fromValue<qlonglong>(sequence), text(name),
                    QVariant::fromValue<qlonglong>(version), text(content), text(by.who),
                    QVariant::fromValue<qlonglong>(by.at), seal});
}

void writeBoxCheck(ShopConnection &connection, const BoxCheck &check)
{
    const auto sequence = connection.one("SELECT coalesce(max(sequence), 0) + 1 FROM box_check");
    connection.run(sql::InsertBoxCheck,
                   {sequence, idBytes(check.id), text(check.part), text(check.lot),
                    text(missingText(check.missing)), text(check.who),
                    QVariant::fromValue<qlonglong>(check.at), sealOf(canonicalBytes(check))});
}

} // namespace flarestock
