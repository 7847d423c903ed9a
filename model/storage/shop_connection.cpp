// SPDX-License-Identifier: MIT

#include "model/storage/shop_connection.h"

#include <QSqlError>

#include <atomic>

namespace flarestock {

namespace {

QString sqlText(std::string_view sql)
{
    return QString::fromUtf8(sql.data(), static_cast<qsizetype>(sql.size()));
}

QString nextName()
{
    static std::atomic<int> count{0};
    return QStringLiteral("flarestock-shop-%1").arg(++count);
}

} // namespace

ShopConnection::ShopConnection(std::string name, const char *driver, Rows rows)
    : m_name(std::move(name)), m_rows(rows), m_connection(nextName()),
      m_database(QSqlDatabase::addDatabase(QString::fromLatin1(driver), m_connection))
{
}

ShopConnection::~ShopConnection()
{
    close();
}

void ShopConnection::close() noexcept
{
    m_database.close();
    m_database = {};
    QSqlDatabase::removeDatabase(m_connection);
}

QSqlQuery ShopConnection::run(std::string_view sql, const QVariantList &values) const
{
    QSqlQuery query(m_database);
    query.setForwardOnly(m_rows == Rows::OneByOne);
    if (values.isEmpty() && m_rows == Rows::AtOnce) { // PostgreSQL prepares no BEGIN.
        if (!query.exec(sqlText(sql)))
            fail(query.lastError());
        return query;
    }
    if (!query.prepare(sqlText(sql)))
        fail(query.lastError());
    for (const auto &value : values)
        query.addBindValue(value);
    if (!query.exec())
        fail(query.lastError());
    return query;
}

void ShopConnection::runEach(std::string_view sql,
                             const std::function<std::optional<QVariantList>()> &next) const
{
    QSqlQuery query(m_database);
    if (!query.prepare(sqlText(sql)))
        fail(query.lastError());
    while (const auto values = next()) {
        for (qsizetype at = 0; at < values->size(); ++at)
            query.bindValue(static_cast<int>(at), values->at(at));
        if (const bool done = query.exec(); !done)
            fail(query.lastError());
    }
}

QVariant ShopConnection::one(std::string_view sql, const QVariantList &values) const
{
    auto query = run(sql, values);
    return query.next() ? query.value(0) : QVariant();
}

} // namespace flarestock
