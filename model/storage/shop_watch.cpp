// SPDX-License-Identifier: MIT

#include "model/storage/shop_watch.h"

#include "model/storage/file/opened_file.h"
#include "model/storage/server/opened_server.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QSemaphore>
#include <QTimer>

#include <atomic>
#include <chrono>
#include <mutex>
#include <vector>

namespace flarestock {

namespace {

constexpr std::chrono::milliseconds BetweenLooks{300};
constexpr std::chrono::milliseconds BetweenTries{10'000};
/// For the first opening; one that takes longer counts as one that was missed.
constexpr int FirstOpeningMs = 1'000;
/// For a look that is under way; one that takes longer ends by itself.
constexpr int LastLookMs = 200;
/// For all looks that are still under way when the program ends: longer than a server that has gone
/// silent is waited for.
constexpr int ProgramsEndMs = 60'000;

/// Threads whose watch has gone and whose look is still under way. A look uses Qt's drivers and
/// what those load, which go with the program: so the end of the application waits for it.
class LastLooks {
public:
    static LastLooks &instance()
    {
        static auto *const looks = new LastLooks; // Outlives every thread.
        return *looks;
    }
    void add(std::unique_ptr<QThread> thread)
    {
        const std::lock_guard guard(m_lock);
        std::erase_if(m_threads, [](const auto &each) { return each->isFinished(); });
        if (m_threads.empty())
            qAddPostRoutine([] { instance().waitForAll(); });
        m_threads.push_back(std::move(thread));
    }

private:
    void waitForAll()
    {
        const QDeadlineTimer until(ProgramsEndMs);
        const std::lock_guard guard(m_lock);
        for (auto &thread : m_threads) {
            if (!thread->wait(until)) // A server that is stuck, and its look for as long as it is.
                static_cast<void>(thread.release());
        }
        m_threads.clear();
    }

    std::mutex m_lock;
    std::vector<std::unique_ptr<QThread>> m_threads;
};

} // namespace

/// Who is told, for as long as there is somebody.
struct ShopWatch::Ear {
    std::function<void()> changed;
    std::mutex lock;
    std::unique_ptr<QObject> hears = std::make_unique<QObject>(); ///< In the thread that is told.
    QSemaphore firstOpening;
    std::atomic<bool> isWatching = false;
    std::atomic<bool> missedTheFirst = false;

    void tell()
    {
        const std::lock_guard guard(lock);
        if (hears)
            QMetaObject::invokeMethod(hears.get(), changed, Qt::QueuedConnection);
    }
};

/// Lives in the watch's own thread, and its connection with it.
class ShopWatch::Look : public QObject {
public:
    Look(std::filesystem::path shop, std::shared_ptr<Ear> ear)
        : m_shop(std::move(shop)), m_ear(std::move(ear))
    {
        m_timer.callOnTimeout(this, [this] { look(); });
    }
    void begin()
    {
        open();
        m_ear->firstOpening.release();
        if (m_connection && m_ear->missedTheFirst)
            m_ear->tell();
    }

private:
    void open()
    {
        const auto opened = guarded([this] {
            if (isServer(m_shop))
                m_connection = openServer(m_shop.string(), OpenMode::ReadOnly);
            else
                m_connection = openFile(m_shop, OpenMode::ReadOnly);
            static_cast<void>(m_connection->hasNews()); // From now on.
        });
        if (!opened)
            m_connection.reset();
        m_ear->isWatching = m_connection != nullptr;
        m_timer.start(opened ? BetweenLooks : BetweenTries);
    }
    void look()
    {
        if (!m_connection) {
            open();
            if (m_connection)
                m_ear->tell();
            return;
        }
        const auto news = guarded([this] { return m_connection->hasNews(); });
        if (!news) {
            m_connection.reset();
            m_ear->isWatching = false;
            m_timer.start(BetweenTries);
        } else if (*news) {
            m_ear->tell();
        }
    }

    std::filesystem::path m_shop;
    std::shared_ptr<Ear> m_ear;
    std::unique_ptr<ShopConnection> m_connection;
    QTimer m_timer{this};
};

ShopWatch::ShopWatch(std::filesystem::path shop, std::function<void()> changed)
    : m_ear(std::make_shared<Ear>()), m_thread(std::make_unique<QThread>())
{
    m_ear->changed = std::move(changed);
    auto *look = new Look(std::move(shop), m_ear); // Goes with its thread.
    look->moveToThread(m_thread.get());
    QObject::connect(m_thread.get(), &QThread::started, look, [look] { look->begin(); });
    QObject::connect(m_thread.get(), &QThread::finished, look, &QObject::deleteLater);
    m_thread->start();
    if (m_ear->firstOpening.tryAcquire(1, FirstOpeningMs))
        return;
    m_ear->missedTheFirst = true;
    if (m_ear->firstOpening.available() > 0) // It was opened just now, and may not have seen that.
        m_ear->tell();
}

ShopWatch::~ShopWatch()
{
    {
        const std::lock_guard guard(m_ear->lock);
        m_ear->hears.reset();
    }
    m_thread->quit();
    if (m_thread->wait(LastLookMs))
        return;
    LastLooks::instance().add(std::move(m_thread)); // A server that does not answer.
}

bool ShopWatch::isWatching() const
{
    return m_ear->isWatching;
}

} // namespace flarestock
