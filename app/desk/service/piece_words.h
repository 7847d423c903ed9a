// SPDX-License-Identifier: MIT
//
// Piece words: what is said of a piece in a car: which it is, how far it ran, what is to be done to
// it and by when, and the mark that says the same by its shape.

#pragma once

#include "app/desk/service/garage_book.h"
#include "app/desk/words/standing.h"
#include "app/desk/words/units.h"

#include <QString>

namespace flarestock {

[[nodiscard]] QString saidPiece(const LotKey &piece); ///< "EC-100-S", "EP-460, SN 4417"
/// The same, of a hose with its length.
[[nodiscard]] QString saidPiece(const FittedPiece &piece, const Workshop &workshop, Units units);
[[nodiscard]] QString saidUse(const Use &use); ///< "12 runs, 0.9 h, 2 events"
[[nodiscard]] QString saidTodo(Work work);     ///< "wash", "replace" …: what is to be done.
[[nodiscard]] QString saidWorkDone(Work work); ///< "washed", "replaced" …
[[nodiscard]] QString saidWash(const FittedPiece &piece, const GarageBook &book,
                               const std::string &car); ///< "2 of 10"; empty where it never was.
/// The title of an event of the season, or the name that it was given.
[[nodiscard]] QString saidEvent(const std::string &event, const Workshop &workshop);
[[nodiscard]] QString saidSystem(const std::string &system); ///< "fuel"

/// How some work stands: "wash before Winter sprint, Sat 19 Dec 2026", "fine until …".
[[nodiscard]] QString saidStanding(const DueLine &line, const GarageBook &book);
/// "3 events since washed, every 1; may be used until Sat 12 Dec 2026"
[[nodiscard]] QString saidReasons(const DueWork &work);
/// How much of its interval is used up: 1 where it is reached.
[[nodiscard]] double shareUsed(const DueLine &line, const std::string &today);

/// How a piece stands: the disc with a tick is fine, the ring round a dot soon, the triangle due
/// before an event, the square with a cross due now or over, the halves that do not meet spent, the
/// broken circle: nothing is there.
struct PieceStanding {
    Standing::Mark mark = Standing::Made;
    QString words;
    double share = -1; ///< Below zero: no interval counts for it.
};
[[nodiscard]] PieceStanding standingOf(const FittedPiece *piece, const GarageBook &book,
                                       const std::string &car);
/// The same of a position, also of a piece that is out of the car: the page.
[[nodiscard]] PieceStanding standingAt(const CarPosition &at, const GarageBook &book);
[[nodiscard]] Standing::Mark markOf(DueStanding standing);

} // namespace flarestock
