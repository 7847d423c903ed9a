// SPDX-License-Identifier: MIT
//
// Server password: where the desk takes it from: a descriptor that the options name, else the
// desktop's keyring, else the person: on the screen, or where there is none on the terminal.

#pragma once

#include <string>

namespace flarestock {

struct DeskOptions;

/// Once, before a shop is opened.
void takeServerPasswords(const DeskOptions &options);
/// Once the server has taken it: into the keyring, where the options say so. Whether it is kept, or
/// was not to be.
[[nodiscard]] bool keepServerPassword(const DeskOptions &options);

/// What was typed on the screen, or where that is empty what the keyring has. By the window's
/// thread.
void useServerPassword(const std::string &address, const std::string &password);
/// Into the keyring, by the window's thread. Whether it is there.
[[nodiscard]] bool keepPasswordOf(const std::string &address);

} // namespace flarestock
