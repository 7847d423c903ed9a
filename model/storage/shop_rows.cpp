// SPDX-License-Identifier: MIT

#include "model/storage/shop_rows.h"

#include "model/storage/shop_sql.h"

#include <QCryptographicHash>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <tuple>

namespace flarestock {

namespace {

[[noreturn]] void notOurs(const char *what)
{
    throw StorageFailure{{"the shop file", std::string("holds ") + what,
                          "Do not write to it: keep it aside and restore the newest backup."}};
}

PieceCondition conditionOf(const std::string &spelt)
{
    const auto condition = parsePieceCondition(spelt);
    if (!condition || text(*condition) != spelt)
        notOurs("an unknown condition");
    return *condition;
}

void readPlace(const QSqlQuery &query, ChainPlace &place)
{
    place.replica = query.value(0).toLongLong();
    place.sequence = query.value(1).toLongLong();
    place.lamport = query.value(2).toLongLong();
    place.hash = query.value(3).toByteArray();
}

} // namespace

MovementId idOf(const QVariant &value)
{
    const auto bytes = value.toByteArray();
    if (bytes.size() != 16)
        notOurs("a damaged id");
    std::array<std::uint8_t, 16> id{};
    std::copy(bytes.begin(), bytes.end(), id.begin());
    return MovementId::ofBytes(id);
}

bool isBefore(const ChainPlace &a, const ChainPlace &b)
{
    return std::tie(a.lamport, a.replica, a.sequence) < std::tie(b.lamport, b.replica, b.sequence);
}

QString text(const std::string &text)
{
    if (text.empty())
        return QStringLiteral("");
    QString read = QString::fromStdString(text);
    if (read.toStdString() != text || read.contains(QChar(u'\0')))
        throw StorageFailure{{"\"" + read.left(40).toStdString() + "\"",
                              "holds bytes that are no text, or begins with a byte-order mark",
                              "Write it as plain UTF-8."}};
    return read;
}

std::string withoutMark(const std::string &text)
{
    return text.starts_with("\xEF\xBB\xBF") ? text.substr(3) : text;
}

BoxCheck boxCheckRow(const QSqlQuery &query)
{
    return {idOf(query.value(1)),
            query.value(2).toString().toStdString(),
            query.value(3).toString().toStdString(),
            missingOf(query.value(4).toString().toStdString()),
            query.value(5).toString().toStdString(),
            query.value(6).toLongLong()};
}

QByteArray idBytes(const MovementId &id)
{
    return {reinterpret_cast<const char *>(id.bytes().data()),
            static_cast<qsizetype>(id.bytes().size())};
}

JournalRow journalRow(const QSqlQuery &query)
{
    const auto string = [&query](int column) {
        return query.value(column).toString().toStdString();
    };
    JournalRow row;
    readPlace(query, row);
    auto &movement = row.movement;
    movement.id = idOf(query.value(4));
    movement.part = string(5);
    movement.quantity = query.value(6).toLongLong();
    movement.value = query.value(7).toLongLong();
    movement.from = string(8);
    movement.to = string(9);
    movement.lot = string(10);
    movement.condition = conditionOf(string(11));
    movement.who = string(12);
    movement.why = string(13);
    movement.document = string(14);
    if (!query.value(15).isNull())
        movement.reverses = idOf(query.value(15));
    movement.at = query.value(16).toLongLong();
    const auto deed = parseDeed(string(17));
    if (!deed || text(*deed) != string(17))
        notOurs("an unknown deed");
    movement.deed = *deed;
    if (!query.value(18).isNull())
        movement.newLot = string(18);
    if (!query.value(19).isNull())
        movement.newCondition = conditionOf(string(19));
    if (!query.value(20).isNull())
        movement.action = idOf(query.value(20));
    movement.until = string(21);
    return row;
}

RecordRow recordRow(const QSqlQuery &query)
{
    RecordRow row;
    readPlace(query, row);
    auto &record = row.record;
    record.id = idOf(query.value(4));
    const auto kind = parseRecordKind(query.value(5).toString().toStdString());
    if (!kind)
        notOurs("a record of an unknown kind");
    record.kind = *kind;
    record.subject = query.value(6).toString().toStdString();
    const auto fields = QJsonDocument::fromJson(query.value(7).toString().toUtf8());
    if (!fields.isObject())
        notOurs("a damaged record");
    const auto object = fields.object();
    for (auto at = object.begin(); at != object.end(); ++at)
        record.fields[at.key().toStdString()] = at.value().toString().toStdString();
    record.who = query.value(8).toString().toStdString();
    record.at = query.value(9).toLongLong();
    return row;
}

void carryBalance(const QSqlQuery &query, Ledger &ledger)
{
    const auto word = [&query](int column) { return query.value(column).toString().toStdString(); };
    ledger.carryOver(BalanceKey{word(0), word(1), word(2),
                                parsePieceCondition(word(3)).value_or(PieceCondition::NotToBeUsed)},
                     Balance{query.value(4).toLongLong(), query.value(5).toLongLong()});
}

void carryClaim(const QSqlQuery &query, Ledger &ledger)
{
    ledger.carryOver(
        ClaimKey{query.value(0).toString().toStdString(), query.value(1).toString().toStdString()},
        Claim{query.value(2).toLongLong(), query.value(3).toLongLong()});
}

QVariantList valuesOf(const JournalRow &row)
{
    const auto &movement = row.movement;
    return {QVariant::fromValue<qlonglong>(row.replica),
            QVariant::fromValue<qlonglong>(row.sequence),
            QVariant::fromValue<qlonglong>(row.lamport),
            row.hash,
            idBytes(movement.id),
            text(movement.part),
            QVariant::fromValue<qlonglong>(movement.quantity),
            QVariant::fromValue<qlonglong>(movement.value),
            text(movement.from),
            text(movement.to),
            text(movement.lot),
            text(std::string(text(movement.condition))),
            text(movement.who),
            text(movement.why),
            text(movement.document),
            movement.reverses ? QVariant(idBytes(*movement.reverses))
                              : QVariant(QMetaType(QMetaType::QByteArray)),
            QVariant::fromValue<qlonglong>(movement.at),
            text(std::string(text(movement.deed))),
            movement.newLot ? QVariant(text(*movement.newLot))
                            : QVariant(QMetaType(QMetaType::QString)),
            movement.newCondition ? QVariant(text(std::string(text(*movement.newCondition))))
                                  : QVariant(QMetaType(QMetaType::QString)),
            movement.action ? QVariant(idBytes(*movement.action))
                            : QVariant(QMetaType(QMetaType::QByteArray)),
            text(movement.until)};
}

QVariantList valuesOf(const RecordRow &row)
{
    const auto &record = row.record;
    QJsonObject fields;
    for (const auto &[name, value] : record.fields)
        fields.insert(text(name), text(value));
    return {QVariant::fromValue<qlonglong>(row.replica),
            QVariant::fromValue<qlonglong>(row.sequence),
            QVariant::fromValue<qlonglong>(row.lamport),
            row.hash,
            idBytes(record.id),
            text(std::string(text(record.kind))),
            text(record.subject),
            QString::fromUtf8(QJsonDocument(fields).toJson(QJsonDocument::Compact)),
            text(record.who),
            QVariant::fromValue<qlonglong>(record.at)};
}

QVariantList keyValues(const BalanceKey &key)
{
    return {text(key.part), text(key.place), text(key.lot), text(std::string(text(key.condition)))};
}

std::string missingText(const std::vector<std::string> &missing)
{
    std::string joined;
    for (const auto &number : missing)
        joined += (joined.empty() ? "" : "\n") + number;
    return joined;
}

std::vector<std::string> missingOf(const std::string &text)
{
    std::vector<std::string> missing;
    for (std::size_t from = 0; from < text.size();) {
        const auto end = std::min(text.find('\n', from), text.size());
        missing.push_back(text.substr(from, end - from));
        from = end + 1;
    }
    return missing;
}

QByteArray sealOf(const std::vector<std::uint8_t> &bytes, const QByteArray &previous)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(previous);
    hash.addData(QByteArrayView(reinterpret_cast<const char *>(bytes.data()),
                                static_cast<qsizetype>(bytes.size())));
    return hash.result();
}

void writePlace(ShopConnection &connection, const Place &place, std::int64_t sequence)
{
    connection.run(sql::InsertPlace,
                   {QVariant::fromValue<qlonglong>(sequence), text(place.id), text(place.title),
                    text(std::string(text(place.kind))), sealOf(canonicalBytes(place))});
}

void writeShopRow(ShopConnection &connection, const ShopRow &shop)
{
    connection.run(sql::InsertShop, {text(shop.title), text(shop.currency), text(shop.costing),
                                     QVariant::fromValue<qlonglong>(shop.madeAt), shopSeal(shop)});
}

QByteArray shopSeal(const ShopRow &shop)
{
    std::vector<std::string> texts{shop.title, shop.currency};
    if (!shop.costing.empty())
        texts.push_back(shop.costing);
    texts.push_back(std::to_string(shop.madeAt));
    return sealOf(canonicalBytes(texts));
}

QByteArray chainHash(const ChainPlace &place, const std::vector<std::uint8_t> &entry,
                     const QByteArray &previous, const QByteArray &replicaId)
{
    auto bytes = canonicalBytes(std::vector<std::string>{
        replicaId.toStdString(), std::to_string(place.sequence), std::to_string(place.lamport)});
    bytes.insert(bytes.end(), entry.begin(), entry.end());
    return sealOf(bytes, previous);
}

} // namespace flarestock
