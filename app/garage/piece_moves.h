// SPDX-License-Identifier: MIT
//
// Piece moves: the movements of a servicing: the old piece out of the car, another in, fresh rings
// for what was opened.

#pragma once

#include "app/garage/at_work.h"

namespace flarestock {

/// The car that is worked on, and when.
struct AtCar {
    const Garage &garage;
    std::string car;
    std::string day;
};

/// Where a piece is and where it goes.
struct PieceMoves {
    std::vector<Movement> movements;
    LotKey piece; ///< What is in from then on; or what went out, as it is called from then on.
    std::int64_t quantity = 1;
    std::string from;                                ///< Place that it was taken from.
    PieceCondition is = PieceCondition::ToBeChecked; ///< What went out is from then on.
};

/// What goes into the car. `length`: of a hose, smallest units. Problem: it is not free there.
[[nodiscard]] Result<PieceMoves> pieceIn(const WorkWords &asked, const Part &part,
                                         std::int64_t length, const AtCar &at);
/// What was in the car before the program, or without it: from the opening, worth nothing; no
/// movement where the ledger has it at the car.
[[nodiscard]] Result<PieceMoves> pieceThere(const WorkWords &asked, const Part &part,
                                            std::int64_t length, const AtCar &at);
/// What goes out of the car. `spent`: it is never free again. `back`: where it goes where nobody
/// has said; empty: to scrap.
struct Leaving {
    const FittedPiece *piece = nullptr;
    bool spent = false;
    std::string back;
};
[[nodiscard]] Result<PieceMoves> pieceOut(const WorkWords &asked, const Leaving &leaving,
                                          const AtCar &at);

/// Fresh rings for joints of a build, together never more than is free.
struct FreshRings {
    std::vector<Movement> movements;
    std::vector<Renewed> rings;
};
[[nodiscard]] Result<FreshRings> freshRings(const std::string &build,
                                            const std::vector<std::string> &joints,
                                            const Garage &garage, const By &by);

} // namespace flarestock
