// SPDX-License-Identifier: MIT
//
// Detail: one joint, station or run of the map taken apart: what lies in it, in the order of the
// flow, where each piece is in the shop, and what else could be there.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/standing.h"
#include "app/desk/words/units.h"

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
    QString better;     ///< What would now be taken where a pick stands, and what it would take …
    QString betterPick; ///< … and the text that picks it; both empty where there is nothing.
    QString slot;       ///< Where a pick of it goes.
    QString waysTitle;  ///< What its ways are: "ways to make it".
    std::vector<Row> pieces;
    std::vector<Row> ways; ///< The one in use first.
};

/// form title detail place isShort mark says; form is "port", "link", "piece", "aid", "line" or
/// "gap".
[[nodiscard]] QStringList pieceCells();
/// title detail cost shortOf inUse pick; `pick` is the text that chooses it.
[[nodiscard]] QStringList wayCells();

[[nodiscard]] Detail jointDetail(const WorkedOut &worked, const PlacedJoint &joint, Units units);
[[nodiscard]] Detail stationDetail(const WorkedOut &worked, const PlacedStation &station,
                                   Units units);
/// The run has a length; one without is the joint of its two ports.
[[nodiscard]] Detail runDetail(const WorkedOut &worked, const PlacedRun &run, Units units);

/// "2 in C4, 1 in the car", "none here", and whether that is less than is wanted.
struct Whereabouts {
    QString text;
    bool isShort = false;
};
[[nodiscard]] Whereabouts whereabouts(const Shelf &shelf, const Part &part, const Decimal &wanted,
                                      Units units);

/// What so much of a part costs: as carried where some is here, else by the best offer; "no price".
[[nodiscard]] QString saidPrice(const WorkedOut &worked, const Part &part, const Decimal &wanted);
/// "cell"; the id where the station has no title.
[[nodiscard]] QString titleOf(const WorkedOut &worked, const std::string &station);

} // namespace flarestock
