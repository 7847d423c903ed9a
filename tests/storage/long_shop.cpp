// SPDX-License-Identifier: MIT
//
// long_shop FILE MOVEMENTS [average|first-in]: makes a shop file with a journal of so many
// movements through model/storage, as a shop writes it, in actions of a thousand; says how long
// that took.

#include "long_shop.h"

#include <chrono>
#include <iostream>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr std::size_t Batch = 1000;

int refuse(const Problem &problem)
{
    std::cerr << problem.sentence() << std::endl;
    return 2;
}

int measure(const std::string &file)
{
    const auto timed = [](const char *what, const auto &act) {
        const auto begun = std::chrono::steady_clock::now();
        const bool done = act();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - begun;
        std::cout << what << ": " << took.count() << (done ? " ms" : " ms, and failed")
                  << std::endl;
    };
    timed("opened to read, with balances", [&] {
        const auto shop = ShopFile::open(file, OpenMode::ReadOnly);
        return shop && shop->ledger() && shop->documents();
    });
    auto shop = ShopFile::open(file, OpenMode::ReadOnly);
    timed("opened to write, with balances", [&] {
        shop = ShopFile::open(file, OpenMode::ReadWrite);
        return shop && shop->ledger() && shop->documents();
    });
    timed("history of a part",
          [&] { return !shop->movements(LongJournal::partName(7, false))->empty(); });
    const auto now = std::chrono::system_clock::now().time_since_epoch().count();
    LongJournal journal({20'000, Costing::MovingAverage, static_cast<std::uint32_t>(now)});
    const auto append = [&] {
        auto one = journal.oneMore();
        auto bytes = one.id.bytes();
        std::copy_n(reinterpret_cast<const std::uint8_t *>(&now), sizeof now, bytes.begin() + 8);
        one.id = MovementId::ofBytes(bytes);
        const auto done = shop->append({one});
        return done && !done->front().already;
    };
    timed("first append, with the quick check before it", append);
    for (int i = 0; i < 5; ++i)
        timed("append", append);
    timed("verified", [&] {
        const auto said = ShopFile::verify(file);
        return said && said->whole;
    });
    return 0;
}

int make(const std::vector<std::string> &words);

} // namespace

int main(int count, char **given)
{
    const std::vector<std::string> words(given + 1, given + count);
    if (words.size() == 1)
        return measure(words.front());
    if (words.size() > 1)
        return make(words);
    std::cerr << "say the file, and how many movements where it is to be made\n";
    return 1;
}

namespace {

int make(const std::vector<std::string> &words)
{
    LongShop size;
    if (words.size() > 2 && words[2] == "first-in")
        size.costing = Costing::FirstInFirstOut;
    const auto wanted = static_cast<std::size_t>(std::stoull(words[1]));
    const auto begun = std::chrono::steady_clock::now();
    auto shop = ShopFile::create(words[0], newLongShop(size));
    if (!shop)
        return refuse(shop.error());
    LongJournal journal(size);
    std::size_t done = 0;
    while (done < wanted) {
        const auto action = journal.next(std::min(Batch, wanted - done));
        if (const auto written = shop->append(action); !written)
            return refuse(written.error());
        done += action.movements.size();
    }
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
    std::cout << done << " movements in " << took.count() << " s\n";
    return 0;
}

} // namespace
