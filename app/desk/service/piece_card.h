// SPDX-License-Identifier: MIT
//
// Piece card: what the panel of one position says, as rows in groups: what is to be done and what
// that takes, how far it ran, what was done to it, and what is looked out for before its system is
// opened.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/service/piece_words.h"

namespace flarestock {

struct PieceAsked {
    const GarageBook &book;
    const CarPosition &at;
    Units units = Units::Metric;
};

/// The rows are cardCells() of a part's card; nothing of them is taken back.
[[nodiscard]] std::vector<Row> pieceRows(const PieceAsked &asked);
/// "since Sat 12 Sep 2026, from lot L-2207"; of an empty position that nothing is there.
[[nodiscard]] QString saidPieceAbout(const PieceAsked &asked);
/// Before a system is opened, line by line.
[[nodiscard]] QStringList openingCautions();

} // namespace flarestock
