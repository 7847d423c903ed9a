// SPDX-License-Identifier: MIT
//
// Build log: what was written down of a build beside its pieces: its leak tests, and that it is
// done. Without a leak test that has passed it is not done; on brakes a second name has to stand
// below it.

#pragma once

#include "model/journal/record.h"

namespace flarestock {

struct LeakTest {
    MovementId id;
    std::string build;
    std::string medium;   ///< "air", "nitrogen", "water", "fuel", "brake fluid"
    std::string pressure; ///< A measure: "60 psi".
    std::string held;     ///< How long: "10 min".
    bool passed = false;
    std::string who;
    std::string second; ///< Who has seen it too; needed on brakes.
    std::string note;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<LeakTest> read(const Record &record); ///< Problem: not one.
};

struct BuildDone {
    MovementId id;
    std::string build;
    std::string car;      ///< Place id.
    bool open = false;    ///< It is open again: not done any more.
    bool changed = false; ///< Its pieces have changed: tests of before say nothing of it.
    std::string who;
    std::string why;
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<BuildDone> read(const Record &record); ///< Problem: not one.
};

/// A build has got another piece than was planned: the as-built record follows what was issued, and
/// this says what for.
struct Instead {
    MovementId id;
    std::string build;
    std::string planned; ///< Part numbers.
    std::string used;
    std::int64_t quantity = 0; ///< Smallest units.
    std::string who;
    std::string why;
    std::string action; ///< The id of the movement that changed it.
    std::int64_t at = 0;

    [[nodiscard]] Record asRecord() const;
    [[nodiscard]] static Result<Instead> read(const Record &record); ///< Problem: not one.
};

/// What stands in the way of calling a build done, as a sentence; empty where nothing does.
/// `tests` are those of the build, oldest first: the newest counts. `brakes`: its system is one.
[[nodiscard]] std::string notDoneBecause(const std::vector<LeakTest> &tests, bool brakes);

} // namespace flarestock
