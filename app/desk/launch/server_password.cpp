// SPDX-License-Identifier: MIT

#include "app/desk/launch/server_password.h"

#include "app/desk/launch/keyring.h"
#include "app/desk/launch/options.h"
#include "app/workshop/password_source.h"
#include "model/storage/server/password.h"

namespace flarestock {

void takeServerPasswords(const DeskOptions &options)
{
    if (options.passwordFrom >= 0)
        return takePasswordsFrom(options.passwordFrom);
    askForPasswordsBy([](const ServerAddress &address) {
        auto kept = passwordInKeyring(address.text());
        return kept ? kept : askedOnTerminal("password of " + address.text() + ": ");
    });
}

bool keepServerPassword(const DeskOptions &options)
{
    const std::string shop = options.shop.toStdString();
    if (!options.keepPassword || !isServer(shop))
        return true;
    const auto address = ServerAddress::parse(shop);
    const auto password = address ? passwordFor(*address) : std::nullopt;
    return password && keepInKeyring(address->text(), *password);
}

} // namespace flarestock
