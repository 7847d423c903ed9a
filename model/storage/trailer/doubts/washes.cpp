// SPDX-License-Identifier: MIT
//
// Both have washed what is at one position of a car. It was washed twice, or it was one wash that
// was written down twice and would count as two of those that the element may have.

#include "model/storage/trailer/doubts/done_twice.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isWash(Work work)
{
    return work == Work::Washed;
}

/// Those of the piece that the other side has washed, too.
std::vector<OneWork> ofSamePiece(const std::vector<OneWork> &works,
                                 const std::vector<OneWork> &others)
{
    std::vector<OneWork> same;
    std::copy_if(works.begin(), works.end(), std::back_inserter(same), [&](const OneWork &one) {
        return std::any_of(others.begin(), others.end(), [&one](const OneWork &other) {
            return other.done.piece == one.done.piece;
        });
    });
    return same;
}

Disagreement doubtOf(const Seat &seat, const OneWork &copy, const OneWork &shop)
{
    const auto &[car, position] = seat;
    return {"washed:" + position + "@" + car,
            "what is at " + position + " of " + car + " was washed on both sides, here on " +
                shop.done.day + ", in the copy on " + copy.done.day,
            {{"both", "both were done, and both count"},
             {"shop", "it was one and the same work: the shop's holds, and what the copy moved for "
                      "it goes back"},
             {"copy", "it was one and the same work: the copy's holds, and what the shop moved for "
                      "it goes back"}},
            {}};
}

} // namespace

void settleWashes(const BothSides &sides, EntriesBrought &entries, const EntriesBrought::Into &into)
{
    const WorksBySeat inCopy = worksBySeat(sides.copy, false, isWash);
    if (inCopy.empty())
        return;
    const WorksBySeat here = worksBySeat(sides.shop, true, isWash);
    DoneTwice twice(sides, entries, into);
    for (const auto &[seat, works] : inCopy) {
        const auto others = here.find(seat);
        if (others == here.end())
            continue;
        const std::vector<OneWork> copy = ofSamePiece(works, others->second);
        const std::vector<OneWork> shop = ofSamePiece(others->second, works);
        if (copy.empty())
            continue;
        const std::string word = into.disagreements.decide(doubtOf(seat, copy.back(), shop.back()));
        if (word != "both")
            twice.holdsNot(word == "shop" ? copy : shop);
    }
}

} // namespace flarestock
