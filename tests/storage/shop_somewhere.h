// SPDX-License-Identifier: MIT
//
// A shop that a test works on: in a file, or in a database of its own on the server that ctest has
// started (tests/server). A test that runs on both begins with bothPlaces().

#pragma once

#include "shop_for_tests.h"

#include "model/storage/server/server_setup.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QTest>
#include <QUrl>

#include <unistd.h>

namespace flarestock::tests {

/// For initTestCase_data(): each function runs once a place.
inline void bothPlaces()
{
    QTest::addColumn<bool>("onServer");
    QTest::newRow("file") << false;
    QTest::newRow("server") << true;
}

/// The server of the tests: its folder, which is that of its socket, and its port.
struct TestServer {
    std::string folder;
    int port = 0;

    static TestServer found()
    {
        QFile file(QStringLiteral(FLARESTOCK_BINARY_DIR "/tests/server/where"));
        if (!file.open(QIODevice::ReadOnly))
            qFatal("the server of the tests is not started: run this by ctest");
        const auto lines = file.readAll().split('\n');
        return {lines.at(0).toStdString(), lines.at(1).toInt()};
    }
    /// Over the socket.
    [[nodiscard]] std::string address(const std::string &role, const std::string &database) const
    {
        return "postgresql://" + role + "@" +
               QUrl::toPercentEncoding(QString::fromStdString(folder)).toStdString() + ":" +
               std::to_string(port) + "/" + database;
    }
};

/// A connection beside the shop's, as somebody who may do everything.
class RawConnection {
public:
    RawConnection(const TestServer &server, const std::string &database)
        : m_raw(QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), QStringLiteral("raw")))
    {
        m_raw.setHostName(QString::fromStdString(server.folder));
        m_raw.setPort(server.port);
        m_raw.setDatabaseName(QString::fromStdString(database));
        m_raw.setUserName(QStringLiteral("postgres"));
        open();
        run(QStringLiteral("SET search_path = flarestock"));
    }
    explicit RawConnection(const std::filesystem::path &file)
        : m_raw(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("raw")))
    {
        m_raw.setDatabaseName(QString::fromStdString(file.string()));
        open();
    }
    ~RawConnection()
    {
        m_raw = {};
        QSqlDatabase::removeDatabase(QStringLiteral("raw"));
    }
    RawConnection(const RawConnection &) = delete;
    RawConnection &operator=(const RawConnection &) = delete;

    /// What went wrong; empty where nothing did.
    QString run(const QString &statement)
    {
        QSqlQuery query(m_raw);
        return query.exec(statement) ? QString() : query.lastError().text();
    }
    QString one(const QString &statement)
    {
        QSqlQuery query(m_raw);
        return query.exec(statement) && query.next() ? query.value(0).toString() : QString();
    }

private:
    void open()
    {
        if (!m_raw.open())
            qFatal("%s", qPrintable(m_raw.lastError().text()));
    }
    QSqlDatabase m_raw;
};

class Somewhere {
public:
    explicit Somewhere(bool onServer) : m_onServer(onServer)
    {
        if (!onServer)
            return;
        qputenv("XDG_DATA_HOME", m_folder.dir.path().toUtf8()); // Where a seat keeps its name.
        static int count = 0;
        m_server = TestServer::found();
        m_database = "test_" + std::to_string(::getpid()) + "_" + std::to_string(++count);
        const QString made = RawConnection(m_server, "postgres")
                                 .run(QStringLiteral("CREATE DATABASE ") + database());
        if (!made.isEmpty())
            qFatal("%s", qPrintable(made));
    }
    ~Somewhere()
    {
        if (m_onServer)
            RawConnection(m_server, "postgres")
                .run(QStringLiteral("DROP DATABASE %1 WITH (FORCE)").arg(database()));
    }
    Somewhere(const Somewhere &) = delete;
    Somewhere &operator=(const Somewhere &) = delete;

    /// Makes it, and opens it as a hand.
    [[nodiscard]] Result<ShopFile> make(const NewShop &shop) const
    {
        if (!m_onServer)
            return ShopFile::create(m_folder.file(), shop);
        const auto made = setUpServer({owner(), shop, {"hand"}});
        if (!made)
            return tl::unexpected(made.error());
        return ShopFile::open(path(), OpenMode::ReadWrite);
    }
    /// What it is opened by.
    [[nodiscard]] std::filesystem::path path() const
    {
        return m_onServer ? std::filesystem::path(m_server.address("hand", m_database))
                          : m_folder.file();
    }
    [[nodiscard]] std::string owner() const { return m_server.address("postgres", m_database); }
    /// Beside it, as somebody who may do everything.
    [[nodiscard]] std::unique_ptr<RawConnection> raw() const
    {
        return m_onServer ? std::make_unique<RawConnection>(m_server, m_database)
                          : std::make_unique<RawConnection>(m_folder.file());
    }
    [[nodiscard]] const Folder &folder() const { return m_folder; }

private:
    [[nodiscard]] QString database() const { return QString::fromStdString(m_database); }

    bool m_onServer;
    Folder m_folder;
    TestServer m_server;
    std::string m_database;
};

} // namespace flarestock::tests
