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
    m_prepared.clear();
    m_database.close();
    m_database = {};
    QSqlDatabase::removeDatabase(m_connection);
}

QSqlQuery ShopConnection::run(std::string_view sql, const Values &values) const
{
    QSqlQuery query(m_database);
    query.setForwardOnly(m_rows == Rows::OneByOne);
    if (values.empty() && m_rows == Rows::AtOnce) { // PostgreSQL prepares no BEGIN.
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
                             const std::function<std::optional<Values>()> &next) const
{
    QSqlQuery query(m_database);
    if (!query.prepare(sqlText(sql)))
        fail(query.lastError());
    while (const auto values = next()) {
        for (std::size_t at = 0; at < values->size(); ++at)
            query.bindValue(static_cast<int>(at), values->at(at));
        if (const bool done = query.exec(); !done)
            fail(query.lastError());
    }
}

void ShopConnection::runAgain(std::string_view sql, const Values &values,
                              const std::function<void(const QSqlQuery &query)> &row) const
{
    if (m_rows == Rows::AtOnce) { // A server: when it has gone, nothing can be freed there.
        auto query = run(sql, values);
        while (row && next(query))
            row(query);
        return;
    }
    // Out of the others while it runs, so that what a row brings about may run it as well.
    auto known = m_prepared.extract(std::string(sql));
    if (known.empty()) {
        QSqlQuery made(m_database);
        made.setForwardOnly(m_rows == Rows::OneByOne);
        if (!made.prepare(sqlText(sql)))
            fail(made.lastError());
        std::map<std::string, QSqlQuery> one;
        one.emplace(sql, std::move(made));
        known = one.extract(one.begin());
    }
    QSqlQuery &query = known.mapped();
    for (std::size_t at = 0; at < values.size(); ++at)
        query.bindValue(static_cast<int>(at), values.at(at));
    if (const bool done = query.exec(); !done)
        fail(query.lastError());
    while (row && query.next())
        row(query);
    if (query.lastError().isValid()) // A row that could not be read ends them like the last one.
        fail(query.lastError());
    query.finish(); // A statement that is not at its end holds on to its moment.
    m_prepared.insert(std::move(known));
}

std::int64_t QueryRow::number(int column) const
{
    return m_query.value(column).toLongLong();
}

std::string QueryRow::text(int column) const
{
    return m_query.value(column).toString().toStdString();
}

QByteArray QueryRow::bytes(int column) const
{
    return m_query.value(column).toByteArray();
}

bool QueryRow::isNull(int column) const
{
    return m_query.value(column).isNull();
}

void ShopConnection::eachRow(std::string_view sql,
                             const std::function<void(const StoredRow &row)> &row) const
{
    for (auto query = run(sql); next(query);)
        row(QueryRow(query));
}

QVariant ShopConnection::one(std::string_view sql, const Values &values) const
{
    auto query = run(sql, values);
    return next(query) ? query.value(0) : QVariant();
}

bool ShopConnection::next(QSqlQuery &query) const
{
    const bool found = query.next();
    if (!found && query.lastError().isValid())
        fail(query.lastError());
    return found;
}

} // namespace flarestock
