// SPDX-License-Identifier: MIT
//
// Moving: copies a whole shop from one place to another, from a file to a server and back: every
// entry with its chain, id and hash, documents, places, looks into boxes. The copy is verified
// whole before it is there at all.

#pragma once

#include "model/exact/problem.h"

#include <filesystem>

namespace flarestock {

class FileConnection;
class ShopConnection;

/// All rows of one moment of `from` into the tables of `to`, which are empty. Inside a transaction
/// of `to`. Throws StorageFailure.
void copyRows(const ShopConnection &from, ShopConnection &to);
/// The same into a file that is being made, which then has a chain of its own to write on. Throws
/// StorageFailure, also where the copy is not whole.
void copyInto(FileConnection &file, const ShopConnection &from);

/// How many entries were moved.
struct Moved {
    std::int64_t movements = 0;
};
/// Copies a shop to where none is: a new file, or a database without a shop, in which the address
/// names the role that is to own it. All or nothing; `from` stays as it is. Problem: one of them
/// cannot be opened, there is a shop already, what was copied is not whole.
[[nodiscard]] Result<Moved> moveShop(const std::filesystem::path &from,
                                     const std::filesystem::path &to);

} // namespace flarestock
