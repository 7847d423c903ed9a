// SPDX-License-Identifier: MIT

#include "model/joints/sharing/way_order.h"

namespace flarestock {

WantOrder wantOrder(Preference preference) noexcept
{
    switch (preference) {
    case Preference::Joints:
        return {Want::FewPieces, Want::FewBought, Want::LittleMoney};
    case Preference::Money:
        return {Want::LittleMoney, Want::FewBought, Want::FewPieces};
    case Preference::Shelf:
        break;
    }
    return {Want::FewBought, Want::FewPieces, Want::LittleMoney};
}

std::vector<Criterion> criteria(const WantOrder &order)
{
    using enum Criterion;
    std::vector<Criterion> all{Unanswered, Narrow};
    for (const Want want : order) {
        if (want == Want::FewBought)
            all.push_back(ToBuy);
        else if (want == Want::FewPieces)
            all.push_back(Pieces);
        else if (order.back() == Want::LittleMoney)
            all.insert(all.end(), {Cautions, Unpriced, CostMicro});
        else
            all.insert(all.end(), {Unpriced, CostMicro, Cautions});
    }
    return all;
}

std::string_view text(Criterion criterion) noexcept
{
    constexpr std::array<std::string_view, 7> Words{
        "unanswered needs", "narrow ports",    "to buy", "pieces",
        "cautions",         "without a price", "cost"};
    return Words[static_cast<std::size_t>(criterion)];
}

std::int64_t valueOf(const WayRank &rank, Criterion criterion) noexcept
{
    switch (criterion) {
    case Criterion::Unanswered:
        return rank.unanswered;
    case Criterion::Narrow:
        return rank.narrow;
    case Criterion::ToBuy:
        return rank.toBuy;
    case Criterion::Pieces:
        return rank.pieces;
    case Criterion::Cautions:
        return rank.cautions;
    case Criterion::Unpriced:
        return rank.unpriced;
    case Criterion::CostMicro:
        break;
    }
    return rank.costMicro;
}

} // namespace flarestock
