// SPDX-License-Identifier: MIT
//
// Car life: the fold of what builds put into a car, how far it ran and what was done to its pieces:
// what is at each position now, since when, and how far it ran since it was fitted, washed and
// looked at.
//
// Things follow each other by their day; of one day first what builds put in, then what was written
// down in its order. So of two copies of a shop that were brought together the same comes out.
//
//   auto lives = carLives({seats, records});
//   lives->at("car-2").at("coupe-fuel/filters/prefilter.element")->sinceWorked.runs;

#pragma once

#include "model/servicing/outing.h"
#include "model/servicing/serviced.h"

#include <map>
#include <set>

namespace flarestock {

/// What a build put where, as its movements say.
struct SeatedPiece {
    std::string car;
    std::string position;
    std::string build;
    LotKey piece;
    std::int64_t quantity = 1; ///< Smallest units: one, or a hose's length.
    std::string day;           ///< When it was issued.
    std::string made;          ///< Where it is known.
    std::string useBy;         ///< The same.
    bool inside = false;       ///< It came inside another piece: an element in its filter.
};

/// How far something ran.
struct Use {
    std::int64_t runs = 0;
    Decimal hours;
    std::set<std::string> events; ///< At which it ran.

    void add(const Outing &outing);
    [[nodiscard]] std::int64_t eventCount() const noexcept
    {
        return static_cast<std::int64_t>(events.size());
    }
};

struct FittedPiece {
    std::string position;
    std::string build;
    LotKey piece;
    std::int64_t quantity = 1;
    std::string since;  ///< The day it was fitted.
    std::string worked; ///< The day it was washed last; as `since` where it never was.
    std::string seen;   ///< The day it was looked at last: also washed, or fitted.
    Use sinceFitted;
    Use sinceWorked;
    Use sinceSeen;
    Use life; ///< Of the piece by its lot or serial, wherever it was; else as sinceFitted.
    std::int64_t washed = 0;
    std::string made;
    std::string useBy;
    bool inside = false; ///< It came inside another piece, so that no movement brought it.
    bool damaged = false;
    std::string note; ///< Of what was done last.
};

/// A piece that was in the car and went out.
struct PieceOut {
    LotKey piece;
    std::string position;
    std::string day;
    PieceCondition is = PieceCondition::ToBeChecked;
    std::int64_t washed = 0;
    Use life;
    std::string note;
};

struct CarLife {
    std::string car;
    std::vector<FittedPiece> fitted; ///< By position.
    std::vector<PieceOut> out;   ///< The last first; a piece that is in again is not among them.
    std::vector<Outing> outings; ///< By day.
    std::vector<Serviced> done;  ///< By day.

    /// nullptr where nothing is there.
    [[nodiscard]] const FittedPiece *at(std::string_view position) const noexcept;
    [[nodiscard]] Use use() const; ///< Of all outings.
};
using CarLives = std::map<std::string, CarLife, std::less<>>; ///< By car.

struct LifeTold {
    std::vector<SeatedPiece> seats;
    std::vector<Record> records; ///< Those that stand (standingOf()).
};
/// Of all cars at once, because a piece with a serial may go from one to the other. Problem: a
/// record that is not what its kind says.
[[nodiscard]] Result<CarLives> carLives(const LifeTold &told);

} // namespace flarestock
