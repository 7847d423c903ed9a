// SPDX-License-Identifier: MIT
//
// Promise: so much of a part to a build, wherever it lies; what is promised is free to no other.
// What has been issued to the build counts against its promise; the rest is outstanding.

#pragma once

#include "model/journal/record.h"

namespace flarestock {

struct Promise {
    MovementId id;
    std::string build;
    std::string part;
    std::int64_t quantity = 0; ///< Smallest units; below zero lets go of so much.
    std::string who;
    std::string why;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    /// Problem: not a promise, or not a whole number.
    [[nodiscard]] static Result<Promise> read(const Record &record);
};

/// A build and a part.
struct ClaimKey {
    std::string part;
    std::string build;
    friend auto operator<=>(const ClaimKey &, const ClaimKey &) = default;
};

/// What a build has of a part. Smallest units.
struct Claim {
    std::int64_t promised = 0; ///< Not less than zero.
    std::int64_t issued = 0;   ///< Issued less returned.
    friend bool operator==(const Claim &, const Claim &) = default;
    [[nodiscard]] bool isNothing() const noexcept { return promised == 0 && issued == 0; }
    /// Promised and not issued yet.
    [[nodiscard]] std::int64_t outstanding() const noexcept
    {
        const std::int64_t got = issued > 0 ? issued : 0;
        return promised > got ? promised - got : 0;
    }
};
/// No claim in it is nothing.
using Claims = std::map<ClaimKey, Claim>;

/// What a movement adds to the claim of its build: issued as it goes to one, less as it comes back.
struct Issued {
    ClaimKey claim;
    std::int64_t quantity = 0;
};
/// Nothing where the movement is of no build.
[[nodiscard]] std::optional<Issued> issuedBy(const Movement &movement);

} // namespace flarestock
