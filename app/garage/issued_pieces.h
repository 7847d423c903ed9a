// SPDX-License-Identifier: MIT
//
// Issued pieces: what a build's car has got for it and still has, piece by piece, in the order of
// its coming; each is taken once, for one seat.

#pragma once

#include "app/workshop/workshop.h"

namespace flarestock {

struct IssuedPiece {
    LotKey name;
    std::int64_t quantity = 1; ///< Smallest units.
    std::string day;           ///< When it came to the car.
};

class IssuedPieces {
public:
    /// `moved`: the movements of the build that stand.
    IssuedPieces(const BuildPlan &plan, const Workshop &workshop,
                 const std::vector<Movement> &moved);
    /// Of a planned part, or of what the build has instead of it; nothing where none is left. Of
    /// more than one that are of several lots the first is named.
    [[nodiscard]] std::optional<IssuedPiece> take(const Part &planned, std::int64_t count);
    /// A length of hose: the one of that length, else the first; else a made-up hose of it.
    [[nodiscard]] std::optional<IssuedPiece> takeLine(const Part &hose, std::int64_t length);

private:
    void came(const Movement &movement);
    void went(const Movement &movement);
    [[nodiscard]] std::optional<IssuedPiece> takeOf(std::string_view part, std::int64_t count);

    const BuildPlan &m_plan;
    const Workshop &m_workshop;
    std::vector<IssuedPiece> m_pieces;
};

} // namespace flarestock
