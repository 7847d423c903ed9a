// SPDX-License-Identifier: MIT
//
// Detail: one joint or station of the map taken apart: what lies in it, in the order of the flow,
// where each piece is in the shop, and the other ways to make it.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/standing.h"

namespace flarestock {

struct Detail {
    QString title;    ///< "pump inlet"
    QString subtitle; ///< "ORB -8 female → HOSE PTFE-S -10"
    QString standing; ///< "made for each other; 1 piece to buy"
    QString why;      ///< The sentence of the gravest link, or of the station.
    QString source;
    Standing::Mark mark = Standing::Made;
    bool toBuy = false;
    bool picked = false; ///< The builder has decided on it.
    QString better;      ///< What the program would take now where a pick stands; may be empty.
    QString slot;        ///< Where a pick of it goes.
    std::vector<Row> pieces;
    std::vector<Row> ways; ///< The one in use first.
};

/// form title detail place isShort mark says; form is "port", "link", "piece", "aid", "line" or
/// "gap".
[[nodiscard]] QStringList pieceCells();
/// title detail cost shortOf inUse pick; `pick` is the text that chooses it.
[[nodiscard]] QStringList wayCells();

[[nodiscard]] Detail jointDetail(const WorkedOut &worked, const PlacedJoint &joint);
[[nodiscard]] Detail stationDetail(const WorkedOut &worked, const PlacedStation &station);

/// "2 in C4", "none here", and whether that is less than is wanted.
struct Whereabouts {
    QString text;
    bool isShort = false;
};
[[nodiscard]] Whereabouts whereabouts(const Shelf &shelf, const Part &part, const Decimal &wanted);

} // namespace flarestock
