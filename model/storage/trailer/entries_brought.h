// SPDX-License-Identifier: MIT
//
// Entries brought: the new entries of a copy, taken in one after the other behind all that stands.
// Each keeps what it says. Where pieces lack by now that were there for the copy, they come first
// from where somebody says; where what they are worth is another by now, that is settled behind.

#pragma once

#include "model/storage/trailer/disagreement.h"
#include "model/storage/trailer/news.h"
#include "model/storage/trailer/own_entries.h"

#include <utility>

namespace flarestock {

class EntriesBrought {
public:
    struct Into {
        ShopConnection &connection;
        JournalWriter &writer;
        OwnEntries &own;
        Disagreements &disagreements;
        std::set<std::string> changedHere; ///< Documents that are others here than in the copy.
        std::string trip = {};             ///< On which the copy was.
    };
    explicit EntriesBrought(Into into) : m_into(std::move(into)) {}

    /// `replica`: the number of its chain here. `aside`: it is kept with its words, and moves
    /// nothing. Returns its place in the order. Throws StorageFailure.
    std::int64_t take(const NewsEntry &entry, std::int64_t replica, bool aside = false);
    /// A movement of the shop's own, as somebody has decided; what lacks for it as above. Throws
    /// StorageFailure: it is refused.
    void append(Movement movement);
    /// As much of it as lies there, at most.
    void appendUpTo(Movement movement);
    /// Both sides have counted what lies there: until repaid() nobody is asked where it came from
    /// if there is less than the copy took.
    void lend(const BalanceKey &key) { m_lent.try_emplace(key, 0); }
    /// How much of it that was.
    [[nodiscard]] std::int64_t repaid(const BalanceKey &key);
    /// Asks where what lacks came from, `what` has taken it; false: nowhere, it is a difference,
    /// which is not written yet.
    bool fetched(const BalanceKey &key, TakenTooMuch tooMuch, const std::string &what);
    /// As much lies there as was found, by a count of the shop's; where nothing does, it is worth
    /// what its like was.
    void bringTo(const BalanceKey &key, std::int64_t found, const Movement &like);
    /// Brings what lies there to what it is worth.
    void settle();
    /// What was settled, as sentences.
    [[nodiscard]] const std::vector<std::string> &settled() const noexcept { return m_settled; }

private:
    [[nodiscard]] bool stands(const MovementId &id) const;
    [[nodiscard]] bool isKnown(const MovementId &id) const;
    [[nodiscard]] std::string whyNotStanding(const NewsEntry &entry) const;
    std::int64_t keepAside(const NewsEntry &entry, std::int64_t replica);
    void decideOnKept(const NewsEntry &entry, const std::string &why);
    void supply(const Movement &movement, const std::string &what);
    void noteWorth(const Movement &movement);
    [[nodiscard]] bool isStockPlace(const std::string &place) const;
    [[nodiscard]] std::vector<Choice> whence(const BalanceKey &key, std::int64_t lacking) const;
    Balance &worth(const BalanceKey &key);

    Into m_into;
    std::map<BalanceKey, Balance> m_worth; ///< What lies there and what it is worth, truly.
    std::map<BalanceKey, std::int64_t> m_lent;
    std::vector<std::string> m_settled;
};

} // namespace flarestock
