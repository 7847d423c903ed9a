// SPDX-License-Identifier: MIT

#include "app/stockroom/away.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

class Borrowing {
public:
    explicit Borrowing(const Workshop &workshop) : m_workshop(workshop) {}

    void follow(const Movement &movement)
    {
        const Place *from = m_workshop.ledger.place(movement.from);
        const Place *to = m_workshop.ledger.place(movement.to);
        const Part *part = m_workshop.part(movement.part);
        if (!from || !to || !part || from == to || movement.quantity <= 0 || movement.reverses ||
            m_workshop.ledger.isTakenBack(movement.id))
            return;
        const auto as = kindOf(*from, *to);
        if (!as)
            return;
        const std::int64_t left = settle(movement);
        if (left > 0)
            m_away.push_back({*as, part, left, movement.newLot.value_or(movement.lot), from->id,
                              to->id, movement.until, movement.at, movement.id});
    }

    /// Pieces that are another car's, however they came there.
    void lookAtCars()
    {
        std::set<std::string_view> owned; // Few parts of a shop are anybody's own.
        for (const auto &[key, facts] : m_workshop.notes.lots) {
            if (!facts.owner.empty())
                owned.insert(key.part);
        }
        const Balances &balances = m_workshop.ledger.balances();
        for (const std::string_view part : owned) {
            for (auto at = balances.lower_bound({std::string(part), {}, {}, {}});
                 at != balances.end() && at->first.part == part; ++at)
                lookAt(at->first, at->second);
        }
    }
    [[nodiscard]] std::vector<Away> done() &&
    {
        std::erase_if(m_away, [](const Away &one) { return one.quantity == 0; });
        return std::move(m_away);
    }

private:
    void lookAt(const BalanceKey &key, const Balance &held)
    {
        const Place *place = m_workshop.ledger.place(key.place);
        const auto facts = m_workshop.notes.lots.find({key.part, key.lot});
        const Part *part = m_workshop.part(key.part);
        if (!place || place->kind != PlaceKind::Car || held.quantity <= 0 || !part ||
            facts == m_workshop.notes.lots.end() || facts->second.owner.empty() ||
            facts->second.owner == place->id)
            return;
        const bool known = std::any_of(m_away.begin(), m_away.end(), [&key](const Away &one) {
            return one.part->number == key.part && one.lot == key.lot && one.at == key.place;
        });
        if (!known)
            m_away.push_back({AwayAs::Borrowed,
                              part,
                              held.quantity,
                              key.lot,
                              facts->second.owner,
                              place->id,
                              {},
                              0,
                              {}});
    }

    static std::optional<AwayAs> kindOf(const Place &from, const Place &to)
    {
        if (from.kind == PlaceKind::Borrower ||
            (from.kind == PlaceKind::Car && to.kind == PlaceKind::Car))
            return AwayAs::Borrowed;
        if (to.kind == PlaceKind::Borrower)
            return AwayAs::Lent;
        if (to.kind == PlaceKind::Repair)
            return AwayAs::Repair;
        // From the repairer it only comes back.
        return from.kind == PlaceKind::Repair ? std::optional(AwayAs::Repair) : std::nullopt;
    }

    /// What comes back the way that it went: what is left of the movement then.
    std::int64_t settle(const Movement &movement)
    {
        std::int64_t left = movement.quantity;
        const bool fromCar = m_workshop.ledger.place(movement.from)->kind == PlaceKind::Car;
        for (Away &one : m_away) {
            const bool back = one.part->number == movement.part && one.lot == movement.lot &&
                              one.at == movement.from;
            // From outside it may come to any place; between cars, and to the lender, to his.
            const bool home = one.as != AwayAs::Borrowed || one.from == movement.to;
            if (!back || !home || (fromCar && one.as != AwayAs::Borrowed))
                continue;
            const std::int64_t some = std::min(left, one.quantity);
            one.quantity -= some;
            left -= some;
        }
        if (m_workshop.ledger.place(movement.to)->kind == PlaceKind::Borrower)
            left = giveBack(movement, left);
        const bool isRepaired = m_workshop.ledger.place(movement.from)->kind == PlaceKind::Repair;
        return isRepaired ? 0 : left;
    }

    /// What was borrowed of somebody goes back from wherever it is.
    std::int64_t giveBack(const Movement &movement, std::int64_t left)
    {
        for (Away &one : m_away) {
            if (one.as != AwayAs::Borrowed || one.part->number != movement.part ||
                one.from != movement.to || one.lot != movement.lot)
                continue;
            const std::int64_t some = std::min(left, one.quantity);
            one.quantity -= some;
            left -= some;
        }
        return left;
    }

    const Workshop &m_workshop;
    std::vector<Away> m_away;
};

} // namespace

std::string_view text(AwayAs as) noexcept
{
    switch (as) {
    case AwayAs::Lent:
        return "lent";
    case AwayAs::Borrowed:
        return "borrowed";
    case AwayAs::Repair:
        return "out for repair";
    }
    return "";
}

std::vector<Away> awayNow(const std::vector<Movement> &movements, const Workshop &workshop)
{
    Borrowing borrowing(workshop);
    for (const Movement &movement : movements)
        borrowing.follow(movement);
    borrowing.lookAtCars();
    return std::move(borrowing).done();
}

} // namespace flarestock
