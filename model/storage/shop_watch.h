// SPDX-License-Identifier: MIT
//
// Shop watch: says that somebody has written into a shop, this program through another connection
// or another seat, within half a second: a file is asked, a server says it by itself. It needs the
// event loop of the thread that it was made in.
//
//   const ShopWatch watch(path, [this] { readAgain(); });

#pragma once

#include <QTimer>

#include <filesystem>
#include <functional>
#include <memory>

namespace flarestock {

class ShopConnection;

class ShopWatch {
public:
    /// A shop that cannot be opened now is tried again, and so is one that no longer answers; then
    /// `changed` is called, because nobody knows what was missed.
    ShopWatch(std::filesystem::path shop, std::function<void()> changed);
    ~ShopWatch();
    ShopWatch(const ShopWatch &) = delete;
    ShopWatch &operator=(const ShopWatch &) = delete;

    [[nodiscard]] bool isWatching() const noexcept { return m_connection != nullptr; }

private:
    void open();
    void look();

    std::filesystem::path m_shop;
    std::function<void()> m_changed;
    std::unique_ptr<ShopConnection> m_connection;
    QTimer m_timer;
};

} // namespace flarestock
