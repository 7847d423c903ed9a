// SPDX-License-Identifier: MIT
//
// Made hose: a line that was made up: a hose with an end at each of its ends, as one piece of stock
// under a tag of its own. The tag is its part number in the journal, so that its value stays its
// own; what it is made of stands here.

#pragma once

#include "model/journal/record.h"

namespace flarestock {

struct MadeHose {
    MovementId id;
    std::string tag;
    std::string hose;     ///< Part number.
    std::string hoseLot;  ///< The piece that it was cut from.
    std::string startEnd; ///< Part numbers of the hose ends.
    std::string farEnd;
    std::int64_t cut = 0;   ///< Of hose; smallest units (125 nm).
    std::int64_t seats = 0; ///< From seat to seat; the same.
    std::string clocking;   ///< From the one end to the other: "90 deg"; empty where it is free.
    std::string pressure;   ///< Of its proof test: "2000 psi"; empty where none was made.
    std::string medium;
    bool passed = false;
    std::string testedBy;
    std::string madeOn; ///< "2026-11-28"
    std::string useBy;  ///< Empty where it does not age.
    std::string who;
    std::string action; ///< The id of the movement that it was made by.
    std::int64_t at = 0;

    [[nodiscard]] bool isTested() const noexcept { return !pressure.empty(); }
    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<MadeHose> read(const Record &record); ///< Problem: not one.
};

} // namespace flarestock
