// SPDX-License-Identifier: MIT
//
// Whole line: a line as the pieces that the liquid passes one after another, each with its own
// bore, and what pressure each of them takes. lineLoss() is what happens in one straight piece.
//
//   WholeLine line;
//   line.flowM3S = 255e-3 / 3600;
//   line.densityKgM3 = 745;
//   line.viscosityPaS = 0.41e-3;
//   line.pieces = {{EntryOrExit{0.010, Opening::SharpEntrance}},
//                  {HoseEnd{0.0075, EndForm::Swept, 90}},
//                  {StraightLine{0.00871, 3, 1.5e-6}, 0.4},
//                  {FilterPiece{filter}}};
//   wholeLineLoss(line)->dropPa;
//
// Where two pieces of different bore follow each other, the sudden change between them is counted
// by itself. A tee changes the flow of what comes after it. Losses are of total pressure; the
// pressure that a gauge in the wall shows is lower by ρv²/2, and both are given along the line.

#pragma once

#include "model/fluids/filter/clean_loss.h"
#include "model/fluids/line/loss_coefficient.h"
#include "model/fluids/line/tee.h"
#include "model/fluids/line_flow.h"

#include <variant>

namespace flarestock {

struct StraightLine { ///< Hose or tube, bends of it apart.
    double boreM = 0;
    double lengthM = 0;
    double roughnessM = 0;    ///< As in LineFlow.
    bool boreAssumed = false; ///< Out of the dash size, not measured: carried into every answer.
};

struct HoseEnd {
    double boreM = 0; ///< Its own, narrower than the hose's.
    EndForm form = EndForm::Swept;
    double degrees = 0;
    bool boreAssumed = false;
};

struct EntryOrExit { ///< Where the line leaves or reaches a vessel.
    double boreM = 0;
    Opening opening = Opening::SharpEntrance;
    bool boreAssumed = false;
};

struct Adapter { ///< Short: only its change of bore counts, and k where its maker says one.
    double boreM = 0;
    double k = 0; ///< 0 or more, on the velocity in its bore.
    bool boreAssumed = false;
};

struct Tee {
    double boreM = 0; ///< Of all three legs.
    TeeWay way = TeeWay::Diverging;
    TeeLeg leg = TeeLeg::Run; ///< Which one the line comes by (converging) or goes on by.
    double otherM3S = 0;      ///< Flow through the leg that the line does not follow; 0 or more.
    double branchDegrees = 90;
    bool boreAssumed = false;
};

struct FilterPiece { ///< All between its ports is in its curve.
    CleanLoss clean;
};

struct LinePiece {
    std::variant<StraightLine, HoseEnd, EntryOrExit, Adapter, Tee, FilterPiece> piece;
    double riseM = 0;    ///< Its end above its beginning; negative where it falls.
    double forwardM = 0; ///< Its end before its beginning, towards the car's nose; may be negative.
};

struct WholeLine {
    std::vector<LinePiece> pieces; ///< In the sense of flow; one at least.
    double flowM3S = 0;            ///< Into the first piece; 0 or more.
    double densityKgM3 = 0;        ///< Above 0.
    double viscosityPaS = 0;       ///< Above 0.
    double accelerationMS2 = 0;    ///< Of the car, forwards; braking is negative.
    double startPa = 0;            ///< Total pressure before the first piece, for the picture.
};

struct PieceLoss {
    std::size_t piece = 0;   ///< Which of the line's.
    bool boreChange = false; ///< The sudden change of bore before that piece, not itself.
    bool boreAssumed = false;
    bool fromRatedPoint = false; ///< A filter of which one point is known.
    double flowM3S = 0;
    double boreM = 0; ///< In which the velocity is; 0 for a filter, and so are the next four.
    double velocityMS = 0;
    double reynolds = 0;
    Regime regime = Regime::Laminar;
    double frictionFactor = 0;
    double frictionPa = 0;
    double frictionLeastPa = 0; ///< As laminar where the regime is uncertain; else frictionPa.
    double minorPa = 0;         ///< Below nothing in a tee whose run drags its branch along.
    double filterPa = 0;
    double levelPa = 0;        ///< ρ g × rise
    double accelerationPa = 0; ///< ρ a × forward
    [[nodiscard]] double dropPa() const noexcept
    {
        return frictionPa + minorPa + filterPa + levelPa + accelerationPa;
    }
};

struct LinePoint {
    double alongM = 0; ///< Length of straight line up to here.
    double totalPa = 0;
    double wallPa = 0;     ///< Total less ρv²/2.
    std::size_t piece = 0; ///< At the end of which piece; 0 also for the beginning.
};

struct WholeLineLoss {
    std::vector<PieceLoss> losses; ///< In the sense of flow.
    std::vector<LinePoint> along;  ///< The beginning, then the end of every loss.
    double frictionPa = 0;
    double minorPa = 0;
    double filterPa = 0;
    double levelPa = 0;
    double accelerationPa = 0;
    double dropPa = 0;           ///< All of them: what the flow takes from beginning to end.
    double dropLeastPa = 0;      ///< With the uncertain pieces as laminar.
    double endFlowM3S = 0;       ///< Out of the last piece.
    bool boreAssumed = false;    ///< Some bore is.
    bool fromRatedPoint = false; ///< Some filter's loss is.
};

/// Darcy-Weisbach with Colebrook-White for friction (line_flow.h), the coefficients of
/// loss_coefficient.h and tee.h, the filter's own figures (clean_loss.h), ρ g h and ρ a x.
/// Problem: no pieces, a figure outside the range named at its field, more flow out of a tee than
/// into it, or a filter asked beyond its curve. Its thing begins with "piece 3", counted from 1.
[[nodiscard]] Result<WholeLineLoss> wholeLineLoss(const WholeLine &line);

} // namespace flarestock
