// SPDX-License-Identifier: MIT
//
// Car paper: the service card and the inspection sheet of a car, in words that are ready to be
// printed.

#pragma once

#include "app/buyer/papers/paper_words.h"
#include "app/garage/garage.h"

namespace flarestock {

enum class CarPaperKind : std::uint8_t {
    Card,  ///< For the bench: what is due, why, what it takes, a box to tick; the cautions.
    Sheet, ///< For the scrutineer: each fluid part with its lot, since when and until when it is
           ///< in.
};

struct CarPaperAsked {
    std::string car;
    std::string pdf; ///< The file to write; empty: it is only told.
    std::string size = "A4";
    std::string event;
    Speaking speech = plainSpeech();
};

struct CarPaperFrom {
    const Garage &garage;
    const ShopFile &file; ///< Its letterhead.
    std::string today;
};

/// Problem: no such car, event or size; nothing is known of the car; a letterhead that does not
/// read.
[[nodiscard]] Result<PaperWords> carPaper(CarPaperKind kind, const CarPaperAsked &asked,
                                          const CarPaperFrom &from);
/// As PDF, the whole file or nothing. Problem: as printed(), or it cannot be written.
[[nodiscard]] Result<void> writeCarPaper(const std::string &file, const PaperWords &paper);

} // namespace flarestock
