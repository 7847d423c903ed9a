// SPDX-License-Identifier: MIT
//
// A round: keys that belong together, pressed one after the other, each once all that the one
// before it set going is done.

#pragma once

#include "watched_application.h"

namespace flarestock {

/// What a round was like. Milliseconds.
struct RoundSaid {
    QString name;
    bool isKeyed = true; ///< Somebody presses keys: not before there is a window, nor in a pause.
    double walk = 0;     ///< What the yardstick's walk took before it.
    std::vector<Held> events;
    std::vector<double> toFrame; ///< From a key to the end of the first frame after it.
};

class Round {
public:
    using Acts = std::vector<std::function<void()>>;
    using Asked = std::function<bool()>;

    /// `isBusy`: something that a key set going is not done yet. `walk`: of the yardstick, just
    /// now.
    Round(WatchedApplication &application, QString name, Asked isBusy, double walk);
    /// One key, each of its acts an event of its own, and everything that comes of it. Whether that
    /// ended within two minutes.
    bool press(const char *what, const Acts &acts);
    [[nodiscard]] RoundSaid said() { return std::move(m_said); }

private:
    void turn(); ///< Handles what has come.

    WatchedApplication &m_application;
    Asked m_isBusy;
    int m_presses = 0;
    RoundSaid m_said;
};

/// Prints them as a table with the longest piece of work of each, and that of all. `limit`: of the
/// window's thread, milliseconds of processor. Whether none is above it while keys are pressed.
[[nodiscard]] bool printRounds(const std::vector<RoundSaid> &rounds, double limit);

} // namespace flarestock
