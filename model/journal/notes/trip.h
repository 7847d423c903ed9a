// SPDX-License-Identifier: MIT
//
// Trip: a copy of the shop went along in the trailer, and came back. What lies at its places is the
// copy's while it is away. That it went is written where it was taken; that a file is that copy, at
// the beginning of the file's own chain; and what came back with it, where it was brought.

#pragma once

#include "model/journal/record.h"

#include <set>

namespace flarestock {

enum class TripState : std::uint8_t {
    Taken,    ///< It went along.
    Along,    ///< This file is the copy: the first entry of its own chain.
    Brought,  ///< What was new in it was taken in.
    Released, ///< The shop uses some of its places all the same.
    Ended,    ///< It does not come back, or need not any more.
};
[[nodiscard]] std::string_view text(TripState state) noexcept; ///< "taken", "along" …

/// So many entries of a chain that were taken in, in the order of that chain, and the counts that
/// they bear there: their hashes are over those.
struct ChainTaken {
    std::string replica; ///< Its id in hex.
    std::int64_t first = 0;
    std::int64_t last = 0;
    /// From count to count, both included; as many in all as there are entries.
    std::vector<std::pair<std::int64_t, std::int64_t>> counts;
    friend bool operator==(const ChainTaken &, const ChainTaken &) = default;
};

struct Trip {
    MovementId id;
    TripState state = TripState::Taken;
    std::string trip;                ///< The id of the record that says that it was taken.
    std::string name;                ///< What people call the copy; of one that is away unique.
    std::string with;                ///< Who has it; may be empty.
    std::vector<std::string> places; ///< Taken: its own; released: those that are not any more.
    std::vector<ChainTaken> chains;  ///< Brought.
    std::int64_t documents = 0;      ///< Brought: how many versions the copy held of documents.
    bool goesOn = false;             ///< Brought: it stays away, and will be brought again.
    std::string who;
    std::string why;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Trip> read(const Record &record); ///< Problem: not one.
};
/// The subject of all their records, by which they are found without reading the others.
inline constexpr std::string_view TripSubject = "trailer";

/// A copy: that it went, what came back, and whether it is away.
struct TravellingCopy {
    Trip taken;
    std::set<std::string> places; ///< Its own by now.
    std::vector<Trip> brought;    ///< Oldest first.
    std::optional<Trip> ended;
    bool isOut = true;
};

/// The fold of the trips: every copy that ever went, oldest first.
struct Trips {
    std::vector<TravellingCopy> copies;

    /// `records` in the order of the fold; those of another kind are passed over. Problem: a record
    /// that is not what its kind says.
    [[nodiscard]] static Result<Trips> of(const std::vector<Record> &records);
    /// By its id, or by its name: the newest of that name, one that is away first; nullptr where
    /// there is none.
    [[nodiscard]] const TravellingCopy *named(std::string_view nameOrId) const noexcept;
    /// The copy that is away with this place; nullptr where it is here.
    [[nodiscard]] const TravellingCopy *away(std::string_view place) const noexcept;
};

} // namespace flarestock
