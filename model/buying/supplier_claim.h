// SPDX-License-Identifier: MIT
//
// Supplier claim: what a supplier owes for what did not come, or came wrong. Each step writes it
// down whole, and the newest counts; of its first step alone the number and the id stay its own.
//
//   raised ─▶ promised by a day ─▶ settled: the piece came, a credit of so much, given up
//
// Only what is promised by a day helps a build: on what is merely claimed nobody can count.

#pragma once

#include "model/buying/receipt.h"

#include <optional>

namespace flarestock {

enum class ClaimFault : std::uint8_t { Missing, WrongPart, Damaged, ShortDelivery };
[[nodiscard]] std::string_view text(ClaimFault fault) noexcept; ///< "missing", "wrong part" …
[[nodiscard]] Result<ClaimFault> parseClaimFault(std::string_view text);

enum class ClaimState : std::uint8_t { Raised, Promised, PieceCame, Credited, GivenUp };
[[nodiscard]] std::string_view text(ClaimState state) noexcept; ///< "raised", "piece came" …
[[nodiscard]] Result<ClaimState> parseClaimState(std::string_view text);

struct SupplierClaim {
    MovementId id;             ///< Of this step.
    MovementId claim;          ///< Of the first step, in which it was raised.
    std::string number;        ///< "C-12"; what people call it.
    std::string order;         ///< Its number; empty where there was none.
    std::string supplier;      ///< Id.
    std::string part;          ///< What is owed: part number.
    std::int64_t quantity = 0; ///< Smallest units; more than zero.
    ClaimFault fault = ClaimFault::Missing;
    std::string boxOf;  ///< The part whose box lacked it; empty where it lay in none.
    std::string boxLot; ///< Of that part; may be empty.
    ClaimState state = ClaimState::Raised;
    std::string day;         ///< By when it is promised; empty while nobody has said.
    std::int64_t credit = 0; ///< 10^-6 of the shop's currency; not below zero.
    std::string note;
    std::string action; ///< The id of the first movement of its action; empty where it has none.
    std::string who;
    std::int64_t at = 0; ///< Milliseconds since 1970, UTC.

    [[nodiscard]] bool isSettled() const noexcept { return state >= ClaimState::PieceCame; }
    /// Whether the order itself has not got it yet, and never booked its cost: it was short, or
    /// another part came in its place. What lacked in a box, or came damaged, had come.
    [[nodiscard]] bool isAwaitedByOrder() const noexcept
    {
        return fault == ClaimFault::ShortDelivery || fault == ClaimFault::WrongPart;
    }
    /// Whether it does not come any more: paid back, or let go.
    [[nodiscard]] bool isLetGo() const noexcept
    {
        return state == ClaimState::Credited || state == ClaimState::GivenUp;
    }
    /// Whether both say the same of the same claim, whoever wrote them and when.
    [[nodiscard]] bool saysAs(const SupplierClaim &other) const;
    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<SupplierClaim> read(const Record &record); ///< Problem: not one.
    friend bool operator==(const SupplierClaim &, const SupplierClaim &) = default;
};

/// Whether it has the form of a claim's number, "C-12", which no order's has.
[[nodiscard]] bool isClaimNumber(std::string_view number) noexcept;

/// A claim as it stands.
struct ClaimStanding {
    SupplierClaim now;
    std::vector<SupplierClaim> steps; ///< Oldest first; the last is `now`.
    std::int64_t came = 0;            ///< Smallest units that came for it.

    /// What is still owed; nothing of what is settled. Smallest units.
    [[nodiscard]] std::int64_t owed() const noexcept;
    /// From which day on a build may count on what is owed; nothing where it may not.
    [[nodiscard]] std::optional<std::string> coversFrom() const;
};

/// The claim as it was before that step, as a further step that no piece moves with. It is the
/// newest, or the newest that holds, as those behind it were taken back. A claim that was only
/// raised is given up. Problem: the claim has gone on since.
[[nodiscard]] Result<SupplierClaim> stepBack(const ClaimStanding &standing, const MovementId &step);

/// All claims, in the order in which they were raised.
struct ClaimBook {
    std::vector<ClaimStanding> claims;
    /// In the order of the fold. A step of an action that was taken back has to be left out, and
    /// counts neither here: without its first step a claim is none. Receipts are those that count.
    [[nodiscard]] static ClaimBook of(const std::vector<SupplierClaim> &steps,
                                      const std::vector<Receipt> &receipts);
    /// By its number or the id of its first step. Problem: there is none, or there are two of that
    /// number, as two seats may have raised them in the same moment.
    [[nodiscard]] Result<const ClaimStanding *> find(std::string_view named) const;
    /// "C-13": one behind the greatest that was ever given.
    [[nodiscard]] std::string nextNumber() const;
    /// A claim was given that number, also where it does not count any more.
    void giveNumber(std::string_view number) noexcept;

private:
    std::int64_t m_greatest = 0; ///< Of the numbers given; of "C-12" 12.
};

} // namespace flarestock
