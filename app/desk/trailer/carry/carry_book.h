// SPDX-License-Identifier: MIT
//
// Carry book: how many spares of each part are to be carried for events to come, beside what the
// drawers hold of them. It is made away from the window by the same functions as the command's.

#pragma once

#include "app/trailer/carried_kit.h"

namespace flarestock {

/// For which events: all until what is ordered now can be here, or some that were chosen.
struct Occasion {
    std::vector<const Event *> events; ///< Empty: until what is ordered now can be here.
    bool isOnly = false;               ///< One event by itself, not the next ones up to it.
};
/// Until delivery; the next one, the next two …; then each later one by itself.
[[nodiscard]] std::vector<Occasion> occasionsOf(const Season &season, std::string_view today);

struct SparePart {
    std::string number;
    const Part *part = nullptr;
    std::optional<PartCarry> carry; ///< Nothing where it cannot be reckoned.
    std::string why;                ///< Then: why not.
    std::int64_t there = 0;         ///< Free and good in the drawers on the last day of it.

    [[nodiscard]] std::int64_t lacks(std::int64_t wanted) const
    {
        return std::max<std::int64_t>(0, wanted - there);
    }
};

struct CarryBook {
    std::shared_ptr<const Workshop> workshop; ///< Into which the rest points.
    std::shared_ptr<const SpareBook> spares;
    CarryWanted wanted;
    std::vector<SparePart> parts;  ///< Those of spares.csv, then those that were asked for.
    std::optional<CarriedKit> kit; ///< Where it was asked for.
    std::string noKit;             ///< Why there is none, where it was asked for.

    struct Asked {
        CarryWanted wanted;
        std::vector<std::string> parts; ///< Besides those of spares.csv; numbers of the shop's.
        bool together = false;
    };
    [[nodiscard]] static std::shared_ptr<const CarryBook>
    of(const std::shared_ptr<const Workshop> &workshop,
       const std::shared_ptr<const SpareBook> &spares, const Asked &asked);
    [[nodiscard]] const SparePart *find(std::string_view number) const;
    /// So many of it: of the kit where there is one; nothing where it cannot be reckoned.
    [[nodiscard]] std::optional<std::int64_t> carried(const SparePart &part) const;
};

} // namespace flarestock
