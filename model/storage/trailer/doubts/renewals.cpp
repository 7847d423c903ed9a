// SPDX-License-Identifier: MIT
//
// Both have renewed, or taken out, what is at one position of a car. Each believed that it took out
// what was there before the copy went; so one piece would have gone out twice, and two would be in.
// Either both were done, and the later one took out what the earlier one had put in; or it was one
// work that was written down twice, and what one side moved for it goes back.

#include "model/storage/trailer/doubts/done_twice.h"

#include <algorithm>

namespace flarestock {

namespace {

using Renewal = OneWork;

bool isRenewal(Work work)
{
    return work == Work::Fitted || work == Work::Replaced || work == Work::TakenOut;
}

/// Without what the copy knows because it is its own, said again when it was brought before.
void dropWhatTheCopyKnows(std::vector<Renewal> &shop, const std::vector<NewsEntry> &news)
{
    const auto isOfCopy = [&news](const Renewal &one) {
        const std::string &before = one.record.field(SaidBeforeField);
        return !before.empty() &&
               std::none_of(news.begin(), news.end(), [&before](const NewsEntry &entry) {
                   return entry.id().text() == before;
               });
    };
    const auto last = std::find_if(shop.rbegin(), shop.rend(), isOfCopy);
    shop.erase(shop.begin(), last.base());
}

/// One after the other by their days; of one day first those of the side that was first.
std::vector<Renewal> inOrder(const std::vector<Renewal> &first, const std::vector<Renewal> &then)
{
    std::vector<Renewal> all = first;
    all.insert(all.end(), then.begin(), then.end());
    std::stable_sort(all.begin(), all.end(),
                     [](const Renewal &a, const Renewal &b) { return a.done.day < b.done.day; });
    return all;
}

/// Nothing can be taken out where nothing was left.
bool isPossible(const std::vector<Renewal> &order)
{
    return std::adjacent_find(order.begin(), order.end(), [](const auto &a, const auto &b) {
               return a.done.work == Work::TakenOut && b.done.work == Work::TakenOut;
           }) == order.end();
}

bool isSameOrder(const std::vector<Renewal> &a, const std::vector<Renewal> &b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const auto &one, const auto &two) { return one.done.id == two.done.id; });
}

class RenewedTwice : public DoneTwice {
public:
    using DoneTwice::DoneTwice;
    void settle(const Seat &seat, const std::vector<Renewal> &copy,
                const std::vector<Renewal> &shop);

private:
    void followEachOther(const std::vector<Renewal> &order);
    [[nodiscard]] std::string takeOut(const Renewal &before, const Renewal &one);
    [[nodiscard]] std::optional<Movement> wayOut(const Renewal &one) const;
    [[nodiscard]] std::optional<BalanceKey> wayIn(const Renewal &one) const;
};

/// How it took out the old piece; nothing where no movement did.
std::optional<Movement> RenewedTwice::wayOut(const Renewal &one) const
{
    for (const Movement &movement : movementsOf(one)) {
        const BalanceKey old{one.done.old.part, movement.to, one.done.old.lot, one.done.oldIs};
        const Place *from = m_into.writer.knowing(movement.part).place(movement.from);
        if (movement.to != one.done.car && target(movement) == old && from && !isStock(from->kind))
            return movement;
    }
    return std::nullopt;
}

/// As what lies in the car what it put in; nothing where the journal has none of it there.
std::optional<BalanceKey> RenewedTwice::wayIn(const Renewal &one) const
{
    const auto &[part, lot] = one.done.piece;
    if (one.done.work == Work::TakenOut || part.empty())
        return std::nullopt;
    for (const Movement &movement : movementsOf(one)) {
        const BalanceKey there = target(movement);
        if (there.place == one.done.car && there.part == part && there.lot == lot)
            return there;
    }
    for (const auto &[key, held] : m_into.writer.knowing(part).balancesOf(part)) {
        if (key.place == one.done.car && key.lot == lot && held.quantity >= one.done.quantity)
            return key;
    }
    return std::nullopt;
}

/// What `before` put in goes where `one` has sent what it took for the old piece, which stays where
/// the earlier ones sent it. Returns what it is called from then on, as its lot.
std::string RenewedTwice::takeOut(const Renewal &before, const Renewal &one)
{
    const auto out = wayOut(one);
    const auto in = wayIn(before);
    const bool isTagged = out && out->newLot && *out->newLot != out->lot;
    if (out)
        giveBack(*out);
    std::string lot = isTagged ? one.done.old.lot : before.done.piece.lot;
    if (!in || one.done.work == Work::Fitted)
        return lot;
    const std::string to =
        out ? out->to : placeOf(PlaceKind::Scrap, m_into.writer.knowing(in->part));
    Movement goes =
        m_into.own.movement(*in, before.done.quantity, to, "had been put in on the other side");
    goes.deed = Deed::Renew;
    if (lot != in->lot)
        goes.newLot = lot;
    if (one.done.oldIs != in->condition)
        goes.newCondition = one.done.oldIs;
    m_entries.append(std::move(goes));
    return lot;
}

/// From the first one on that found another piece than it knew of, all are said again, so that
/// they stand in this order.
void RenewedTwice::followEachOther(const std::vector<Renewal> &order)
{
    bool isOther = false;
    for (std::size_t at = 1; at < order.size(); ++at) {
        const Renewal &before = order[at - 1];
        const Renewal &one = order[at];
        Serviced again = one.done;
        if (before.byShop != one.byShop) {
            isOther = true;
            const std::string lot = takeOut(before, one);
            if (again.work != Work::Fitted)
                again.old = before.done.work == Work::TakenOut
                                ? LotKey()
                                : LotKey{before.done.piece.part, lot};
        }
        if (!isOther)
            continue;
        takeBack(one);
        again.id = m_into.own.nextId();
        again.at = m_into.own.at;
        Record record = again.asRecord();
        record.fields[SaidBeforeField] = one.done.id.text();
        record.fields[FollowsField] = before.done.id.text();
        static_cast<void>(m_into.writer.append(record));
    }
}

void RenewedTwice::settle(const Seat &seat, const std::vector<Renewal> &copy,
                          const std::vector<Renewal> &shop)
{
    const auto shopFirst = inOrder(shop, copy);
    const auto copyFirst = inOrder(copy, shop);
    std::vector<Choice> choices;
    if (isSameOrder(shopFirst, copyFirst)) {
        if (isPossible(shopFirst))
            choices.push_back({"both", "both were done, as their days say: the later one took out "
                                       "what the earlier one had put in"});
    } else {
        if (isPossible(shopFirst))
            choices.push_back({"copy-last", "both were done, the copy's last: it took out what had "
                                            "been put in here"});
        if (isPossible(copyFirst))
            choices.push_back({"shop-last", "both were done, the shop's last: it took out what had "
                                            "been put in with the copy"});
    }
    choices.push_back({"shop", "it was one and the same work: the shop's holds, and what the copy "
                               "moved for it goes back"});
    choices.push_back({"copy", "it was one and the same work: the copy's holds, and what the shop "
                               "moved for it goes back"});
    const auto &[car, position] = seat;
    const auto word = m_into.disagreements.decide(
        {"renewed:" + position + "@" + car,
         "what is at " + position + " of " + car +
             " was put in or taken out on both sides, here on " + shop.back().done.day +
             ", in the copy on " + copy.back().done.day,
         std::move(choices),
         {}});
    if (word == "shop")
        return holdsNot(copy);
    if (word == "copy")
        return holdsNot(shop);
    followEachOther(word == "shop-last" ? copyFirst : shopFirst);
}

} // namespace

void settleRenewals(const BothSides &sides, EntriesBrought &entries,
                    const EntriesBrought::Into &into)
{
    const WorksBySeat copy = worksBySeat(sides.copy, false, isRenewal);
    if (copy.empty())
        return;
    WorksBySeat shop = worksBySeat(sides.shop, true, isRenewal);
    RenewedTwice twice(sides, entries, into);
    for (const auto &[seat, there] : copy) {
        std::vector<Renewal> &here = shop[seat];
        dropWhatTheCopyKnows(here, sides.shop);
        if (!here.empty())
            twice.settle(seat, there, here);
    }
}

} // namespace flarestock
