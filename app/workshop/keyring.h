// SPDX-License-Identifier: MIT
//
// Keyring: passwords of servers in the desktop's keyring, which keeps them encrypted and asks the
// person by itself where it is locked. Without one nothing is kept, and nothing is found.

#pragma once

#include <optional>
#include <string>

namespace flarestock {

/// `whose`: ServerAddress::text(). Waits for the keyring, with an event loop of its own.
[[nodiscard]] std::optional<std::string> passwordInKeyring(const std::string &whose);
/// Whether it is kept now.
[[nodiscard]] bool keepInKeyring(const std::string &whose, const std::string &password);

} // namespace flarestock
