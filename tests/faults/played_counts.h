// SPDX-License-Identifier: MIT
//
// Played counts: what has to lie somewhere that both sides have counted, asked of the two files
// before they come together: nothing of the merge's own words goes into it.
//
//   home has 0 by its count, the copy 2, both had 2 before: "shop" 0, "copy" 2, "both" 0

#pragma once

#include "played_shop.h"

#include <algorithm>

namespace flarestock::tests {

/// What both have counted and nobody has moved since the copy was taken.
struct OnlyCounted {
    BalanceKey key;
    std::int64_t shop = 0; ///< By its book.
    std::int64_t copy = 0;
    std::int64_t before = 0; ///< That both knew.

    [[nodiscard]] std::string question() const { return "count:" + key.part + "@" + key.place; }
    [[nodiscard]] std::int64_t by(const std::string &word) const
    {
        return word == "shop"   ? shop
               : word == "copy" ? copy
                                : std::max<std::int64_t>(0, shop + copy - before);
    }
};

struct CountedNews {
    std::set<BalanceKey> counted;
    std::set<BalanceKey> moved;
    std::map<BalanceKey, std::int64_t> more;
};

inline CountedNews countedNews(const ShopFile &of, const ShopFile &other)
{
    std::set<std::string> known;
    for (const Movement &one : good(other.movements(), "movements"))
        known.insert(one.id.text());
    for (const Record &record : good(other.records(), "records"))
        known.insert(record.id.text());
    CountedNews news;
    for (const Movement &one : good(of.movements(), "movements")) {
        if (known.contains(one.id.text()) || one.quantity == 0)
            continue;
        const bool isCount = one.deed == Deed::Count && !isOwn(one.id);
        for (const BalanceKey &key : {source(one), target(one)}) {
            news.more[key] += key == target(one) ? one.quantity : -one.quantity;
            if (!isCount)
                news.moved.insert(key);
        }
    }
    for (const Record &record : good(of.records(), "records")) {
        if (record.kind == RecordKind::Count && !known.contains(record.id.text()))
            news.counted.insert(good(Count::read(record), "count").key);
    }
    return news;
}

inline std::vector<OnlyCounted> onlyCounted(const ShopFile &shop, const ShopFile &copy)
{
    CountedNews here = countedNews(shop, copy);
    CountedNews there = countedNews(copy, shop);
    const Ledger ours = good(shop.ledger(), "ledger");
    const Ledger theirs = good(copy.ledger(), "ledger");
    std::vector<OnlyCounted> all;
    for (const BalanceKey &key : here.counted) {
        if (!there.counted.contains(key) || here.moved.contains(key) || there.moved.contains(key))
            continue;
        const std::int64_t lies = ours.balance(key).quantity;
        all.push_back({key, lies, theirs.balance(key).quantity, lies - here.more[key]});
    }
    return all;
}

/// That as much lies there as was decided, asked where the two do not agree and only there, once.
inline void proveCounted(const std::vector<OnlyCounted> &all,
                         const std::vector<Disagreement> &disagreements, const Ledger &ledger)
{
    for (const OnlyCounted &one : all) {
        std::string word = "shop";
        std::size_t questions = 0;
        for (const Disagreement &question : disagreements) {
            if (question.name == one.question())
                word = question.decided;
            for (const char *about : {"count:", "below-zero:"})
                questions += question.name == about + one.question().substr(6) ? 1 : 0;
        }
        if (questions != (one.shop == one.copy ? 0 : 1))
            wrong(std::to_string(questions) + " questions on " + one.question());
        if (ledger.balance(one.key).quantity != one.by(word))
            wrong(one.question() + "=" + word + ": " +
                  std::to_string(ledger.balance(one.key).quantity) + " lie there, by the word " +
                  std::to_string(one.by(word)));
    }
}

/// That each word on a count comes to what it says, whatever else was done on either side.
inline void proveWords(const std::vector<Disagreement> &disagreements, const Ledger &ledger)
{
    for (const Disagreement &one : disagreements) {
        for (const Choice &choice : one.choices) {
            const auto at = one.name.find('@');
            if (choice.word == one.decided && choice.lies &&
                ledger.balance({choice.lies->part, one.name.substr(at + 1), {}, {}}).quantity !=
                    choice.lies->quantity)
                wrong(one.name + "=" + one.decided + " came to another figure than it says");
        }
    }
}

} // namespace flarestock::tests
