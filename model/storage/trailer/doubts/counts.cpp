// SPDX-License-Identifier: MIT
//
// Both have counted the same; and what was taken back on one side and built on on the other.

#include "model/journal/notes/count.h"
#include "model/storage/shop_sql.h"
#include "model/storage/trailer/doubts/doubts.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

/// What counts have found, more or less, of what lies somewhere.
using CountsOf = std::map<BalanceKey, std::vector<Movement>>;

/// A count's difference stands right behind it in its chain; behind one that found what was
/// expected may stand another one's.
CountsOf countsIn(const std::vector<NewsEntry> &news)
{
    CountsOf counts;
    for (const NewsEntry &entry : news) {
        if (!entry.record || entry.record->kind != RecordKind::Count)
            continue;
        const auto count = Count::read(*entry.record);
        if (!count)
            throw StorageFailure{count.error()};
        std::vector<Movement> &here = counts[count->key];
        const auto difference = std::find_if(news.begin(), news.end(), [&](const NewsEntry &other) {
            return other.movement && other.movement->deed == Deed::Count &&
                   other.replica == entry.replica &&
                   other.place.sequence == entry.place.sequence + 1 &&
                   (source(*other.movement) == count->key || target(*other.movement) == count->key);
        });
        if (difference != news.end())
            here.push_back(*difference->movement);
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

/// Both counts of one thing.
struct CountedTwice {
    BalanceKey key;
    std::vector<Movement> copy;
    std::vector<Movement> shop;
};
std::vector<CountedTwice> countedTwice(const BothSides &sides)
{
    std::vector<CountedTwice> all;
    const CountsOf copy = countsIn(sides.copy);
    if (copy.empty())
        return all;
    const CountsOf shop = countsIn(sides.shop);
    for (const auto &[key, there] : copy) {
        const auto here = shop.find(key);
        if (here != shop.end() && !(there.empty() && here->second.empty()))
            all.push_back({key, there, here->second});
    }
    return all;
}

/// How much more they have found; of those that still stand.
std::int64_t moreBy(const std::vector<Movement> &differences, const BalanceKey &key,
                    const EntriesBrought::Into &into)
{
    std::int64_t more = 0;
    for (const Movement &one : differences) {
        if (!isTakenBack(into.connection, one.id))
            more += target(one) == key ? one.quantity : -one.quantity;
    }
    return more;
}

/// What lies there by each word; none has less than nothing.
std::string wordOn(const BalanceKey &key, const std::array<std::int64_t, 3> &lies,
                   const EntriesBrought::Into &into)
{
    return into.disagreements.decide(
        {"count:" + spelt(key),
         key.part + " at " + key.place + (key.lot.empty() ? "" : ", lot " + key.lot) +
             " was counted on both sides",
         {{"shop", "the shop's count counts; what the copy's found more or less does not",
           HowMuch{key.part, std::max<std::int64_t>(lies[0], 0)}},
          {"copy", "the copy's count counts; what the shop's found more or less does not",
           HowMuch{key.part, std::max<std::int64_t>(lies[1], 0)}},
          {"both", "each found something else: both differences stay",
           HowMuch{key.part, std::max<std::int64_t>(lies[2], 0)}}},
         {}});
}

/// Both that have found the same have found it once, and nobody is asked. What was lent to the
/// copy's movements is no piece: it goes again, so that as much lies there as the word says. Only
/// where both have taken more than there was, whatever they counted, is it asked whence it came.
void settleCount(const CountedTwice &counted, EntriesBrought &entries,
                 const EntriesBrought::Into &into)
{
    const BalanceKey &key = counted.key;
    const std::int64_t lent = entries.repaid(key);
    const std::int64_t copy = moreBy(counted.copy, key, into);
    const std::int64_t shop = moreBy(counted.shop, key, into);
    const std::int64_t all = into.writer.balance(key).quantity - lent;
    const std::string word =
        copy == shop ? std::string("shop") : wordOn(key, {all - copy, all - shop, all}, into);
    static const std::vector<Movement> None;
    const auto &goes = word == "both" ? None : word == "shop" ? counted.copy : counted.shop;
    for (const Movement &difference : goes) {
        if (lent == 0)
            undo(difference, entries, into);
    }
    const std::int64_t lies = all - (word == "both" ? 0 : word == "shop" ? copy : shop);
    const std::int64_t withoutCounts = all - copy - shop;
    if (lies < 0 && withoutCounts < 0)
        entries.fetched(key, {key.part, std::min(-lies, -withoutCounts)}, "the copy took");
    entries.bringTo(key, std::max<std::int64_t>(lies, 0), goes.empty() ? Movement() : goes.front());
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

void lendToCounts(const BothSides &sides, EntriesBrought &entries)
{
    for (const CountedTwice &counted : countedTwice(sides))
        entries.lend(counted.key);
}

void settleCounts(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into)
{
    for (const CountedTwice &counted : countedTwice(sides))
        settleCount(counted, entries, into);
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
