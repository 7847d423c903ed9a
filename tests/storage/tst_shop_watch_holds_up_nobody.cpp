// SPDX-License-Identifier: MIT
//
// What somebody writes into a shop is told soon after, a shop that comes later is told of when it
// is there, and a server that does not answer holds up nobody, neither at the beginning nor at the
// end. Only the program itself, once its application goes, waits for a look that is under way: Qt's
// drivers go with it.

#include "shop_somewhere.h"

#include "model/storage/shop_watch.h"

#include <QElapsedTimer>

#include <arpa/inet.h>
#include <sys/socket.h>

#include <atomic>
#include <thread>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

/// Listens on a port of its own, and never says a word.
class SilentServer {
public:
    SilentServer() : m_socket(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0))
    {
        sockaddr_in at{};
        at.sin_family = AF_INET;
        at.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        socklen_t size = sizeof(at);
        auto *address = reinterpret_cast<sockaddr *>(&at);
        if (::bind(m_socket, address, size) != 0 || ::listen(m_socket, 8) != 0 ||
            ::getsockname(m_socket, address, &size) != 0)
            qFatal("no port to listen on");
        m_port = ntohs(at.sin_port);
    }
    ~SilentServer() { ::close(m_socket); }
    SilentServer(const SilentServer &) = delete;
    SilentServer &operator=(const SilentServer &) = delete;

    [[nodiscard]] std::string address() const
    {
        return "postgresql://hand@localhost:" + std::to_string(m_port) + "/shop";
    }

private:
    int m_socket;
    int m_port = 0;
};

} // namespace

class ShopWatchTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatIsWrittenIsTold_data() { bothPlaces(); }
    void whatIsWrittenIsTold();
    void nothingIsToldAfterTheEnd();
    void aSilentServerHoldsUpNobody();
};

void ShopWatchTest::whatIsWrittenIsTold()
{
    QFETCH(bool, onServer);
    const Somewhere somewhere(onServer);
    auto shop = somewhere.make(smallShop());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    int told = 0;
    const ShopWatch watch(somewhere.path(), [&told] { ++told; });
    QVERIFY(watch.isWatching());
    QTest::qWait(700);
    QCOMPARE(told, 0);
    QVERIFY(shop->putDocument("a.toml", "b = 1\n", "anna", 1));
    QTRY_VERIFY_WITH_TIMEOUT(told > 0, 5'000);
}

void ShopWatchTest::nothingIsToldAfterTheEnd()
{
    const Somewhere somewhere(false);
    auto shop = somewhere.make(smallShop());
    QVERIFY(shop);
    int told = 0;
    {
        const ShopWatch watch(somewhere.path(), [&told] { ++told; });
        QVERIFY(watch.isWatching());
        QVERIFY(shop->putDocument("a.toml", "b = 1\n", "anna", 1));
        QThread::msleep(700); // It was seen, and what is to be told waits for the event loop.
    }
    QTest::qWait(200);
    QCOMPARE(told, 0);
}

void ShopWatchTest::aSilentServerHoldsUpNobody()
{
    const SilentServer server;
    QElapsedTimer time;
    time.start();
    {
        const ShopWatch watch(server.address(), [] {});
        QVERIFY(!watch.isWatching());
        QVERIFY2(time.elapsed() < 5'000, qPrintable(QString::number(time.elapsed())));
        time.restart();
    }
    QVERIFY2(time.elapsed() < 5'000, qPrintable(QString::number(time.elapsed())));
}

namespace {

/// Nothing but the server's end ends the look, within the seconds that libpq takes to give up.
bool endWaitsForALook(int count, char **arguments)
{
    std::atomic<bool> isServerGone = false;
    std::thread ending;
    {
        const QCoreApplication application(count, arguments);
        auto server = std::make_unique<SilentServer>();
        {
            const ShopWatch watch(server->address(), [] {});
        }
        ending = std::thread([&isServerGone, last = std::move(server)]() mutable {
            std::this_thread::sleep_for(std::chrono::milliseconds(500));
            isServerGone = true;
            last.reset();
        });
    }
    const bool waited = isServerGone;
    ending.join();
    return waited;
}

} // namespace

int main(int count, char **arguments)
{
    if (!endWaitsForALook(count, arguments)) {
        std::fputs("the program ended while a watch still looked at a server\n", stderr);
        return 1;
    }
    const QCoreApplication application(count, arguments);
    ShopWatchTest test;
    return QTest::qExec(&test, count, arguments);
}

#include "tst_shop_watch_holds_up_nobody.moc"
