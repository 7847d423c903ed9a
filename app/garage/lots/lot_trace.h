// SPDX-License-Identifier: MIT
//
// Lot trace: where a lot, a serial or all of a part came from and went: through boxes that were
// opened, hoses that were made up of it, names that were changed; which cars and builds carry it or
// carried it, what lies where now, and what to do about it.
//
// Pieces that went on without a lot are told where they went, and not followed: nobody can tell
// them from others.

#pragma once

#include "app/garage/garage.h"

namespace flarestock {

/// It came into the shop.
struct CameIn {
    Movement movement;
    bool opening = false; ///< It was there on the first day.
};

/// So much of it lies somewhere now.
struct LiesNow {
    BalanceKey key;
    std::int64_t quantity = 0;
    const Place *place = nullptr;
    std::string position; ///< In a car, where it is known.
};

struct CarriedBy {
    std::string car;
    bool has = false;                ///< Now.
    std::set<std::string> positions; ///< Where it is now, as far as that is known.
    std::set<std::string> builds;    ///< For which it went there.
};

/// What to do if it is bad.
struct TraceAct {
    std::string todo; ///< "stop using", "inspect", "set aside", "ask back"
    LiesNow lies;
    std::string system; ///< Of the build that it is in: "brakes", "fuel"; empty else.
    std::string event;  ///< The next event of the car.
    std::string by;     ///< Its first day.
    std::string free;   ///< What could go in instead: "2 free"; empty where nothing could.
};

struct LotTrace {
    std::set<LotKey> pieces;  ///< All names that it goes by, and all that was made of it.
    std::set<LotKey> sources; ///< What they were made of or taken out of; not asked about.
    std::set<LotKey> unnamed; ///< Parts among those without a lot, where some of it went.
    std::vector<CameIn> cameIn;
    std::vector<LiesNow> now;
    std::vector<CarriedBy> cars;
    std::set<std::string> hoses; ///< Tags of hoses that were made up of it.
    std::vector<TraceAct> acts;
};

/// Problem: neither a lot, a serial, a tag nor a part that ever was here.
[[nodiscard]] Result<LotTrace> traceOf(const std::string &asked, const Garage &garage,
                                       const std::vector<Movement> &movements,
                                       const std::string &today);

} // namespace flarestock
