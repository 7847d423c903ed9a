// SPDX-License-Identifier: MIT
//
// Travelling: a copy of the shop that goes along without a network, a replica of its own in one
// file that travels alone, and what it brings back. What lies at its places is the copy's while it
// is away; everything else in it may be used too, and what then disagrees is said when it is
// brought.
//
// Bringing proves each of the copy's chains from where the shop knows it, and takes the new entries
// in, all or none, each once, whatever came before it; so a copy may be brought twice, go on and be
// brought again, and several may be brought in any order. The copy is not changed by it.

#pragma once

#include "model/journal/notes/trip.h"
#include "model/storage/shop_file.h"
#include "model/storage/trailer/disagreement.h"

namespace flarestock {

class ShopConnection;

/// Who says something of a copy, and when; `id` is of the record that it becomes.
struct Said {
    MovementId id;
    std::string who;
    std::string why;
    std::int64_t at = 0;
};

struct Departure {
    std::string name;                ///< Empty: that of the file.
    std::string with;                ///< Who has it; may be empty.
    std::vector<std::string> places; ///< Empty: all drawers.
};

/// How far a bringing has come: entries taken in, of so many; 0 of 0 while the copy is proved.
/// False stops it: then nothing is written.
using BringingStep = std::function<bool(std::size_t done, std::size_t of)>;

struct Bringing {
    std::map<std::string, std::string> decisions; ///< Words by name of what disagrees.
    bool goesOn = false;                          ///< It stays away, with its places.
    bool looks = false;                           ///< Nothing is written, whatever is decided.
    BringingStep step = {};                       ///< Asked now and then, where there is one.
};

/// What came, or would come.
struct BroughtBack {
    TravellingCopy copy;  ///< As it was before.
    bool already = false; ///< There was nothing new.
    bool written = false; ///< It was taken in; else something is open, or somebody only looked.
    std::vector<Movement> movements; ///< The copy's new ones, in its order.
    std::vector<Record> records;
    std::vector<std::string> documents; ///< Names of those that have a new version.
    std::vector<std::string> places;    ///< New ones.
    std::size_t looks = 0;              ///< Into boxes.
    std::vector<Disagreement> disagreements;
    std::vector<std::string> needless; ///< Decided, and nothing of that name disagrees.
    std::vector<std::string> settled;  ///< What was below zero, as sentences.
    std::int64_t missing = 0;          ///< Entries of the shop that the copy does not know.
};

/// What reaches into a shop.
struct Travelling {
    static ShopConnection &connectionOf(ShopFile &shop) { return *shop.m_connection; }
    static const ShopConnection &connectionOf(const ShopFile &shop) { return *shop.m_connection; }

    /// Writes down that the copy goes, and makes it. Problem: the file is there, a place is no
    /// place of stock or is with another copy, the shop is a copy itself, the disk is full; then it
    /// did not go.
    [[nodiscard]] static Result<Trip> take(ShopFile &shop, const std::filesystem::path &to,
                                           const Departure &departure, const Said &said);
    /// Takes in what is new, where nothing is open; `said.id` is of the first entry that the shop
    /// writes itself. Problem: the file is no copy of this shop, or is not whole; two went on from
    /// one copy; a decision is none of its words, or cannot be done.
    [[nodiscard]] static Result<BroughtBack> bring(ShopFile &shop,
                                                   const std::filesystem::path &copy,
                                                   const Bringing &bringing, const Said &said);
    /// The same of one that is open.
    [[nodiscard]] static Result<BroughtBack> bring(ShopFile &shop, const ShopFile &copy,
                                                   const Bringing &bringing, const Said &said);
    /// Every copy that ever went.
    [[nodiscard]] static Result<Trips> trips(ShopFile &shop);
    /// Of a file that is a copy that travels: its own trip.
    [[nodiscard]] static Result<std::optional<Trip>> ownTrip(const ShopFile &shop);
    /// From now on the shop uses places of a copy that is away. Problem: it is not away, a place is
    /// none of its own.
    [[nodiscard]] static Result<Trip> release(ShopFile &shop, const std::string &copy,
                                              const std::vector<std::string> &places,
                                              const Said &said);
    /// It does not come back, or need not. What it holds can be brought all the same.
    [[nodiscard]] static Result<Trip> end(ShopFile &shop, const std::string &copy,
                                          const Said &said);
};

} // namespace flarestock
