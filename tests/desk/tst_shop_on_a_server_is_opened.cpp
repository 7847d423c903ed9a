// SPDX-License-Identifier: MIT
//
// A shop on a server is opened at the desk by typing its address and password; the window stays
// awake, a wrong one is said and can be typed again. The server is a real one, over TLS.

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/launch/server_password.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "app/workshop/clock.h"
#include "app/workshop/demo_shop.h"
#include "model/storage/server/password.h"
#include "seen.h"
#include "sheet_pictures.h"
#include "tests/storage/shop_somewhere.h"

#include <QTest>

using namespace flarestock;

namespace {

constexpr auto Password = "a word of the tests";

} // namespace

class ServerIsOpened : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void cleanupTestCase() { m_somewhere.reset(); }
    void init();
    void byItsAddressAndPassword();
    void aWrongPasswordIsSaidAndTypedAgain();
    void aPasswordThatWasRightOutlivesAFailure();
    void whatIsNoAddressIsSaid();
    void aServerThatIsNotThereIsSaid();
    void whereThereIsNoKeyringItIsSaid();

private:
    [[nodiscard]] QQuickItem *item(const char *name) const { return seen(*m_window, name); }
    [[nodiscard]] QString words(const char *name) const
    {
        const QQuickItem *found = item(name);
        return found == nullptr ? QString() : found->property("text").toString();
    }
    void key(Qt::Key key) { QTest::keyClick(m_window, key); }
    void write(const char *field, const QString &text)
    {
        QTRY_VERIFY2(item(field) != nullptr, field);
        item(field)->forceActiveFocus(Qt::TabFocusReason);
        for (const QChar letter : text)
            QTest::keyClick(m_window, letter.toLatin1());
    }
    void ask(const QString &address, const QString &password)
    {
        QTRY_VERIFY(item("openServer") != nullptr);
        item("openServer")->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_Return);
        write("serverAddress", address);
        key(Qt::Key_Return);
        QVERIFY(item("serverPassword")->hasActiveFocus());
        write("serverPassword", password);
        key(Qt::Key_Return);
    }

    std::unique_ptr<tests::Somewhere> m_somewhere;
    QString m_address;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
};

void ServerIsOpened::initTestCase()
{
    prepareScreens();
    askForPasswordsBy(nullptr);
    m_somewhere = std::make_unique<tests::Somewhere>(true);
    const auto shop = newShopOf(demoDocuments(), nowMilliseconds());
    QVERIFY(shop);
    const auto made = m_somewhere->make(*shop);
    QVERIFY2(made, made ? "" : made.error().sentence().c_str());
    const auto raw = m_somewhere->raw();
    raw->run(QStringLiteral("DROP ROLE IF EXISTS typed"));
    QCOMPARE(raw->run(QStringLiteral("CREATE ROLE typed LOGIN PASSWORD '%1' IN ROLE hand")
                          .arg(QString::fromLatin1(Password))),
             QString());
    const auto server = tests::TestServer::found();
    m_address = QStringLiteral("postgresql://typed@localhost:%1%2?sslrootcert=%3")
                    .arg(server.port)
                    .arg(QUrl(QString::fromStdString(m_somewhere->owner())).path())
                    .arg(QString::fromLatin1(QUrl::toPercentEncoding(
                        QString::fromStdString(server.folder + "/authority.pem"))));
}

void ServerIsOpened::init()
{
    m_screens.reset();
    m_desk.reset();
    m_look.reset();
    m_look = std::make_unique<Look>(nullptr);
    m_desk = std::make_unique<Desk>(nullptr);
    m_desk->setDeeds(
        {openShopFile, makeDemoFile, {useServerPassword, openShopFile, keepPasswordOf}});
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_window = m_screens->window();
    m_window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(m_window));
    (void)pictureOf(*m_window, QSize(1440, 900));
}

void ServerIsOpened::byItsAddressAndPassword()
{
    ask(m_address, QString::fromLatin1(Password));
    QVERIFY(m_desk->server()->isBusy()); // It came back before the server answered.
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->hasShop(), 60'000);
    QVERIFY(m_desk->build()->isOpen());
    QTRY_VERIFY(item("serverPassword") == nullptr);
    QTRY_VERIFY(item("lineMap") != nullptr);
    const QString database = m_address.section(u'/', 3, 3).section(u'?', 0, 0);
    QCOMPARE(words("shopFile"),
             QString(database + QStringLiteral(" on localhost  ·  ") + m_desk->kept()));
    QCOMPARE(m_screens->warnings(), QStringList());
}

void ServerIsOpened::aWrongPasswordIsSaidAndTypedAgain()
{
    ask(m_address, QStringLiteral("another word"));
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->server()->isBusy(), 60'000);
    QTRY_VERIFY2(words("sheetProblem").contains(QStringLiteral("password")),
                 qPrintable(words("sheetProblem")));
    QVERIFY(!m_desk->hasShop());
    QCOMPARE(words("serverPassword"), QString());
    pictureOfSheet(*m_window, *m_look, "server");
    write("serverPassword", QString::fromLatin1(Password));
    key(Qt::Key_Return);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->hasShop(), 60'000);
}

void ServerIsOpened::aPasswordThatWasRightOutlivesAFailure()
{
    const std::string address = m_address.toStdString();
    const auto at = ServerAddress::parse(address);
    QVERIFY(at);
    usePassword(*at, Password);
    QVERIFY(openShopFile(address));
    const auto raw = m_somewhere->raw();
    raw->run(QStringLiteral("ALTER ROLE typed CONNECTION LIMIT 0"));
    const auto away = openShopFile(address);
    raw->run(QStringLiteral("ALTER ROLE typed CONNECTION LIMIT -1"));
    QVERIFY(!away);
    QVERIFY2(away.error().wrong.starts_with("does not let anybody in now"),
             away.error().wrong.c_str());
    const auto back = openShopFile(address);
    QVERIFY2(back, back ? "" : back.error().sentence().c_str());
    usePassword(*at, "another word");
    const auto wrong = openShopFile(address);
    QVERIFY(!wrong);
    QVERIFY2(wrong.error().wrong.find("does not take the password") != std::string::npos,
             wrong.error().wrong.c_str());
    QVERIFY(openShopFile(address)); // The right one holds again.
}

void ServerIsOpened::whatIsNoAddressIsSaid()
{
    ask(QStringLiteral("shop.example"), QString());
    const QString like = QStringLiteral(" Write it like postgresql://anna@shop.example/shop.");
    QTRY_COMPARE(words("sheetProblem"),
                 QString(QStringLiteral("shop.example is not the address of a server.") + like));
    m_desk->server()->open(QStringLiteral(" "), QString(), false);
    QTRY_COMPARE(words("sheetProblem"),
                 QString(QStringLiteral("The address of the server is missing.") + like));
    QVERIFY(!m_desk->server()->isBusy());
}

void ServerIsOpened::aServerThatIsNotThereIsSaid()
{
    ask(QStringLiteral("postgresql://typed@localhost:1/shop"), QString::fromLatin1(Password));
    QTRY_VERIFY_WITH_TIMEOUT(!words("sheetProblem").isEmpty(), 60'000);
    QVERIFY2(words("sheetProblem").contains(QStringLiteral("localhost")),
             qPrintable(words("sheetProblem")));
    QVERIFY(!m_desk->hasShop());
}

void ServerIsOpened::whereThereIsNoKeyringItIsSaid()
{
    qputenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nowhere");
    m_desk->server()->open(m_address, QString::fromLatin1(Password), true);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->hasShop(), 60'000);
    QTRY_COMPARE(m_desk->build()->lastStep(),
                 QStringLiteral("The keyring does not take the password."));
}

QTEST_MAIN(ServerIsOpened)
#include "tst_shop_on_a_server_is_opened.moc"
