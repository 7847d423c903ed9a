// SPDX-License-Identifier: MIT

#include "model/storage/shop_rows.h"

#include <QCryptographicHash>

#include <algorithm>

namespace flarestock {

namespace {

[[noreturn]] void notOurs(const char *what)
{
    throw StorageFailure{{"the shop file", std::string("holds ") + what,
                          "Do not write to it: keep it aside and restore the newest backup."}};
}

MovementId idOf(const QVariant &value)
{
    const auto bytes = value.toByteArray();
    if (bytes.size() != 16)
        notOurs("a damaged id");
    std::array<std::uint8_t, 16> id{};
    std::copy(bytes.begin(), bytes.end(), id.begin());
    return MovementId::ofBytes(id);
}

} // namespace

QString text(const std::string &text)
{
    if (text.empty())
        return QStringLiteral("");
    QString read = QString::fromStdString(text);
    if (read.toStdString() != text)
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
    row.replica = query.value(0).toLongLong();
    row.sequence = query.value(1).toLongLong();
    row.lamport = query.value(2).toLongLong();
    row.hash = query.value(3).toByteArray();
    auto &movement = row.movement;
    movement.id = idOf(query.value(4));
    movement.part = string(5);
    movement.quantity = query.value(6).toLongLong();
    movement.value = query.value(7).toLongLong();
    movement.from = string(8);
    movement.to = string(9);
    movement.lot = string(10);
    const auto condition = parsePieceCondition(string(11));
    if (!condition || text(*condition) != string(11))
        notOurs("an unknown condition");
    movement.condition = *condition;
    movement.who = string(12);
    movement.why = string(13);
    movement.document = string(14);
    if (!query.value(15).isNull())
        movement.reverses = idOf(query.value(15));
    movement.at = query.value(16).toLongLong();
    return row;
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
            QVariant::fromValue<qlonglong>(movement.at)};
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

QByteArray shopSeal(const std::string &title, const std::string &currency, std::int64_t madeAt)
{
    return sealOf(
        canonicalBytes(std::vector<std::string>{title, currency, std::to_string(madeAt)}));
}

QByteArray chainHash(const JournalRow &row, const QByteArray &previous, const QByteArray &replicaId)
{
    auto bytes = canonicalBytes(std::vector<std::string>{
        replicaId.toStdString(), std::to_string(row.sequence), std::to_string(row.lamport)});
    const auto movement = canonicalBytes(row.movement);
    bytes.insert(bytes.end(), movement.begin(), movement.end());
    return sealOf(bytes, previous);
}

} // namespace flarestock
