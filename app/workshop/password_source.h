// SPDX-License-Identifier: MIT
//
// Password source: where the password comes from that a server wants: a stream that a script names,
// else the desktop's keyring, else the terminal, which does not show it.

#pragma once

#include <optional>
#include <string>

namespace flarestock {

/// The first line of a file descriptor, without its end; nothing where it cannot be read, or is
/// longer than 1,000 bytes. Not a byte more is taken than that line.
[[nodiscard]] std::optional<std::string> lineFrom(int descriptor);
/// Asked on the controlling terminal, its echo off; nothing where there is none.
[[nodiscard]] std::optional<std::string> askedOnTerminal(const std::string &question);

/// From now on servers' passwords come from the descriptor, or where it is less than 0 from the
/// keyring or the terminal.
void takePasswordsFrom(int descriptor);

} // namespace flarestock
