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

Deed deedOf(const std::string &spelt)
{
    const auto deed = parseDeed(spelt);
    if (!deed || text(*deed) != spelt)
        notOurs("an unknown deed");
    return *deed;
}

BalanceKey keyOf(const StoredRow &stored)
{
    return {stored.text(0), stored.text(1), stored.text(2),
            parsePieceCondition(stored.text(3)).value_or(PieceCondition::NotToBeUsed)};
}

} // namespace

MovementId idOf(const QByteArray &bytes)
{
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

QVariant number(std::int64_t number)
{
    return QVariant::fromValue<qlonglong>(number);
}

std::string withoutMark(const std::string &text)
{
    return text.starts_with("\xEF\xBB\xBF") ? text.substr(3) : text;
}

BoxCheck boxCheckRow(const QSqlQuery &query)
{
    return {
        idOf(query.value(1).toByteArray()),      query.value(2).toString().toStdString(),
        query.value(3).toString().toStdString(), missingOf(query.value(4).toString().toStdString()),
        query.value(5).toString().toStdString(), query.value(6).toLongLong()};
}

QByteArray idBytes(const MovementId &id)
{
    return {reinterpret_cast<const char *>(id.bytes().data()),
            static_cast<qsizetype>(id.bytes().size())};
}

ChainPlace chainPlace(const StoredRow &stored)
{
    return {stored.number(0), stored.number(1), stored.number(2), stored.bytes(3)};
}

ChainPlace chainPlace(const QSqlQuery &query)
{
    return chainPlace(QueryRow(query));
}

JournalRow journalRow(const StoredRow &stored)
{
    JournalRow row{chainPlace(stored), {}};
    auto &movement = row.movement;
    movement.id = idOf(stored.bytes(4));
    movement.part = stored.text(5);
    movement.quantity = stored.number(6);
    movement.value = stored.number(7);
    movement.from = stored.text(8);
    movement.to = stored.text(9);
    movement.lot = stored.text(10);
    movement.condition = conditionOf(stored.text(11));
    movement.who = stored.text(12);
    movement.why = stored.text(13);
    movement.document = stored.text(14);
    if (!stored.isNull(15))
        movement.reverses = idOf(stored.bytes(15));
    movement.at = stored.number(16);
    movement.deed = deedOf(stored.text(17));
    if (!stored.isNull(18))
        movement.newLot = stored.text(18);
    if (!stored.isNull(19))
        movement.newCondition = conditionOf(stored.text(19));
    if (!stored.isNull(20))
        movement.action = idOf(stored.bytes(20));
    movement.until = stored.text(21);
    return row;
}

JournalRow journalRow(const QSqlQuery &query)
{
    return journalRow(QueryRow(query));
}

RecordRow recordRow(const QSqlQuery &query)
{
    RecordRow row{chainPlace(query), {}};
    auto &record = row.record;
    record.id = idOf(query.value(4).toByteArray());
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

void carryBalance(const StoredRow &stored, Ledger &ledger)
{
    ledger.carryOver(keyOf(stored), Balance{stored.number(4), stored.number(5)});
}

BalanceKey carryLayer(const StoredRow &stored, Ledger &ledger)
{
    BalanceKey key = keyOf(stored);
    ledger.carryOver(key, stored.number(4), Balance{stored.number(5), stored.number(6)});
    return key;
}

void carryClaim(const StoredRow &stored, Ledger &ledger)
{
    ledger.carryOver(ClaimKey{stored.text(0), stored.text(1)},
                     Claim{stored.number(2), stored.number(3)});
}

Values valuesOf(const JournalRow &row)
{
    const auto &movement = row.movement;
    return {number(row.replica),
            number(row.sequence),
            number(row.lamport),
            row.hash,
            idBytes(movement.id),
            text(movement.part),
            number(movement.quantity),
            number(movement.value),
            text(movement.from),
            text(movement.to),
            text(movement.lot),
            text(std::string(text(movement.condition))),
            text(movement.who),
            text(movement.why),
            text(movement.document),
            movement.reverses ? QVariant(idBytes(*movement.reverses))
                              : QVariant(QMetaType(QMetaType::QByteArray)),
            number(movement.at),
            text(std::string(text(movement.deed))),
            movement.newLot ? QVariant(text(*movement.newLot))
                            : QVariant(QMetaType(QMetaType::QString)),
            movement.newCondition ? QVariant(text(std::string(text(*movement.newCondition))))
                                  : QVariant(QMetaType(QMetaType::QString)),
            movement.action ? QVariant(idBytes(*movement.action))
                            : QVariant(QMetaType(QMetaType::QByteArray)),
            text(movement.until)};
}

Values valuesOf(const RecordRow &row)
{
    const auto &record = row.record;
    QJsonObject fields;
    for (const auto &[name, value] : record.fields)
        fields.insert(text(name), text(value));
    return {number(row.replica),
            number(row.sequence),
            number(row.lamport),
            row.hash,
            idBytes(record.id),
            text(std::string(text(record.kind))),
            text(record.subject),
            QString::fromUtf8(QJsonDocument(fields).toJson(QJsonDocument::Compact)),
            text(record.who),
            number(record.at)};
}

Values keyValues(const BalanceKey &key)
{
    return {text(key.part), text(key.place), text(key.lot), text(std::string(text(key.condition)))};
}

Values layerKeyValues(const BalanceKey &key, std::int64_t rank)
{
    auto values = keyValues(key);
    values.emplace_back(number(rank));
    return values;
}

Values layerValues(const BalanceKey &key, std::int64_t rank, const Balance &layer)
{
    auto values = layerKeyValues(key, rank);
    values.emplace_back(number(layer.quantity));
    values.emplace_back(number(layer.value));
    return values;
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

QByteArray chainHash(const ChainPlace &place, const std::vector<std::uint8_t> &entry,
                     const QByteArray &previous, const QByteArray &replicaId)
{
    auto bytes = canonicalBytes(std::vector<std::string>{
        replicaId.toStdString(), std::to_string(place.sequence), std::to_string(place.lamport)});
    bytes.insert(bytes.end(), entry.begin(), entry.end());
    return sealOf(bytes, previous);
}

} // namespace flarestock
