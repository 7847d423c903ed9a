// SPDX-License-Identifier: MIT

#include "model/storage/shop_watch.h"

#include "model/storage/file/opened_file.h"
#include "model/storage/server/opened_server.h"

#include <chrono>

namespace flarestock {

namespace {

constexpr std::chrono::milliseconds BetweenLooks{300};
constexpr std::chrono::milliseconds BetweenTries{10'000};

} // namespace

ShopWatch::ShopWatch(std::filesystem::path shop, std::function<void()> changed)
    : m_shop(std::move(shop)), m_changed(std::move(changed))
{
    m_timer.callOnTimeout([this] { look(); });
    open();
}

ShopWatch::~ShopWatch() = default;

void ShopWatch::open()
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
    m_timer.start(opened ? BetweenLooks : BetweenTries);
}

void ShopWatch::look()
{
    if (!m_connection) {
        open();
        if (m_connection)
            m_changed();
        return;
    }
    const auto news = guarded([this] { return m_connection->hasNews(); });
    if (!news) {
        m_connection.reset();
        m_timer.start(BetweenTries);
    } else if (*news) {
        m_changed();
    }
}

} // namespace flarestock
