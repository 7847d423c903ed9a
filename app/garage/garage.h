// SPDX-License-Identifier: MIT
//
// Garage: the cars of a shop with what is in them, as builds put it there and hands serviced it;
// the shop's intervals; the season's events. Read once for a command.
//
//   const auto garage = Garage::of(*workshop, file);
//   garage->life("car-2").at(position);

#pragma once

#include "app/garage/seats.h"
#include "model/servicing/due.h"

namespace flarestock {

struct Garage {
    const Workshop *workshop = nullptr;
    CarLives lives;
    std::map<std::string, PositionWords, std::less<>> words; ///< By position.
    Intervals intervals;
    bool ownIntervals = false;     ///< The shop's; else the usual ones.
    std::set<std::string> decided; ///< Servicings, as decidedWhenBrought().

    /// Problem: a build that cannot be worked out; a document or record that does not read.
    [[nodiscard]] static Result<Garage> of(const Workshop &workshop, const ShopFile &file);
    /// Of a car of which nothing is known an empty one.
    [[nodiscard]] const CarLife &life(std::string_view car) const;
    [[nodiscard]] PieceKind kindOf(const FittedPiece &piece) const;
    [[nodiscard]] std::vector<const Interval *> intervalsOf(const FittedPiece &piece,
                                                            std::string_view car) const;
    /// Of a piece that cannot be opened what protects it: the element of the filter before it, or
    /// that filter; nullptr of what can be opened, or where no filter stands before it.
    [[nodiscard]] const FittedPiece *protecting(const FittedPiece &piece,
                                                const CarLife &life) const;
    /// "pre-filter, element"; of the shop's own positions their name.
    [[nodiscard]] std::string said(const FittedPiece &piece) const;
    /// Of those that end on that day or later, the events that a car is at.
    [[nodiscard]] std::vector<ComingEvent> eventsOf(std::string_view car,
                                                    std::string_view today) const;
};

/// "EC-100-S", "EP-460 SN 4417".
[[nodiscard]] std::string pieceText(const LotKey &piece);
/// "in", "spent".
[[nodiscard]] std::string stateOf(const FittedPiece &piece, const Garage &garage,
                                  const std::string &car);
/// A ring or washer of which nothing is known but where it is.
[[nodiscard]] bool isPlainRing(const FittedPiece &piece);

/// A car, as it is named. Problem: no such place, or it is no car.
[[nodiscard]] Result<const Place *> carAsked(const std::string &typed, const Ledger &ledger);
/// A position of a car: whole, by its end, as it is said, or by the part that only one has.
/// Problem: none, or several.
[[nodiscard]] Result<const FittedPiece *> positionAsked(const std::string &typed,
                                                        const Garage &garage, const CarLife &life);

} // namespace flarestock
