// SPDX-License-Identifier: MIT

#include "model/fluids/line/whole_line.h"

#include "model/fluids/bounds.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <utility>

namespace flarestock {

namespace {

/// The liquid on its passage through the line.
struct Passage {
    const WholeLine &line;
    WholeLineLoss found;
    double flowM3S = 0;
    double boreM = 0; ///< Of the piece before; 0 at the beginning, in a vessel and after a filter.
    double alongM = 0;
    double totalPa = 0;
    double uncertainPa = 0; ///< What is less where the uncertain pieces are laminar.

    [[nodiscard]] double velocityIn(double bore) const
    {
        return flowM3S / (std::numbers::pi / 4 * bore * bore);
    }
    [[nodiscard]] double velocityPressure(double velocityMS) const
    {
        return line.densityKgM3 * velocityMS * velocityMS / 2;
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

/// What flows in that bore, along no length yet.
LineFlow flowIn(const Passage &passage, double boreM)
{
    LineFlow line;
    line.flowM3S = passage.flowM3S;
    line.boreM = boreM;
    line.densityKgM3 = passage.line.densityKgM3;
    line.viscosityPaS = passage.line.viscosityPaS;
    return line;
}

/// How it flows there, without any loss yet.
PieceLoss withoutLoss(const LineFlow &line, const LineLoss &loss)
{
    PieceLoss piece;
    piece.flowM3S = line.flowM3S;
    piece.boreM = line.boreM;
    piece.velocityMS = loss.velocityMS;
    piece.reynolds = loss.reynolds;
    piece.regime = loss.regime;
    return piece;
}

/// The piece with a coefficient on the velocity in its bore.
Result<PieceLoss> minorLoss(const Passage &passage, double boreM, double k)
{
    const LineFlow line = flowIn(passage, boreM);
    const auto flowing = lineLoss(line);
    if (!flowing)
        return tl::unexpected<Problem>(flowing.error());
    PieceLoss loss = withoutLoss(line, *flowing);
    loss.minorPa = k * passage.velocityPressure(loss.velocityMS);
    return loss;
}

Result<PieceLoss> lossOf(const StraightLine &piece, Passage &passage)
{
    LineFlow line = flowIn(passage, piece.boreM);
    line.lengthM = piece.lengthM;
    line.roughnessM = piece.roughnessM;
    const auto straight = lineLoss(line);
    if (!straight)
        return tl::unexpected<Problem>(straight.error());
    PieceLoss loss = withoutLoss(line, *straight);
    loss.frictionFactor = straight->frictionFactor;
    loss.frictionPa = straight->frictionPa;
    loss.frictionLeastPa = straight->frictionPa;
    if (loss.regime == Regime::Uncertain)
        loss.frictionLeastPa *= 64 / loss.reynolds / loss.frictionFactor;
    passage.alongM += piece.lengthM;
    return loss;
}

Result<PieceLoss> lossOf(const HoseEnd &piece, Passage &passage)
{
    const auto coefficient = endCoefficient(piece.form, piece.degrees);
    if (!coefficient)
        return tl::unexpected<Problem>(coefficient.error());
    return minorLoss(passage, piece.boreM, coefficient->k);
}

Result<PieceLoss> lossOf(const EntryOrExit &piece, Passage &passage)
{
    return minorLoss(passage, piece.boreM, openingCoefficient(piece.opening).k);
}

Result<PieceLoss> lossOf(const Adapter &piece, Passage &passage)
{
    if (auto wrong = firstImpossible({{"loss coefficient", piece.k, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    return minorLoss(passage, piece.boreM, piece.k);
}

Result<PieceLoss> lossOf(const Tee &piece, Passage &passage)
{
    if (auto wrong = firstImpossible({{"flow", piece.otherM3S, Allowed::NothingOrMore}}))
        return tl::unexpected<Problem>(*std::move(wrong));
    const bool diverges = piece.way == TeeWay::Diverging;
    if (diverges && piece.otherM3S > passage.flowM3S)
        return problem("tee", "gives more to its other leg than comes in",
                       "Give less to the other leg, or more flow to the line.");
    const double all = diverges ? passage.flowM3S : passage.flowM3S + piece.otherM3S;
    const double followed = diverges ? all - piece.otherM3S : passage.flowM3S;
    const double branch = piece.leg == TeeLeg::Branch ? followed : piece.otherM3S;
    const auto k =
        teeCoefficient({piece.way, piece.leg, all > 0 ? branch / all : 0, piece.branchDegrees});
    if (!k)
        return tl::unexpected<Problem>(k.error());
    passage.flowM3S = all;
    auto loss = minorLoss(passage, piece.boreM, *k);
    passage.flowM3S = diverges ? followed : all;
    return loss;
}

Result<PieceLoss> lossOf(const FilterPiece &piece, Passage &passage)
{
    const auto filter = cleanLossAt(piece.clean, passage.flowM3S, passage.line.viscosityPaS);
    if (!filter)
        return tl::unexpected<Problem>(filter.error());
    PieceLoss loss;
    loss.flowM3S = passage.flowM3S;
    loss.filterPa = filter->pascal;
    loss.fromRatedPoint = filter->fromRatedPoint;
    return loss;
}

/// The change of bore before a piece, where there is one.
Result<std::optional<PieceLoss>> boreChangeBefore(const LinePiece &next, const Passage &passage)
{
    const double bore = boreOf(next);
    if (passage.boreM <= 0 || !(bore > 0) || bore == passage.boreM)
        return std::nullopt;
    auto loss = minorLoss(passage, std::min(passage.boreM, bore),
                          boreChangeCoefficient(passage.boreM, bore));
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

double wallPa(const Passage &passage)
{
    if (passage.boreM <= 0)
        return passage.totalPa;
    return passage.totalPa - passage.velocityPressure(passage.velocityIn(passage.boreM));
}

void pass(Passage &passage, PieceLoss loss, std::size_t at)
{
    const LinePiece &piece = passage.line.pieces[at];
    loss.piece = at;
    loss.boreAssumed = isAssumed(piece);
    if (!loss.boreChange) {
        loss.levelPa = passage.line.densityKgM3 * StandardGravityMS2 * piece.riseM;
        loss.accelerationPa =
            passage.line.densityKgM3 * passage.line.accelerationMS2 * piece.forwardM;
    } else if (at > 0) {
        loss.boreAssumed = loss.boreAssumed || isAssumed(passage.line.pieces[at - 1]);
    }
    WholeLineLoss &found = passage.found;
    found.frictionPa += loss.frictionPa;
    found.minorPa += loss.minorPa;
    found.filterPa += loss.filterPa;
    found.levelPa += loss.levelPa;
    found.accelerationPa += loss.accelerationPa;
    found.dropPa += loss.dropPa();
    passage.uncertainPa += loss.frictionPa - loss.frictionLeastPa;
    found.dropLeastPa = found.dropPa - passage.uncertainPa;
    found.boreAssumed = found.boreAssumed || loss.boreAssumed;
    found.fromRatedPoint = found.fromRatedPoint || loss.fromRatedPoint;
    passage.totalPa -= loss.dropPa();
    passage.boreM = boreBehind(piece);
    found.along.push_back({passage.alongM, passage.totalPa, wallPa(passage), at});
    found.losses.push_back(loss);
}

tl::unexpected<Problem> atPiece(Problem wrong, std::size_t at)
{
    wrong.thing =
        "piece " + std::to_string(at + 1) + (wrong.thing.empty() ? "" : ", ") + wrong.thing;
    return tl::unexpected<Problem>(std::move(wrong));
}

std::optional<Problem> impossible(const WholeLine &line)
{
    if (line.pieces.empty())
        return Problem{"line", "has no pieces", "Give at least one piece."};
    return firstImpossible({{"flow", line.flowM3S, Allowed::NothingOrMore},
                            {"density", line.densityKgM3},
                            {"viscosity", line.viscosityPaS},
                            {"acceleration", line.accelerationMS2, Allowed::AnyNumber},
                            {"pressure", line.startPa, Allowed::AnyNumber}});
}

} // namespace

Result<WholeLineLoss> wholeLineLoss(const WholeLine &line)
{
    if (auto wrong = impossible(line))
        return tl::unexpected<Problem>(*std::move(wrong));
    Passage passage{line, {}, line.flowM3S, 0, 0, line.startPa, 0};
    passage.found.along.push_back({0, line.startPa, line.startPa, 0});
    for (std::size_t at = 0; at < line.pieces.size(); ++at) {
        const LinePiece &piece = line.pieces[at];
        if (auto wrong = firstImpossible({{"rise", piece.riseM, Allowed::AnyNumber},
                                          {"way forward", piece.forwardM, Allowed::AnyNumber}}))
            return atPiece(*std::move(wrong), at);
        auto change = boreChangeBefore(piece, passage);
        if (!change)
            return atPiece(std::move(change.error()), at);
        if (*change)
            pass(passage, **std::move(change), at);
        auto loss =
            std::visit([&passage](const auto &each) { return lossOf(each, passage); }, piece.piece);
        if (!loss)
            return atPiece(std::move(loss.error()), at);
        pass(passage, *std::move(loss), at);
    }
    passage.found.endFlowM3S = passage.flowM3S;
    if (!std::isfinite(passage.found.dropPa))
        return problem("line", "asks for a pressure beyond all numbers",
                       "Look at the units of flow and bores.");
    return std::move(passage.found);
}

} // namespace flarestock
