// SPDX-License-Identifier: MIT
//
// Movement: so much of a part from one place to another; the only way that stock changes.
// Immutable: a mistake is taken back by a movement that points at the wrong one.
//
// Beside it stands what was seen in a part's box. What storage hashes of both is canonical_bytes.h.
//
// Quantities are whole smallest units (pieces, or lengths of 125 nm), values whole 10^-6 of the
// shop's currency: integers, so that a sum is a sum.

#pragma once

#include "model/exact/problem.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

/// A UUIDv7 (RFC 9562), made by the client before the attempt, so that a repeated attempt counts
/// once.
class MovementId {
public:
    /// From the time (milliseconds since 1970, UTC; 0 to 2^48 - 1, asserted) and ten random bytes,
    /// of which the first two give rand_a and the others rand_b (RFC 9562, 5.7).
    [[nodiscard]] static MovementId make(std::int64_t milliseconds,
                                         const std::array<std::uint8_t, 10> &random);
    /// Any UUID, whatever its version: a client's id has to be unique, no more.
    /// Problem: not a UUID as RFC 9562 writes it.
    [[nodiscard]] static Result<MovementId> parse(std::string_view text);
    [[nodiscard]] static MovementId ofBytes(const std::array<std::uint8_t, 16> &bytes) noexcept;
    [[nodiscard]] std::string text() const; ///< Lower case, as RFC 9562 prefers it.
    [[nodiscard]] const std::array<std::uint8_t, 16> &bytes() const noexcept { return m_bytes; }
    friend bool operator==(const MovementId &, const MovementId &) = default;
    friend auto operator<=>(const MovementId &, const MovementId &) = default;

private:
    std::array<std::uint8_t, 16> m_bytes{};
};

enum class PlaceKind : std::uint8_t {
    Shelf,
    Bin,
    Drawer,
    Car,
    Supplier,
    Scrap,
    InTransit,
    UsedUp,
    Opening,
    Bench, ///< Where pieces become another: a box opened, a hose made up. What goes in comes out.
    Difference, ///< What counts have found more or less than the journal said.
    Borrower,   ///< Somebody outside the shop whom something is lent to.
    Repair,     ///< Out for repair.
};
[[nodiscard]] std::string_view text(PlaceKind kind) noexcept;
[[nodiscard]] Result<PlaceKind> parsePlaceKind(std::string_view text);
/// Whether stock at such a place can be used: shelf, bin and drawer.
[[nodiscard]] bool isStock(PlaceKind kind) noexcept;
/// Whether a movement out of such a place says its own value: supplier, opening, difference, and
/// the bench, where the value of what went in is shared by what comes out. Out of every other place
/// the value is what lies there.
[[nodiscard]] bool bringsValue(PlaceKind kind) noexcept;

struct Place {
    std::string id; ///< "C4", "trailer-2", "car-2"
    std::string title;
    PlaceKind kind = PlaceKind::Shelf;
};

/// Conditions; only the first two are free.
enum class PieceCondition : std::uint8_t { New, UsedAndGood, ToBeChecked, NotToBeUsed };
[[nodiscard]] std::string_view text(PieceCondition condition) noexcept;
[[nodiscard]] Result<PieceCondition> parsePieceCondition(std::string_view text);
[[nodiscard]] bool isFree(PieceCondition condition) noexcept; ///< New, or used and good.

/// What was done, for the history; the figures never depend on it.
enum class Deed : std::uint8_t {
    Move,
    Receive,
    Count,
    Scrap,
    Cut,
    Issue,  ///< To a build; `document` names it.
    Return, ///< Back from a build; `document` names it.
    Lend,
    Judge,  ///< Its condition was looked at.
    Open,   ///< A box onto the bench, and what was in it off it.
    MakeUp, ///< Hose and ends onto the bench, a made-up hose off it.
    Renew,  ///< Of a joint that was opened: the old ring out, a fresh one in.
    Settle, ///< Value alone, to or from the differences, so that what lies there is worth what its
            ///< layers or average say after a copy was brought. The one that figures depend on.
};
[[nodiscard]] std::string_view text(Deed deed) noexcept;
[[nodiscard]] Result<Deed> parseDeed(std::string_view text);

struct Movement {
    MovementId id;
    std::string part;
    std::int64_t quantity = 0; ///< Smallest units; more than zero, or zero where only value comes.
    std::int64_t value = 0;    ///< 10^-6 of the currency that moves along; not negative.
    std::string from;          ///< Place id.
    std::string to;            ///< Place id, another.
    std::string lot;           ///< Lot, serial or the id of a piece of hose; empty where none.
    PieceCondition condition = PieceCondition::New;
    std::string who;
    std::string why;
    std::string document; ///< Delivery note, build id …
    std::optional<MovementId> reverses;
    std::int64_t at = 0; ///< Milliseconds since 1970, UTC, as the client's clock said.
    Deed deed = Deed::Move;
    std::optional<std::string> newLot; ///< What it is called from then on; nothing: as before.
    std::optional<PieceCondition> newCondition; ///< What it is from then on; nothing: as before.
    std::optional<MovementId> action; ///< The first movement of the action that it is a part of.
    std::string until;                ///< Of a loan: the day, "2026-12-01"; else empty.
};

/// Somebody looked into the box of a part (one lot of it) and wrote down what is not there. The
/// newest look counts; one that misses nothing says that the box is complete now.
struct BoxCheck {
    MovementId id;
    std::string part;
    std::string lot;                  ///< Empty where none.
    std::vector<std::string> missing; ///< Part numbers, one for each piece.
    std::string who;
    std::int64_t at = 0; ///< Milliseconds since 1970, UTC.
};

} // namespace flarestock
