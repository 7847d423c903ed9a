// SPDX-License-Identifier: MIT

#include "model/storage/server/password.h"

#include <map>
#include <mutex>

namespace flarestock {

namespace {

struct Known {
    std::string given;
    std::optional<std::string> right; ///< The last one with which a server let somebody in.
};

struct Passwords {
    std::mutex lock;
    AskPassword ask;
    std::map<std::string, Known> known; ///< By the text of the address.
};

Passwords &passwords()
{
    static Passwords all;
    return all;
}

} // namespace

void askForPasswordsBy(AskPassword ask)
{
    const std::lock_guard guard(passwords().lock);
    passwords().ask = std::move(ask);
}

std::optional<std::string> passwordFor(const ServerAddress &address)
{
    const std::lock_guard guard(passwords().lock);
    auto &known = passwords().known;
    if (const auto there = known.find(address.text()); there != known.end())
        return there->second.given;
    if (!passwords().ask)
        return std::nullopt;
    auto given = passwords().ask(address);
    if (given)
        known[address.text()].given = *given;
    return given;
}

void usePassword(const ServerAddress &address, const std::string &password)
{
    const std::lock_guard guard(passwords().lock);
    passwords().known[address.text()].given = password;
}

void passwordWasTaken(const ServerAddress &address)
{
    const std::lock_guard guard(passwords().lock);
    auto &known = passwords().known;
    if (const auto there = known.find(address.text()); there != known.end())
        there->second.right = there->second.given;
}

bool passwordWasNotTaken(const ServerAddress &address)
{
    const std::lock_guard guard(passwords().lock);
    auto &known = passwords().known;
    const auto there = known.find(address.text());
    if (there == known.end())
        return false;
    if (!there->second.right) {
        known.erase(there);
        return false;
    }
    const bool wasRight = there->second.given == *there->second.right;
    there->second.given = *there->second.right;
    return wasRight;
}

} // namespace flarestock
