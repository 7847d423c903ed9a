// SPDX-License-Identifier: MIT
//
// Both have promised the same pieces; a promise was let go here and used there.

#include "model/journal/promise.h"
#include "model/storage/trailer/doubts/doubts.h"

namespace flarestock {

namespace {

using PromisedBy = std::map<ClaimKey, std::int64_t>;

PromisedBy promisedIn(const std::vector<NewsEntry> &news)
{
    PromisedBy sums;
    eachRecord(news, RecordKind::Promise, [&sums](const Record &record) {
        const auto promise = Promise::read(record);
        if (!promise)
            throw StorageFailure{promise.error()};
        sums[{promise->part, promise->build}] += promise->quantity;
    });
    return sums;
}

void promise(const ClaimKey &claim, std::int64_t quantity, const std::string &says,
             const EntriesBrought::Into &into)
{
    Promise one;
    one.id = into.own.nextId();
    one.build = claim.build;
    one.part = claim.part;
    one.quantity = quantity;
    one.who = into.own.who;
    one.why = says;
    one.at = into.own.at;
    static_cast<void>(into.writer.append(one.asRecord()));
}

/// Lets go of what one side has promised, as far as nothing of it was issued.
void letGo(const std::string &part, const PromisedBy &sums, const EntriesBrought::Into &into)
{
    for (const auto &[claim, quantity] : sums) {
        if (claim.part != part || quantity <= 0)
            continue;
        const std::int64_t open = into.writer.knowing(part).claim(claim).outstanding();
        if (const std::int64_t less = std::min(open, quantity); less > 0)
            promise(claim, -less, "the other side's promise counts", into);
    }
}

std::set<std::string> partsIn(const PromisedBy &copy)
{
    std::set<std::string> parts;
    for (const auto &[claim, quantity] : copy) {
        if (quantity > 0)
            parts.insert(claim.part);
    }
    return parts;
}

void settleOverpromised(const PromisedBy &copy, const PromisedBy &shop,
                        const EntriesBrought::Into &into)
{
    for (const std::string &part : partsIn(copy)) {
        const Ledger &ledger = into.writer.knowing(part);
        if (ledger.outstanding(part) <= ledger.usable(part))
            continue;
        const auto word = into.disagreements.decide(
            {"promise:" + part,
             "more of " + part + " is promised by both sides together than there is",
             {{"both", "both promises stay: what lacks is short"},
              {"shop", "what the copy has promised of it is let go"},
              {"copy", "what the shop has promised of it meanwhile is let go"}},
             {}});
        if (word != "both")
            letGo(part, word == "shop" ? copy : shop, into);
    }
}

/// Let go on both sides it would be less than nothing: it was one promise.
void settleLetGoTwice(const PromisedBy &copy, const EntriesBrought::Into &into)
{
    for (const auto &[claim, quantity] : copy) {
        const std::int64_t promised = into.writer.knowing(claim.part).claim(claim).promised;
        if (promised >= 0)
            continue;
        static_cast<void>(into.disagreements.decide(
            {"let-go:" + claim.part + "@" + claim.build,
             "the promise of " + claim.part + " to " + claim.build + " was let go on both sides",
             {{"once", "it was one promise, and is let go once"}},
             {}}));
        promise(claim, -promised, "was let go on both sides", into);
    }
}

/// One side has let a promise go, and the other has issued it.
void settleUsed(const PromisedBy &letGo, const std::vector<NewsEntry> &used,
                const EntriesBrought::Into &into)
{
    std::map<ClaimKey, std::int64_t> issues;
    eachMovement(used, [&issues](const Movement &one) {
        if (const auto issued = issuedBy(one); issued && issued->quantity > 0)
            issues[issued->claim] += issued->quantity;
    });
    for (const auto &[claim, quantity] : letGo) {
        const auto issued = issues.find(claim);
        if (quantity >= 0 || issued == issues.end())
            continue;
        const auto word = into.disagreements.decide(
            {"let-go:" + claim.part + "@" + claim.build,
             "the promise of " + claim.part + " to " + claim.build +
                 " was let go on one side and issued on the other",
             {{"stands", "what was issued stays issued; nothing is promised anew"},
              {"promised", "as much as was issued is promised again, which it uses up"}},
             {}});
        if (word == "promised")
            promise(claim, std::min(-quantity, issued->second), "was used all the same", into);
    }
}

} // namespace

void settlePromises(const BothSides &sides, const EntriesBrought::Into &into)
{
    const PromisedBy copy = promisedIn(sides.copy);
    const PromisedBy shop = promisedIn(sides.shop);
    settleLetGoTwice(copy, into);
    settleUsed(shop, sides.copy, into);
    settleUsed(copy, sides.shop, into);
    settleOverpromised(copy, shop, into);
}

} // namespace flarestock
