// SPDX-License-Identifier: MIT

#include "app/desk/launch/server_password.h"

#include "app/desk/launch/options.h"
#include "app/workshop/keyring.h"
#include "app/workshop/password_source.h"
#include "model/storage/server/password.h"

namespace flarestock {

void takeServerPasswords(const DeskOptions &options)
{
    if (options.isSeen() && options.passwordFrom < 0)
        return askForPasswordsBy(nullptr); // useServerPassword() has it, or the sheet asks.
    takePasswordsFrom(options.passwordFrom);
}

bool keepServerPassword(const DeskOptions &options)
{
    const std::string shop = options.shop.toStdString();
    return !options.keepPassword || !isServer(shop) || keepPasswordOf(shop);
}

void useServerPassword(const std::string &address, const std::string &password)
{
    const auto at = ServerAddress::parse(address);
    if (!at)
        return; // Opening it says why.
    const auto known = password.empty() ? passwordInKeyring(at->text()) : std::optional(password);
    if (known)
        usePassword(*at, *known);
}

bool keepPasswordOf(const std::string &address)
{
    const auto at = ServerAddress::parse(address);
    const auto password = at ? passwordFor(*at) : std::nullopt;
    return password && keepInKeyring(at->text(), *password);
}

} // namespace flarestock
