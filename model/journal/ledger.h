// SPDX-License-Identifier: MIT
//
// Ledger: the fold of the journal. What lies where and what it cost, computed from movements alone.
//
// Every movement is one posting out of a place and one into another, of the same quantity and
// value, so that over all places the sums are always zero. A place carries quantity and value,
// never a rounded price, as a moving average of all that lies there or first in, first out, as the
// shop has chosen; the last piece out takes all the value that is left. What builds are promised,
// and what of it they have got, is a part of the fold.
//
//   Ledger ledger({{"opening", "before us", PlaceKind::Opening}, {"C4", "bin C4",
//                 PlaceKind::Bin}});
//   if (const auto refused = ledger.apply(movement))
//       return text(*refused);

#pragma once

#include "model/journal/balance.h"
#include "model/journal/promise.h"
#include "model/parts/catalogue.h"
#include "model/parts/free_stock.h"

#include <map>
#include <set>
#include <span>

namespace flarestock {

/// Why a movement is refused, in order of precedence.
enum class Refusal : std::uint8_t {
    UnknownPart, ///< It names no part. (Catalogues change and the journal stays: what the catalogue
                 ///< knows is not asked here.)
    UnknownPlace,
    SamePlace,       ///< And it stays the same lot and condition.
    NotMoreThanZero, ///< Quantity less than zero, value less than zero, or both zero; no quantity
                     ///< out of a place that does not bring value, unless it takes that back.
    ReversesUnknown, ///< The movement that it reverses is not in the journal.
    NotTheReverse,   ///< Other part, lot, condition or quantity, or not back the same way.
    AlreadyReversed,
    NotEnough,  ///< The place (that is stock) holds less.
    WrongValue, ///< It would leave value without pieces, or take more than the place carries.
    Overflow,   ///< Beyond what 64 bits hold.
    NoBuild,    ///< A promise, an issue or a return that names no build.
    NotFree,    ///< More is promised than is free, or let go of than is promised.
};
[[nodiscard]] std::string_view text(Refusal refusal) noexcept; ///< As the end of a sentence.

struct Wanted; // serving.h
struct AtHand;

class Ledger {
public:
    explicit Ledger(std::vector<Place> places, Costing costing = Costing::MovingAverage);
    /// A part of the fold, to judge further movements by: the balances that they touch. Of a moving
    /// average.
    Ledger(std::vector<Place> places, Balances balances);

    /// Applies a movement; nothing changes where it is refused. Places that are not stock
    /// (supplier, scrap, used up …) may go below zero: they are the other leg of what the shop has.
    [[nodiscard]] std::optional<Refusal> apply(const Movement &movement);
    /// Whether it would be refused.
    [[nodiscard]] std::optional<Refusal> refusal(const Movement &movement) const;
    /// The same for a promise. It may not exceed what is free: new, or used and good, in a stock
    /// place, and not outstanding to any build.
    [[nodiscard]] std::optional<Refusal> apply(const Promise &promise);
    [[nodiscard]] std::optional<Refusal> refusal(const Promise &promise) const;
    /// The same of what was true with a copy of the shop and is taken in as it was written: as
    /// apply(), but its value is what it says, whatever lies here; a promise whatever is free.
    [[nodiscard]] std::optional<Refusal> take(const Movement &movement);
    [[nodiscard]] std::optional<Refusal> take(const Promise &promise);
    /// Of the movements that are applied from now on only these are kept in mind to be taken back:
    /// who folds a long journal knows which those are.
    void remember(std::set<MovementId> only);
    /// Lets a movement of before be known, so that it can be reversed, without applying it; first
    /// in, first out with the layers that it took along.
    void know(const Movement &past, bool reversed, const Layers &moved = {});
    [[nodiscard]] bool knows(const MovementId &past) const { return m_past.contains(past); }
    /// The layers that it took along; none where it is not known, or of a moving average.
    [[nodiscard]] Layers movedBy(const MovementId &past) const;
    /// The same of one that was taken back, of which nothing else is asked.
    void knowTakenBack(const MovementId &past);
    /// Whether a movement was taken back; false where it is not known.
    [[nodiscard]] bool isTakenBack(const MovementId &id) const;
    /// What balances of before say about a key that this ledger does not know yet.
    void carryOver(const BalanceKey &key, const Balance &balance);
    void carryOver(const BalanceKey &key, std::int64_t rank, const Balance &layer);
    /// So many movements of a part there were before: what comes next ranks behind them.
    void countOn(const std::string &part, std::int64_t movements);
    void carryOver(const ClaimKey &key, const Claim &claim);

    /// The value that goes along with so much of what lies somewhere, as the shop costs it:
    /// shareOf() of all, or the oldest(). Nothing where nothing lies there. quantity > 0
    /// (asserted).
    [[nodiscard]] std::int64_t valueOf(const BalanceKey &key, std::int64_t quantity) const;
    /// The value of a movement: as given out of a supplier or the opening; what was moved before,
    /// where it takes that back and it is still there; else valueOf() its source.
    [[nodiscard]] std::int64_t valueOf(const Movement &movement) const;

    [[nodiscard]] const Balances &balances() const noexcept { return m_balances; }
    /// Those of one part, to be walked.
    struct Walk {
        Balances::const_iterator first;
        Balances::const_iterator last;
        [[nodiscard]] Balances::const_iterator begin() const { return first; }
        [[nodiscard]] Balances::const_iterator end() const { return last; }
    };
    [[nodiscard]] Walk balancesOf(std::string_view part) const;
    [[nodiscard]] Balance balance(const BalanceKey &key) const; ///< Zero where nothing lies.
    [[nodiscard]] const LayersOfBalances &layers() const noexcept { return m_layers; }
    [[nodiscard]] const Layers &layersAt(const BalanceKey &key) const; ///< None where nothing lies.
    [[nodiscard]] const Claims &claims() const noexcept { return m_claims; }
    [[nodiscard]] Claim claim(const ClaimKey &key) const; ///< Nothing where there is none.
    /// In stock places and free of condition, of a part.
    [[nodiscard]] std::int64_t usable(std::string_view part) const;
    /// Outstanding to builds of a part, one of them (or none) left out.
    [[nodiscard]] std::int64_t outstanding(std::string_view part, std::string_view but = {}) const;
    /// Where what is outstanding to builds (one of them left out) is thought to lie: the nearest
    /// places first; of what is cut the longest pieces first, so that no piece is counted on twice.
    /// A build takes no lot that it may not use, and leaves to another what only that may use.
    [[nodiscard]] PromisedTo promisedTo(const Part &part, const Bars &bars,
                                        std::string_view but = {}) const;
    /// The same, to whichever build.
    [[nodiscard]] std::map<BalanceKey, std::int64_t> promisedAt(const Part &part, const Bars &bars,
                                                                std::string_view but = {}) const;
    /// Whether a promise that apply() would take can be kept out of lots that its build may use,
    /// and those of the other builds as well as they could be before.
    [[nodiscard]] bool canBeKept(const Promise &promise, const Bars &bars) const;
    /// By how much less other builds could be served of what they are promised, out of lots that
    /// they may use, after the movement; zero where it takes nothing from them.
    [[nodiscard]] std::int64_t takesPromised(const Movement &movement, const Bars &bars) const;
    /// The sum of values at the bench: zero after every whole action.
    [[nodiscard]] std::int64_t benchValue() const noexcept { return m_benchValue; }

    [[nodiscard]] Costing costing() const noexcept { return m_costing; }
    [[nodiscard]] std::span<const Place> places() const noexcept { return m_places; }
    [[nodiscard]] const Place *place(std::string_view id) const noexcept;

    /// What a build may use, by part of the catalogue: on hand is all that lies in stock places,
    /// free what of it is new, or used and good, less what is outstanding to other builds. Places
    /// are the nearer the earlier they stand in places(); of what is promised the nearest go first.
    /// Parts that the catalogue does not have are left out, and lots that the build may not use.
    struct For {
        std::string_view build;                   ///< Its own promises are free to it.
        const std::set<LotKey> *barred = nullptr; ///< Another's, or past their day.
        const Bars *bars = nullptr;               ///< What other builds may not use.
    };
    [[nodiscard]] Shelf shelf(const Catalogue &catalogue, const For &whom) const;
    [[nodiscard]] Shelf shelf(const Catalogue &catalogue) const { return shelf(catalogue, {}); }

private:
    struct Past { ///< What a reversal has to match.
        BalanceKey source;
        std::int64_t quantity = 0;
        std::int64_t value = 0;
        bool reversed = false;
        BalanceKey target;
        Layers layers; ///< What it moved, where the shop costs first in, first out.
        bool settled = false;
    };
    /// Whether the place still has the very value that was moved there.
    [[nodiscard]] bool canGiveBack(const Movement &movement, const Past &past) const;
    struct Ends { ///< Of a movement: its source and its target.
        BalanceKey from;
        BalanceKey to;
    };
    [[nodiscard]] std::optional<Refusal> refusal(const Movement &movement, const Ends &ends) const;
    [[nodiscard]] std::optional<Refusal> formRefusal(const Movement &movement,
                                                     const Ends &ends) const;
    [[nodiscard]] std::optional<Refusal> settleRefusal(const Movement &movement,
                                                       const Ends &ends) const;
    [[nodiscard]] bool overflows(const Movement &movement, const Ends &ends) const;
    [[nodiscard]] std::optional<Refusal> reversalRefusal(const Movement &movement,
                                                         const Ends &ends) const;
    [[nodiscard]] std::optional<Refusal> stockRefusal(const Movement &movement,
                                                      const Ends &ends) const;

    [[nodiscard]] Layers layersOf(const Movement &movement) const;
    [[nodiscard]] Layers layersTaken(const Movement &movement) const;
    void postAll(const Movement &movement, const Ends &ends, const Layers &layers);
    void post(const BalanceKey &key, std::int64_t quantity, std::int64_t value);
    void postLayers(const Movement &movement, const Layers &layers);
    void claimIssued(const Movement &movement);
    void keep(const ClaimKey &key, const Claim &claim);
    /// What is outstanding of a part; what of it can be used, as promisedTo() takes it.
    [[nodiscard]] std::vector<Wanted> wanted(std::string_view part, std::string_view but) const;
    [[nodiscard]] std::vector<AtHand> atHand(std::string_view part, bool longestFirst) const;

    std::vector<Place> m_places;
    std::map<std::string, std::size_t, std::less<>> m_placeOf;
    Costing m_costing = Costing::MovingAverage;
    Balances m_balances;
    LayersOfBalances m_layers;
    std::map<std::string, std::int64_t> m_movementsOf; ///< By part; only first in, first out.
    Claims m_claims;
    std::int64_t m_benchValue = 0;
    std::map<MovementId, Past> m_past;
    std::optional<std::set<MovementId>> m_remembered; ///< All, where there is none.
};

} // namespace flarestock
