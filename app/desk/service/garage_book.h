// SPDX-License-Identifier: MIT
//
// Garage book: the cars of a shop with what is in them and what of it is due, made once from a
// snapshot and the shop's file, away from the window; what the area of service shows.

#pragma once

#include "app/garage/due_list.h"

namespace flarestock {

/// A position of a car.
struct CarPosition {
    std::string car;
    std::string position;
    friend bool operator==(const CarPosition &, const CarPosition &) = default;
};

/// What a piece that is out of the car is called among its positions.
[[nodiscard]] std::string outPosition(const PieceOut &out);

struct GarageBook {
    std::shared_ptr<const Workshop> workshop;
    Garage garage;
    std::string today;
    std::vector<std::string> along; ///< Its places, where the shop is a copy that travels.
    std::vector<std::string> cars;  ///< In the order of the shop's places.
    std::vector<DueLine> works;     ///< All that counts for any piece, what is worst first.

    /// Problem: as Garage::of().
    [[nodiscard]] static Result<std::shared_ptr<const GarageBook>>
    of(const std::shared_ptr<const Workshop> &workshop, const ShopFile &file,
       const std::string &today);

    /// nullptr where nothing is there.
    [[nodiscard]] const FittedPiece *piece(const CarPosition &at) const;
    /// What went out of a car and lies in stock to be checked; each piece once, the last first.
    [[nodiscard]] std::vector<const PieceOut *> outOf(const std::string &car) const;
    /// Whether it is known from others by its lot, serial or tag.
    [[nodiscard]] bool isToldApart(const PieceOut &out, const std::string &car) const;
    /// The one that a position of outPosition() names; nullptr where none.
    [[nodiscard]] const PieceOut *out(const CarPosition &at) const;
    /// What counts for a piece, what is worst first.
    [[nodiscard]] std::vector<const DueLine *> worksOf(const FittedPiece &piece) const;
    [[nodiscard]] const Place *car(const std::string &id) const; ///< nullptr: none of ours.
    /// The positions of a car in its lines, in flow order, then those of the shop's own; also such
    /// where nothing is. `rings`: also rings and washers of which nothing else is known.
    [[nodiscard]] std::vector<std::string> positionsOf(const std::string &car, bool rings) const;
    [[nodiscard]] const BuildPlan *buildOf(const std::string &position) const;
    /// "fuel", "brakes"; empty of a position of the shop's own.
    [[nodiscard]] std::string systemOf(const std::string &position) const;
    /// The position as people say it, also where nothing is.
    [[nodiscard]] std::string saidPosition(const CarPosition &at) const;

private:
    std::map<const FittedPiece *, std::vector<std::size_t>> m_worksOf;
};

} // namespace flarestock
