// SPDX-License-Identifier: MIT

#include "model/storage/server/server_connection.h"

#include "model/storage/file/new_file.h"
#include "model/storage/moving.h"
#include "model/storage/server/password.h"
#include "model/storage/server/seat.h"
#include "model/storage/server/server_schema.h"
#include "model/storage/server/server_sql.h"
#include "model/storage/server/server_words.h"

#include <QRandomGenerator>
#include <QSqlDriver>
#include <QSqlError>
#include <QThread>

#include <algorithm>
#include <utility>

namespace flarestock {

namespace {

constexpr int TriesMost = 40;
constexpr int PauseMost = 400; ///< Milliseconds.
constexpr int LooksBetweenAsking = 10;

QString quoted(const std::string &value)
{
    return QLatin1Char('\'') + QString::fromStdString(value) + QLatin1Char('\'');
}

/// libpq's connection options (PostgreSQL 15, 34.1.2). What its environment and its files could say
/// otherwise is said here. A network that swallows everything is noticed within a minute, whether
/// something was sent (tcp_user_timeout) or only the answer is missing (keepalives).
QString optionsFor(const ServerAddress &address)
{
    QStringList options{
        QStringLiteral("connect_timeout=10"), QStringLiteral("passfile=/dev/null/none"),
        QStringLiteral("gssencmode=disable"), QStringLiteral("application_name=flarestock"),
        QStringLiteral("keepalives_idle=20"), QStringLiteral("keepalives_interval=10"),
        QStringLiteral("keepalives_count=3"), QStringLiteral("tcp_user_timeout=30000")};
    if (address.isSocket()) {
        options << QStringLiteral("sslmode=disable");
    } else {
        options << QStringLiteral("sslmode=verify-full")
                << QStringLiteral("channel_binding=require");
        if (!address.rootCertificate.empty())
            options << QStringLiteral("sslrootcert=") + quoted(address.rootCertificate);
    }
    return options.join(u';');
}

struct Setting {
    const char *set;
    const char *ask;
    const char *value;
};
/// Of this connection; each is read back.
constexpr Setting Settings[] = {
    {"SET search_path = flarestock, pg_temp", "SHOW search_path", "flarestock, pg_temp"},
    {"SET synchronous_commit = on", "SHOW synchronous_commit", "on"},
    {"SET lock_timeout = '5s'", "SHOW lock_timeout", "5s"},
    {"SET idle_in_transaction_session_timeout = '10min'",
     "SHOW idle_in_transaction_session_timeout", "10min"},
    // A table that is small is read as a whole otherwise, and who reads all of it is in everybody's
    // way.
    {"SET enable_seqscan = off", "SHOW enable_seqscan", "off"},
    {"SET client_min_messages = warning", "SHOW client_min_messages", "warning"},
};
/// Of the server.
constexpr Setting Promises[] = {
    {"", "SHOW fsync", "on"},
    {"", "SHOW full_page_writes", "on"},
    {"", "SHOW server_encoding", "UTF8"},
};

} // namespace

ServerConnection::ServerConnection(const ServerAddress &address, Use use)
    : ShopConnection(address.text(), "QPSQL", Rows::AtOnce), m_address(address), m_use(use)
{
    connect();
    applySettings();
    throwUnlessGuarded();
    if (use == Use::Write)
        throwIfMayChange();
}

ServerConnection::~ServerConnection()
{
    close();
}

void ServerConnection::connect()
{
    database().setHostName(QString::fromStdString(m_address.host));
    database().setPort(m_address.port);
    database().setDatabaseName(QString::fromStdString(m_address.database));
    database().setUserName(QString::fromStdString(m_address.role));
    database().setConnectOptions(optionsFor(m_address));
    // Over a socket the system may already say who it is.
    if (m_address.isSocket() && database().open())
        return;
    const auto password = passwordFor(m_address);
    if (password)
        database().setPassword(QString::fromStdString(*password));
    const bool opened = database().open();
    database().setPassword({});
    if (opened)
        return passwordWasTaken(m_address);
    if (passwordWasNotTaken(m_address))
        throw notReached(database().lastError(), name());
    throw notConnected(database().lastError(), name());
}

void ServerConnection::applySettings() const
{
    for (const Setting &setting : Settings) {
        run(setting.set);
        if (one(setting.ask).toString() != QLatin1String(setting.value))
            throw StorageFailure{
                {name(), std::string("does not take: ") + setting.set, "Ask who runs the server."}};
    }
    for (const Setting &promise : Promises) {
        if (one(promise.ask).toString() != QLatin1String(promise.value))
            throw StorageFailure{{name(),
                                  "does not keep what it acknowledges: it does not say " +
                                      std::string(promise.value) + " to " + promise.ask,
                                  "Ask who runs the server to set that."}};
    }
}

void ServerConnection::throwUnlessGuarded() const
{
    if (m_address.isSocket() || one(sql::SelectIsEncrypted).toBool())
        return;
    throw StorageFailure{{name(), "is reached without TLS", "Ask who runs the server."}};
}

void ServerConnection::throwIfMayChange() const
{
    if (!one(sql::SelectMayChange).toBool())
        return;
    throw StorageFailure{{name(), "lets this role change the journal",
                          "Work as a role that flarestock server setup --hand has made."}};
}

void ServerConnection::rollBack() const noexcept
{
    if (!m_inTransaction)
        return;
    m_inTransaction = false;
    QSqlQuery(database()).exec(QStringLiteral("ROLLBACK"));
}

void ServerConnection::once(const std::function<void()> &action)
{
    run("BEGIN ISOLATION LEVEL SERIALIZABLE");
    m_inTransaction = true;
    m_nextLamport = 0;
    try {
        action();
        run("COMMIT");
        m_inTransaction = false;
    } catch (...) {
        rollBack();
        throw;
    }
}

void ServerConnection::wholly(const std::function<void()> &action)
{
    if (m_use == Use::Read)
        throw StorageFailure{
            {name(), "cannot be written: it was opened to be read", "Open it to write."}};
    for (int tries = 1;; ++tries) {
        // Held until it is given back, or the connection ends: before the transaction, which sees
        // the shop as it is when it begins. Who waits too long goes on without it.
        const bool alone = tries > 1;
        QSqlQuery lock(database());
        const bool isHeld =
            lock.exec(QString::fromLatin1(alone ? sql::LockAlone : sql::LockShared));
        const auto giveBack = [&] {
            if (isHeld)
                lock.exec(QString::fromLatin1(alone ? sql::UnlockAlone : sql::UnlockShared));
        };
        try {
            once(action);
            return giveBack();
        } catch (StorageFailure &failure) {
            giveBack();
            if (failure.answer != StorageFailure::Answer::InTheWay)
                throw;
            if (tries == TriesMost) {
                failure.problem.wrong = "was written by others at the same moment, " +
                                        std::to_string(tries) + " times over";
                failure.problem.remedy = "Nothing of it was written; try again in a minute.";
                throw;
            }
        }
        ++m_triedAgain;
        const int most = std::min(PauseMost, 4 << std::min(tries, 10));
        QThread::msleep(QRandomGenerator::global()->bounded(static_cast<quint32>(most)));
    }
}

void ServerConnection::atOneMoment(const std::function<void()> &look) const
{
    if (m_inTransaction)
        return look();
    run("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY");
    m_inTransaction = true;
    try {
        look();
        run("COMMIT");
        m_inTransaction = false;
    } catch (...) {
        rollBack();
        throw;
    }
}

ChainEnd ServerConnection::chainEnd()
{
    const QByteArray seat = seatOf(m_address);
    for (;;) {
        auto query = run(sql::SelectReplicaOf, {seat});
        if (next(query))
            return {query.value(0).toLongLong(), seat, query.value(1).toLongLong(),
                    query.value(2).toLongLong(), query.value(3).toByteArray()};
        run(sql::InsertReplica, {seat, QByteArray(32, '\0')});
    }
}

std::int64_t ServerConnection::nextLamport(std::int64_t last)
{
    if (m_nextLamport == 0 || m_nextLamport % sql::LamportBlock == 1)
        m_nextLamport = one("SELECT nextval('lamport')").toLongLong();
    if (m_nextLamport <= last)
        throw StorageFailure{{name(), "counts its entries from further back than it has them",
                              "Do not write to it: ask who runs the server what was restored."}};
    return m_nextLamport++;
}

bool ServerConnection::hasNews()
{
    if (!m_listens) {
        QObject::connect(database().driver(), &QSqlDriver::notification,
                         [this] { m_wasTold = true; });
        if (!database().driver()->subscribeToNotification(QStringLiteral("flarestock")))
            fail(database().driver()->lastError());
        m_listens = m_wasTold = true;
    }
    if (++m_looks % LooksBetweenAsking == 0)
        run("SELECT 1"); // Whether it is still there.
    return std::exchange(m_wasTold, false);
}

void ServerConnection::copyTo(const std::filesystem::path &file) const
{
    makeFile(file, [this](FileConnection &made) { copyInto(made, *this); });
}

void ServerConnection::fail(const QSqlError &error) const
{
    // An error ends the transaction anyway; ended at once, statements can still be put away.
    rollBack();
    throw failureOf(error, name());
}

} // namespace flarestock
