// SPDX-License-Identifier: MIT

#include "model/joints/way.h"

#include <algorithm>
#include <array>

namespace flarestock {

Verdict Way::verdict() const noexcept
{
    Verdict worst = Verdict::Fits;
    for (const Link &link : links)
        worst = std::min(worst, link.mating.verdict);
    return worst;
}

int Way::cautions() const noexcept
{
    return static_cast<int>(std::count_if(links.begin(), links.end(), [](const Link &link) {
        return link.mating.verdict == Verdict::FitsWithCaution;
    }));
}

std::vector<Need> Way::unanswered() const
{
    std::vector<Need> needs;
    for (const WayAid &aid : aids) {
        if (aid.part == nullptr)
            needs.push_back(aid.need);
    }
    return needs;
}

std::string Way::key() const
{
    if (pieces.empty())
        return "direct";
    std::string key;
    for (const Piece &piece : pieces) {
        if (!key.empty())
            key += " + ";
        key += piece.part->number;
    }
    return key;
}

std::strong_ordering compare(const WayRank &a, const WayRank &b, Preference preference) noexcept
{
    const auto order = [preference](const WayRank &rank) -> std::array<std::int64_t, 7> {
        switch (preference) {
        case Preference::Joints:
            return {rank.unanswered, rank.narrow,   rank.pieces,   rank.toBuy,
                    rank.cautions,   rank.unpriced, rank.costMicro};
        case Preference::Money:
            return {rank.unanswered, rank.narrow, rank.unpriced, rank.costMicro,
                    rank.cautions,   rank.toBuy,  rank.pieces};
        case Preference::Shelf:
            break;
        }
        return {rank.unanswered, rank.narrow,   rank.toBuy,    rank.pieces,
                rank.cautions,   rank.unpriced, rank.costMicro};
    };
    return order(a) <=> order(b);
}

} // namespace flarestock
