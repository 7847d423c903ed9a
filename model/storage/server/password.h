// SPDX-License-Identifier: MIT
//
// Password: who is asked for the one that a server wants. It comes from the program, which asks the
// desktop's keyring or a person, and stays in memory until the program ends; it is written nowhere.

#pragma once

#include "model/storage/server/server_address.h"

#include <functional>
#include <optional>
#include <string>

namespace flarestock {

/// Nothing where there is none.
using AskPassword = std::function<std::optional<std::string>(const ServerAddress &address)>;

/// From now on this is asked. Once, at the beginning of the program.
void askForPasswordsBy(AskPassword ask);
/// The one that was given before, or asked for now.
[[nodiscard]] std::optional<std::string> passwordFor(const ServerAddress &address);
/// Instead of asking.
void usePassword(const ServerAddress &address, const std::string &password);
/// A server let somebody in with the one that was given last: it is the right one.
void passwordWasTaken(const ServerAddress &address);
/// Nobody was let in. The one that was right before holds again, as the network may have failed;
/// where none ever was, it is asked for again. Whether it was the right one before.
bool passwordWasNotTaken(const ServerAddress &address);

} // namespace flarestock
