// SPDX-License-Identifier: MIT

#include "model/storage/server/password.h"

#include <map>
#include <mutex>

namespace flarestock {

namespace {

struct Passwords {
    std::mutex lock;
    AskPassword ask;
    std::map<std::string, std::string> known; ///< By the text of the address.
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
        return there->second;
    if (!passwords().ask)
        return std::nullopt;
    auto given = passwords().ask(address);
    if (given)
        known.insert_or_assign(address.text(), *given);
    return given;
}

void usePassword(const ServerAddress &address, const std::string &password)
{
    const std::lock_guard guard(passwords().lock);
    passwords().known.insert_or_assign(address.text(), password);
}

void forgetPassword(const ServerAddress &address)
{
    const std::lock_guard guard(passwords().lock);
    passwords().known.erase(address.text());
}

} // namespace flarestock
