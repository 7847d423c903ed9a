// SPDX-License-Identifier: MIT
//
// Server address: where a shop is that lies on a PostgreSQL server, as people write it:
//
//   postgresql://role@host:5432/database?sslrootcert=%2Fetc%2Fssl%2Fshop.pem
//   postgresql://role@%2Fvar%2Frun%2Fpostgresql/database     a Unix socket of this computer
//
// What would be a letter of the address itself is written by its code, as %2F for a slash. A
// password never stands in it, and nothing in it makes the connection less guarded.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <filesystem>
#include <string>

namespace flarestock {

struct ServerAddress {
    std::string role;
    std::string host; ///< A name or number, or the folder of a Unix socket.
    std::uint16_t port = 5432;
    std::string database;
    std::string rootCertificate; ///< A file; empty: the one that libpq takes.

    [[nodiscard]] bool isSocket() const noexcept { return host.starts_with('/'); }
    /// "role@host:port/database", for people.
    [[nodiscard]] std::string text() const;

    /// Problem: no address of a server, no role or database, a password, an option that is not ours
    /// or that asks for less than the certificate and name of the server.
    [[nodiscard]] static Result<ServerAddress> parse(const std::string &text);
};

/// Whether this names a server, and not a file.
[[nodiscard]] bool isServer(const std::filesystem::path &shop);

} // namespace flarestock
