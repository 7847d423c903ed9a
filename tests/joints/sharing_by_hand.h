// SPDX-License-Identifier: MIT
//
// Sharing by hand, for tests: random catalogues, shelves and joints; the lowest of all choices.

#pragma once

#include "model/joints/sharing/sharing.h"
#include "tests/joints/joint_parts.h"
#include "tests/parts/suppliers.h"

#include <algorithm>
#include <functional>
#include <set>

namespace flarestock {

using Chosen = std::vector<std::optional<std::size_t>>;

inline std::vector<WantOrder> allOrders()
{
    WantOrder order{Want::FewBought, Want::FewPieces, Want::LittleMoney};
    std::vector<WantOrder> all;
    do
        all.push_back(order);
    while (std::next_permutation(order.begin(), order.end()));
    return all;
}

inline FreeLeft allOf(const Shelf &shelf)
{
    return [&shelf](const Part &part) {
        const auto on = shelf.find(part.number);
        return on == shelf.end() ? Decimal() : on->second.free.amount;
    };
}

inline Way wayOf(const std::vector<const Part *> &parts)
{
    Way way;
    for (const Part *part : parts)
        way.pieces.push_back({part, "a", "b"});
    return way;
}

/// Counted from the ways of all builds up to this one: what is taken of each part, what of it is
/// free, what the rest costs.
inline WayRank counted(const ShareRequest &request, const Chosen &chosen, std::size_t build)
{
    WayRank rank;
    std::map<const Part *, int> taken;
    std::map<const Part *, std::set<std::size_t>> bottles; // For which builds.
    for (std::size_t joint = 0; joint < chosen.size(); ++joint) {
        if (!chosen[joint] || request.joints[joint].build > build)
            continue;
        const Way &way = request.joints[joint].ways[*chosen[joint]];
        rank.pieces += static_cast<int>(way.pieces.size());
        rank.cautions += way.cautions();
        for (const Piece &piece : way.pieces) {
            ++taken[piece.part];
            for (const PartPort &port : piece.part->ports)
                rank.narrow += dash(port.port) > 0 && dash(port.port) < 8 ? 1 : 0;
        }
        for (const WayAid &aid : way.aids) {
            if (!aid.part)
                ++rank.unanswered;
            else if (aid.part->kind == Kind::Sealant)
                bottles[aid.part].insert(request.joints[joint].build);
            else
                taken[aid.part] += aid.need.count;
        }
    }
    for (const auto &[part, builds] : bottles)
        taken[part] = static_cast<int>(builds.size());
    for (const auto &[part, count] : taken) {
        const auto on = request.shelf.find(part->number);
        const Decimal here = on == request.shelf.end()
                                 ? Decimal()
                                 : std::min(on->second.free.amount, Decimal(count));
        const Decimal toBuy = Decimal(count) - here;
        Decimal cost;
        if (here.sign() > 0)
            cost = on->second.carriedUnitCost().times(here).toDecimal(6, Rounding::HalfEven);
        rank.toBuy += static_cast<int>(toBuy.toInt64().value());
        if (const Offer *best = request.catalogue.bestOffer(*part, toBuy))
            cost += best->priceEach(toBuy) * toBuy;
        else
            rank.unpriced += static_cast<int>(toBuy.toInt64().value());
        rank.costMicro += (cost * Decimal(1'000'000)).toInt64().value();
    }
    return rank;
}

inline std::vector<std::int64_t> inOrder(const WayRank &rank, const WantOrder &order)
{
    std::vector<std::int64_t> values;
    for (const Criterion criterion : criteria(order))
        values.push_back(valueOf(rank, criterion));
    return values;
}

inline std::vector<std::int64_t> inOrder(const std::vector<WayRank> &ranks, const WantOrder &order)
{
    std::vector<std::int64_t> values;
    for (const WayRank &rank : ranks)
        for (const auto value : inOrder(rank, order))
            values.push_back(value);
    return values;
}

inline std::vector<std::int64_t> inOrder(const ShareRequest &request, const Chosen &chosen)
{
    std::size_t last = 0;
    for (const SharedJoint &joint : request.joints)
        last = std::max(last, joint.build);
    std::vector<WayRank> ranks;
    for (std::size_t build = 0; build <= last; ++build)
        ranks.push_back(counted(request, chosen, build));
    return inOrder(ranks, request.order);
}

/// The lowest of all choices.
inline std::vector<std::int64_t> byBruteForce(const ShareRequest &request)
{
    std::optional<std::vector<std::int64_t>> best;
    Chosen chosen;
    const std::function<void()> choose = [&] {
        if (chosen.size() == request.joints.size()) {
            auto values = inOrder(request, chosen);
            if (!best || values < *best)
                best = std::move(values);
            return;
        }
        const auto &ways = request.joints[chosen.size()].ways;
        for (std::size_t way = 0; way < ways.size(); ++way) {
            chosen.push_back(way);
            choose();
            chosen.pop_back();
        }
        if (ways.empty()) {
            chosen.push_back(std::nullopt);
            choose();
            chosen.pop_back();
        }
    };
    choose();
    return *best;
}

/// Adapters between boss, flare and pipe, hose ends, a ring and sealant, of random prices.
inline Catalogue drawn(const std::function<int(int)> &pick)
{
    Part sealant;
    sealant.number = "SEAL";
    sealant.kind = Kind::Sealant;
    std::vector<Part> parts{body("P", "ORB -8 female"),  body("Q", "AN -8 male"),
                            body("R", "NPT 1/2 female"), body("H", "HOSE PT -8"),
                            ring("AS568-908"),           sealant};
    std::vector<Offer> offers{offer("AS568-908", 1), offer("SEAL", 7)};
    for (int i = 0; i < 9; ++i) {
        const auto number = "A" + std::to_string(i);
        const auto *a = i % 3 == 0   ? "ORB -8 male"
                        : i % 3 == 1 ? "NPT 1/2 male"
                                     : "AN -8 female swivel";
        const std::string b = (pick(3) == 0 ? "JIC -" : "AN -") + std::string(i == 8 ? "6" : "8");
        parts.push_back(piece(number, Kind::Adapter, a, (b + " male").c_str()));
        if (pick(5) == 0)
            continue; // Nobody sells it.
        offers.push_back(offer(number, 1 + pick(9)));
        if (pick(3) == 0) // Two or more are cheaper each.
            offers.back().breaks.push_back({2, Decimal::parse("0.5").value()});
    }
    for (int i = 0; i < 3; ++i) {
        const auto number = "HE" + std::to_string(i);
        parts.push_back(hoseEnd(number, 8, i == 2 ? "AN -6 female swivel" : "AN -8 female swivel"));
        offers.push_back(offer(number, 2 + pick(9)));
    }
    return Catalogue::of(parts, {tests::supplierOf("S", "S", 0)}, offers).value();
}

/// A component's port and a hose.
inline JointRequest anyJoint(const std::function<int(int)> &pick)
{
    const std::array<const char *, 4> from{"ORB -8 female", "AN -8 male", "NPT 1/2 female",
                                           "AN -10 male"};
    JointRequest asked;
    asked.from = Port::parse(from[static_cast<std::size_t>(pick(4))]).value();
    asked.to = Port::parse("HOSE PT -8").value();
    asked.piecesMax = 3;
    return asked;
}

inline Shelf stocked(const Catalogue &catalogue, const std::function<int(int)> &pick)
{
    Shelf shelf;
    for (const Part &part : catalogue.parts())
        if (const int free = pick(3); free > 0)
            shelf[part.number] = {{free, Unit::Each}, {free, Unit::Each}, 1 + pick(20), {}, {}, {}};
    return shelf;
}

} // namespace flarestock
