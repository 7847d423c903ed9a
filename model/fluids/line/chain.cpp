// SPDX-License-Identifier: MIT

#include "model/fluids/line/chain.h"

#include "model/fluids/bounds.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <utility>

namespace flarestock {

namespace {

/// The liquid on its way through the chain.
struct Way {
    const LineChain &chain;
    ChainLoss found;
    double flowM3S = 0;
    double boreM = 0; ///< Of the piece before; 0 at the beginning, in a vessel and after a filter.
    double alongM = 0;
    double totalPa = 0;

    [[nodiscard]] double velocityIn(double bore) const
    {
        return flowM3S / (std::numbers::pi / 4 * bore * bore);
    }
    [[nodiscard]] double velocityPressure(double velocityMS) const
    {
        return chain.densityKgM3 * velocityMS * velocityMS / 2;
    }
};

double boreOf(const LinePiece &piece)
{
    return std::visit(
        [](const auto &each) {
            if constexpr (requires { each.boreM; })
                return each.boreM;
            else
                return 0.0;
        },
        piece.piece);
}

bool isAssumed(const LinePiece &piece)
{
    return std::visit(
        [](const auto &each) {
            if constexpr (requires { each.boreAssumed; })
                return each.boreAssumed;
            else
                return false;
        },
        piece.piece);
}

/// What flows in that bore, without any loss yet.
Result<PieceLoss> flowIn(const Way &way, double boreM)
{
    LineFlow line;
    line.flowM3S = way.flowM3S;
    line.boreM = boreM;
    line.densityKgM3 = way.chain.densityKgM3;
    line.viscosityPaS = way.chain.viscosityPaS;
    const auto loss = lineLoss(line);
    if (!loss)
        return tl::unexpected<Problem>(loss.error());
    PieceLoss piece;
    piece.flowM3S = way.flowM3S;
    piece.boreM = boreM;
    piece.velocityMS = loss->velocityMS;
    piece.reynolds = loss->reynolds;
    piece.regime = loss->regime;
    return piece;
}

/// The piece with a coefficient on the velocity in its bore.
Result<PieceLoss> minorLoss(const Way &way, double boreM, double k)
{
    auto loss = flowIn(way, boreM);
    if (loss)
        loss->minorPa = k * way.velocityPressure(loss->velocityMS);
    return loss;
}

Result<PieceLoss> lossOf(const StraightLine &piece, Way &way)
{
    LineFlow line;
    line.flowM3S = way.flowM3S;
    line.boreM = piece.boreM;
    line.lengthM = piece.lengthM;
    line.roughnessM = piece.roughnessM;
    line.densityKgM3 = way.chain.densityKgM3;
    line.viscosityPaS = way.chain.viscosityPaS;
    const auto straight = lineLoss(line);
    if (!straight)
        return tl::unexpected<Problem>(straight.error());
    PieceLoss loss = flowIn(way, piece.boreM).value();
    loss.frictionFactor = straight->frictionFactor;
    loss.frictionPa = straight->frictionPa;
    loss.frictionLeastPa = straight->frictionPa;
    if (loss.regime == Regime::Uncertain)
        loss.frictionLeastPa *= 64 / loss.reynolds / loss.frictionFactor;
    way.alongM += piece.lengthM;
    return loss;
}

Result<PieceLoss> lossOf(const HoseEnd &piece, Way &way)
{
    const auto coefficient = endCoefficient(piece.form, piece.degrees);
    if (!coefficient)
        return tl::unexpected<Problem>(coefficient.error());
    return minorLoss(way, piece.boreM, coefficient->k);
}

Result<PieceLoss> lossOf(const EntryOrExit &piece, Way &way)
{
    return minorLoss(way, piece.boreM, openingCoefficient(piece.opening).k);
}

Result<PieceLoss> lossOf(const Adapter &piece, Way &way)
{
    if (auto wrong = firstImpossible({{"loss coefficient", piece.k, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return minorLoss(way, piece.boreM, piece.k);
}

Result<PieceLoss> lossOf(const Tee &piece, Way &way)
{
    if (auto wrong = firstImpossible({{"flow", piece.otherM3S, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    const bool diverges = piece.way == TeeWay::Diverging;
    if (diverges && piece.otherM3S > way.flowM3S)
        return problem("tee", "gives more to its other leg than comes in",
                       "Give less to the other leg, or more flow to the line.");
    const double all = diverges ? way.flowM3S : way.flowM3S + piece.otherM3S;
    const double followed = diverges ? all - piece.otherM3S : way.flowM3S;
    const double branch = piece.leg == TeeLeg::Branch ? followed : piece.otherM3S;
    const auto k =
        teeCoefficient({piece.way, piece.leg, all > 0 ? branch / all : 0, piece.branchDegrees});
    if (!k)
        return tl::unexpected<Problem>(k.error());
    way.flowM3S = all;
    auto loss = minorLoss(way, piece.boreM, *k);
    way.flowM3S = diverges ? followed : all;
    return loss;
}

Result<PieceLoss> lossOf(const FilterPiece &piece, Way &way)
{
    const auto filter = cleanLossAt(piece.clean, way.flowM3S, way.chain.viscosityPaS);
    if (!filter)
        return tl::unexpected<Problem>(filter.error());
    PieceLoss loss;
    loss.flowM3S = way.flowM3S;
    loss.filterPa = filter->pascal;
    loss.fromRatedPoint = filter->fromRatedPoint;
    return loss;
}

/// The change of bore before a piece, where there is one.
Result<std::optional<PieceLoss>> boreChangeBefore(const LinePiece &next, const Way &way)
{
    const double bore = boreOf(next);
    if (way.boreM <= 0 || !(bore > 0) || bore == way.boreM)
        return std::nullopt;
    auto loss = minorLoss(way, std::min(way.boreM, bore), boreChangeCoefficient(way.boreM, bore));
    if (!loss)
        return tl::unexpected<Problem>(loss.error());
    loss->boreChange = true;
    return *std::move(loss);
}

/// The bore that the liquid is in behind the piece; 0 in a vessel or a filter.
double boreBehind(const LinePiece &piece)
{
    const auto *opening = std::get_if<EntryOrExit>(&piece.piece);
    return opening != nullptr && opening->opening == Opening::Exit ? 0 : boreOf(piece);
}

double wallPa(const Way &way)
{
    if (way.boreM <= 0)
        return way.totalPa;
    return way.totalPa - way.velocityPressure(way.velocityIn(way.boreM));
}

void pass(Way &way, PieceLoss loss, std::size_t at)
{
    const LinePiece &piece = way.chain.pieces[at];
    loss.piece = at;
    loss.boreAssumed = isAssumed(piece);
    if (!loss.boreChange) {
        loss.levelPa = way.chain.densityKgM3 * StandardGravityMS2 * piece.riseM;
        loss.accelerationPa = way.chain.densityKgM3 * way.chain.accelerationMS2 * piece.forwardM;
    } else if (at > 0) {
        loss.boreAssumed = loss.boreAssumed || isAssumed(way.chain.pieces[at - 1]);
    }
    ChainLoss &found = way.found;
    found.frictionPa += loss.frictionPa;
    found.minorPa += loss.minorPa;
    found.filterPa += loss.filterPa;
    found.levelPa += loss.levelPa;
    found.accelerationPa += loss.accelerationPa;
    found.dropPa += loss.dropPa();
    found.dropLeastPa += loss.dropPa() - loss.frictionPa + loss.frictionLeastPa;
    found.boreAssumed = found.boreAssumed || loss.boreAssumed;
    found.fromRatedPoint = found.fromRatedPoint || loss.fromRatedPoint;
    way.totalPa -= loss.dropPa();
    way.boreM = boreBehind(piece);
    found.along.push_back({way.alongM, way.totalPa, wallPa(way), at});
    found.losses.push_back(loss);
}

tl::unexpected<Problem> atPiece(Problem wrong, std::size_t at)
{
    wrong.thing =
        "piece " + std::to_string(at + 1) + (wrong.thing.empty() ? "" : ", ") + wrong.thing;
    return tl::unexpected<Problem>(std::move(wrong));
}

std::optional<Problem> impossible(const LineChain &chain)
{
    if (chain.pieces.empty())
        return Problem{"line", "has no pieces", "Give at least one piece."};
    return firstImpossible({{"flow", chain.flowM3S, Allowed::NothingOrMore},
                            {"density", chain.densityKgM3},
                            {"viscosity", chain.viscosityPaS},
                            {"acceleration", chain.accelerationMS2, Allowed::AnyNumber},
                            {"pressure", chain.startPa, Allowed::AnyNumber}});
}

} // namespace

Result<ChainLoss> chainLoss(const LineChain &chain)
{
    if (auto wrong = impossible(chain))
        return tl::unexpected<Problem>(*std::move(wrong));
    Way way{chain, {}, chain.flowM3S, 0, 0, chain.startPa};
    way.found.along.push_back({0, chain.startPa, chain.startPa, 0});
    for (std::size_t at = 0; at < chain.pieces.size(); ++at) {
        const LinePiece &piece = chain.pieces[at];
        if (auto wrong = firstImpossible({{"rise", piece.riseM, Allowed::AnyNumber},
                                          {"way forward", piece.forwardM, Allowed::AnyNumber}}))
            return atPiece(*std::move(wrong), at);
        auto change = boreChangeBefore(piece, way);
        if (!change)
            return atPiece(std::move(change.error()), at);
        if (*change)
            pass(way, **std::move(change), at);
        auto loss = std::visit([&way](const auto &each) { return lossOf(each, way); }, piece.piece);
        if (!loss)
            return atPiece(std::move(loss.error()), at);
        pass(way, *std::move(loss), at);
    }
    way.found.endFlowM3S = way.flowM3S;
    if (!std::isfinite(way.found.dropPa))
        return problem("line", "asks for a pressure beyond all numbers",
                       "Look at the units of flow and bores.");
    return std::move(way.found);
}

} // namespace flarestock
