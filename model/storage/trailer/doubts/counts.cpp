// SPDX-License-Identifier: MIT
//
// Both have counted the same; and what was taken back on one side and built on on the other.

#include "model/journal/notes/count.h"
#include "model/storage/shop_sql.h"
#include "model/storage/trailer/doubts/doubts.h"

#include <algorithm>

namespace flarestock {

namespace {

struct CountedHere {
    std::int64_t found = 0; ///< By the newest count.
    std::vector<Movement> differences;
};
using CountsOf = std::map<BalanceKey, CountedHere>;

/// A count's difference stands right behind it in its chain.
CountsOf countsIn(const std::vector<NewsEntry> &news)
{
    CountsOf counts;
    for (const NewsEntry &entry : news) {
        if (!entry.record || entry.record->kind != RecordKind::Count)
            continue;
        const auto count = Count::read(*entry.record);
        if (!count)
            throw StorageFailure{count.error()};
        CountedHere &here = counts[count->key];
        here.found = count->found;
        const auto difference =
            std::find_if(news.begin(), news.end(), [&entry](const NewsEntry &other) {
                return other.movement && other.movement->deed == Deed::Count &&
                       other.replica == entry.replica &&
                       other.place.sequence == entry.place.sequence + 1;
            });
        if (difference != news.end() && difference->movement->part == count->key.part)
            here.differences.push_back(*difference->movement);
    }
    return counts;
}

/// What its count has found does not count; the movement stays, and the opposite follows.
void undo(const Movement &difference, EntriesBrought &entries, const EntriesBrought::Into &into)
{
    if (isTakenBack(into.connection, difference.id))
        return;
    const BalanceKey there = target(difference);
    Movement back =
        into.own.movement(there, difference.quantity, difference.from, "the other count counts");
    back.reverses = difference.id;
    back.deed = Deed::Count;
    entries.appendUpTo(std::move(back));
}

void settleCount(const BalanceKey &key, const std::pair<CountedHere, CountedHere> &counted,
                 EntriesBrought &entries, const EntriesBrought::Into &into)
{
    const auto &[copy, shop] = counted;
    const auto word = into.disagreements.decide(
        {"count:" + spelt(key),
         key.part + " at " + key.place + (key.lot.empty() ? "" : ", lot " + key.lot) +
             " was counted on both sides",
         {{"shop", "the shop's count counts; what the copy's found more or less does not"},
          {"copy", "the copy's count counts; what the shop's found more or less does not"},
          {"both", "each found something else: both differences stay"}},
         {}});
    if (word == "both")
        return;
    for (const Movement &difference : (word == "shop" ? copy : shop).differences)
        undo(difference, entries, into);
}

/// The movements that one side took back, which both knew before.
std::vector<Movement> takenBackBy(const std::vector<NewsEntry> &news,
                                  const ShopConnection &connection)
{
    std::set<MovementId> fresh;
    eachMovement(news, [&fresh](const Movement &one) { fresh.insert(one.id); });
    std::vector<Movement> taken;
    eachMovement(news, [&](const Movement &one) {
        if (!one.reverses || fresh.contains(*one.reverses))
            return;
        connection.runAgain(
            sql::SelectMovement, {idBytes(*one.reverses)},
            [&taken](const QSqlQuery &row) { taken.push_back(journalRow(row).movement); });
    });
    return taken;
}

bool buildsOn(const std::vector<NewsEntry> &news, const Movement &past)
{
    const BalanceKey there = target(past);
    bool found = false;
    eachMovement(news, [&](const Movement &one) {
        found = found || (source(one) == there && one.reverses != past.id && one.quantity > 0);
    });
    return found;
}

} // namespace

bool isTakenBack(const ShopConnection &connection, const MovementId &id)
{
    bool found = false;
    connection.runAgain(sql::SelectReversal, {idBytes(id)},
                        [&found](const QSqlQuery &) { found = true; });
    return found;
}

void settleCounts(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into)
{
    const CountsOf copy = countsIn(sides.copy);
    if (copy.empty())
        return;
    const CountsOf shop = countsIn(sides.shop);
    for (const auto &[key, there] : copy) {
        const auto here = shop.find(key);
        if (here == shop.end() || (there.differences.empty() && here->second.differences.empty()))
            continue;
        settleCount(key, {there, here->second}, entries, into);
    }
}

void doAgain(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into)
{
    for (const bool byShop : {true, false}) {
        const auto &took = byShop ? sides.shop : sides.copy;
        const auto &built = byShop ? sides.copy : sides.shop;
        for (const Movement &past : takenBackBy(took, into.connection)) {
            if (!buildsOn(built, past))
                continue;
            const auto word = into.disagreements.decide(
                {"undone:" + past.id.text(),
                 "movement " + past.id.text() + " of " + past.part + " from " + past.from + " to " +
                     past.to + " was taken back " + (byShop ? "here" : "in the copy") +
                     ", and what it had brought went on from there " +
                     (byShop ? "in the copy" : "here"),
                 {{"stands", "it stays taken back, and what went on stays too"},
                  {"again", "it was no mistake: it is done once more"}},
                 {}});
            if (word != "again")
                continue;
            Movement again =
                into.own.movement(source(past), past.quantity, past.to, "was no mistake");
            again.value = past.value;
            again.newLot = past.newLot;
            again.newCondition = past.newCondition;
            again.deed = past.deed;
            again.document = past.document;
            if (past.quantity > 0)
                entries.append(std::move(again));
        }
    }
}

} // namespace flarestock
