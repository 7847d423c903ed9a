// SPDX-License-Identifier: MIT
//
// Seat writer: one seat of several. Says each action on its standard output as soon as, and only
// when, the shop has acknowledged it: "took ID", "took ID already", "refused ID". What is not
// confirmed it says in a sentence on its standard error, and ends with 2.
//
//   seat_writer take SHOP FIRST COUNT PIECES   each takes so many of BK-A out of the bin for good
//   seat_writer watch SHOP MILLISECONDS        says "watching", then "changed" whenever others
//   wrote
//
// An action of one number is the same in every run, its id included.

#include "model/storage/shop_file.h"
#include "model/storage/shop_watch.h"

#include <QCoreApplication>
#include <QTimer>

#include <iostream>
#include <unistd.h>

using namespace flarestock;

namespace {

Movement taken(std::uint32_t number, std::int64_t pieces)
{
    std::array<std::uint8_t, 10> bytes{};
    for (std::size_t i = 0; i < 4; ++i)
        bytes[i + 4] = static_cast<std::uint8_t>(number >> (24 - 8 * i));
    Movement movement;
    movement.id = MovementId::make(1'780'000'000'000, bytes);
    movement.part = "BK-A";
    movement.quantity = pieces;
    movement.from = "A1";
    movement.to = "used-up";
    movement.who = "seat";
    return movement;
}

void say(std::string line)
{
    line += '\n';
    if (::write(1, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
        ::_exit(3);
}

int refuse(const Problem &problem)
{
    std::cerr << problem.sentence() << std::endl;
    return 2;
}

int take(const std::vector<std::string> &words)
{
    auto shop = ShopFile::open(words[1], OpenMode::ReadWrite);
    if (!shop)
        return refuse(shop.error());
    const auto first = static_cast<std::uint32_t>(std::stoul(words[2]));
    const auto count = static_cast<std::uint32_t>(std::stoul(words[3]));
    for (std::uint32_t number = first; number < first + count; ++number) {
        const auto movement = taken(number, std::stol(words[4]));
        const auto done = shop->append({movement});
        if (done)
            say("took " + movement.id.text() + (done->front().already ? " already" : ""));
        else if (done.error().wrong == text(Refusal::NotEnough))
            say("refused " + movement.id.text());
        else
            return refuse(done.error());
    }
    return 0;
}

int watch(const std::vector<std::string> &words)
{
    const ShopWatch watch(words[1], [] { say("changed"); });
    if (!watch.isWatching())
        return refuse({words[1], "cannot be watched", "Look whether it is there."});
    say("watching");
    QTimer::singleShot(std::stoi(words[2]), [] { QCoreApplication::quit(); });
    return QCoreApplication::exec();
}

} // namespace

int main(int count, char **given)
{
    const QCoreApplication application(count, given);
    const std::vector<std::string> words(given + 1, given + count);
    if (words.size() == 5 && words[0] == "take")
        return take(words);
    if (words.size() == 3 && words[0] == "watch")
        return watch(words);
    std::cerr << "say take or watch; see the head of the source\n";
    return 1;
}
