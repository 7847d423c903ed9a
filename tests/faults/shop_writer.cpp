// SPDX-License-Identifier: MIT
//
// Shop writer: a program that lives longer than one command and writes a shop file through
// model/storage, as the desk does. It says each action on its standard output as soon as, and only
// when, the shop file has acknowledged it; a problem it says in a sentence, and ends with 2.
//
//   shop_writer make FILE                  the small shop that the fault tests work on
//   shop_writer moves FILE FIRST COUNT     actions FIRST, FIRST + 1 …, two movements each
//   shop_writer document FILE FIRST COUNT  versions of a document, each larger than the one before
//   shop_writer box FILE FIRST COUNT       looks into a box
//   shop_writer verify FILE                says "whole", or what is wrong
//   shop_writer backup FILE TO             a copy of the shop as it is, while others write
//
// An action of one number is the same in every run, ids included.

#include "model/storage/shop_file.h"

#include <chrono>
#include <functional>
#include <iostream>
#include <unistd.h>

using namespace flarestock;

namespace {

constexpr std::int64_t FirstDay = 1'780'000'000'000;

MovementId idOf(std::uint32_t action, std::uint8_t leg)
{
    std::array<std::uint8_t, 10> bytes{};
    for (std::size_t i = 0; i < 4; ++i)
        bytes[i + 5] = static_cast<std::uint8_t>(action >> (24 - 8 * i));
    bytes[9] = leg;
    return MovementId::make(FirstDay, bytes);
}

std::int64_t nowMilliseconds()
{
    const auto now = std::chrono::system_clock::now().time_since_epoch();
    return std::chrono::duration_cast<std::chrono::milliseconds>(now).count();
}

Movement movementOf(std::uint32_t action, std::uint8_t leg)
{
    Movement movement;
    movement.id = idOf(action, leg);
    movement.who = "writer";
    movement.document = "action " + std::to_string(action);
    movement.at = nowMilliseconds();
    return movement;
}

NewShop smallShop()
{
    NewShop shop{{"Shop of the fault tests", Currency::parse("USD").value()},
                 {{"A1", "bin A1", PlaceKind::Bin},
                  {"A2", "bin A2", PlaceKind::Bin},
                  {"trailer-1", "drawer", PlaceKind::Drawer},
                  {"car-1", "car", PlaceKind::Car},
                  {"used-up", "used up", PlaceKind::UsedUp},
                  {"opening", "opening", PlaceKind::Opening}},
                 {{"shop.toml", "title = \"Shop of the fault tests\"\n"},
                  {"parts/brackets.csv", "part,kind,description\nBK-A,bracket,one\n"
                                         "BK-B,bracket,another\nBK-C,bracket,a third\n"}},
                 {},
                 {},
                 "writer",
                 FirstDay};
    std::uint8_t leg = 0;
    for (const char *part : {"BK-A", "BK-B", "BK-C"}) {
        auto movement = movementOf(0, leg++);
        movement.part = part;
        movement.quantity = 700;
        movement.value = 700'000'003 + leg; // Does not divide, so that shares have to be rounded.
        movement.from = "opening";
        movement.to = "A1";
        shop.opening.push_back(std::move(movement));
    }
    return shop;
}

/// Some of a part into the drawer and one of another onto the car; the next action takes both back.
std::vector<Movement> actionOf(std::uint32_t action)
{
    const std::array<std::string, 3> parts{"BK-A", "BK-B", "BK-C"};
    const std::uint32_t pair = action / 2;
    auto first = movementOf(action, 0);
    first.part = parts[pair % 3];
    first.quantity = 1 + pair % 4;
    first.from = "A1";
    first.to = "trailer-1";
    auto second = movementOf(action, 1);
    second.part = parts[(pair + 1) % 3];
    second.quantity = 1;
    second.from = "A1";
    second.to = "car-1";
    if (action % 2 == 1) {
        std::swap(first.from, first.to);
        std::swap(second.from, second.to);
    }
    return {first, second};
}

void say(std::string line)
{
    line += '\n';
    if (::write(1, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
        std::abort();
}

Result<std::string> moved(ShopFile &shop, std::uint32_t action)
{
    const auto done = shop.append(actionOf(action));
    if (!done)
        return tl::unexpected(done.error());
    return "action " + std::to_string(action) + (done->front().already ? " already" : "");
}

Result<std::string> written(ShopFile &shop, std::uint32_t version)
{
    std::string text;
    for (std::uint32_t line = 0; line < 40 * version; ++line)
        text += std::to_string(version) + " of builds, line " + std::to_string(line) + '\n';
    const auto done = shop.putDocument("notes.txt", text, "writer", nowMilliseconds());
    if (!done)
        return tl::unexpected(done.error());
    return "document " + std::to_string(version);
}

Result<std::string> looked(ShopFile &shop, std::uint32_t look)
{
    BoxCheck check{idOf(look, 2), "BK-A", "lot " + std::to_string(look), {"BK-B"}, "writer", 0};
    check.at = nowMilliseconds();
    const auto done = shop.record(check);
    if (!done)
        return tl::unexpected(done.error());
    return "box " + std::to_string(look) + (done->already ? " already" : "");
}

int refuse(const Problem &problem)
{
    std::cerr << problem.sentence() << std::endl;
    return 2;
}

using Action = std::function<Result<std::string>(ShopFile &, std::uint32_t)>;

int act(const std::vector<std::string> &words, const Action &action)
{
    auto shop = ShopFile::open(words[1], OpenMode::ReadWrite);
    if (!shop)
        return refuse(shop.error());
    const auto first = static_cast<std::uint32_t>(std::stoul(words[2]));
    const auto count = static_cast<std::uint32_t>(std::stoul(words[3]));
    for (std::uint32_t number = first; number < first + count; ++number) {
        const auto done = action(*shop, number);
        if (!done)
            return refuse(done.error());
        say(*done);
    }
    return 0;
}

int verify(const std::string &file)
{
    const auto said = ShopFile::verify(file);
    if (!said)
        return refuse(said.error());
    if (said->whole) {
        say("whole");
        return 0;
    }
    for (const auto &wrong : said->problems)
        std::cerr << wrong << '\n';
    std::cerr << "the last good movement is " << said->lastGood << std::endl;
    return 2;
}

int backUp(const std::string &file, const std::string &to)
{
    const auto shop = ShopFile::open(file, OpenMode::ReadOnly);
    if (!shop)
        return refuse(shop.error());
    if (const auto made = shop->backUp(to); !made)
        return refuse(made.error());
    say("backed up");
    return 0;
}

} // namespace

int main(int count, char **given)
{
    const std::vector<std::string> words(given + 1, given + count);
    if (words.size() == 2 && words[0] == "make") {
        const auto made = ShopFile::create(words[1], smallShop());
        if (!made)
            return refuse(made.error());
        say("made");
        return 0;
    }
    if (words.size() == 2 && words[0] == "verify")
        return verify(words[1]);
    if (words.size() == 3 && words[0] == "backup")
        return backUp(words[1], words[2]);
    if (words.size() == 4 && words[0] == "moves")
        return act(words, moved);
    if (words.size() == 4 && words[0] == "document")
        return act(words, written);
    if (words.size() == 4 && words[0] == "box")
        return act(words, looked);
    std::cerr << "say make, moves, document, box, verify or backup; see the head of the source\n";
    return 1;
}
