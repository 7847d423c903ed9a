// SPDX-License-Identifier: MIT
//
// Shop watch: says that somebody has written into a shop, this program through another connection
// or another seat, within half a second: a file is asked, a server says it by itself. It looks from
// a thread of its own, so that a server that does not answer holds up nobody, and speaks by the
// event loop of the thread that it was made in.
//
//   const ShopWatch watch(path, [this] { readAgain(); });

#pragma once

#include <QThread>

#include <filesystem>
#include <functional>
#include <memory>

namespace flarestock {

class ShopWatch {
public:
    /// A shop that cannot be opened now is tried again, and so is one that no longer answers; then
    /// `changed` is called, because nobody knows what was missed. Whatever is written once this has
    /// returned is told.
    ShopWatch(std::filesystem::path shop, std::function<void()> changed);
    /// From now on `changed` is not called.
    ~ShopWatch();
    ShopWatch(const ShopWatch &) = delete;
    ShopWatch &operator=(const ShopWatch &) = delete;

    [[nodiscard]] bool isWatching() const;

private:
    class Look;
    struct Ear;

    std::shared_ptr<Ear> m_ear;
    std::unique_ptr<QThread> m_thread;
};

} // namespace flarestock
