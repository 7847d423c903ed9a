// SPDX-License-Identifier: MIT
//
// Car papers: the service card and the inspection sheet of a car, as PDF.

#pragma once

#include "app/command/shop_options.h"
#include "app/garage/due_list.h"

namespace flarestock {

enum class CarPaperKind : std::uint8_t {
    Card,  ///< For the bench: what is due, why, what it takes, a box to tick; the cautions.
    Sheet, ///< For the scrutineer: each fluid part with its lot, since when and until when it is
           ///< in.
};

struct CarPaperAsked {
    std::string car;
    std::string pdf; ///< Empty: only told.
    std::string size = "A4";
    std::string event;
};

/// Writes the paper, or tells what would stand on it; what is wrong is refused.
void answerCarPaper(CarPaperKind kind, const CarPaperAsked &asked, OpenShop &shop);

} // namespace flarestock
