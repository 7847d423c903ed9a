// SPDX-License-Identifier: MIT
//
// Server password: where the desk takes it from: a descriptor that the options name, else the
// desktop's keyring, else the terminal that it was started on.

#pragma once

namespace flarestock {

struct DeskOptions;

/// Once, before a shop is opened.
void takeServerPasswords(const DeskOptions &options);
/// Once the server has taken it: into the keyring, where the options say so. Whether it is kept, or
/// was not to be.
[[nodiscard]] bool keepServerPassword(const DeskOptions &options);

} // namespace flarestock
