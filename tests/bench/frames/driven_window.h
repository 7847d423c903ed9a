// SPDX-License-Identifier: MIT
//
// Driven window: the desk's real window on a shop, and hands that press its keys.

#pragma once

#include "round.h"
#include "yardstick.h"

#include <memory>

namespace flarestock {

class Desk;
class Look;
class Screens;
class SpareMoment;

class DrivenWindow {
public:
    explicit DrivenWindow(WatchedApplication &application);
    ~DrivenWindow();

    /// Opens the shop and goes through everything; a round each.
    [[nodiscard]] std::vector<RoundSaid> drive(const QString &file);

private:
    [[nodiscard]] Round round(const char *name);
    void key(Round &round, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void type(Round &round, const char *text);
    void focus(const char *name);
    void pause();
    void keep(Round &round);
    void open(const QString &file);
    void goThroughAreas(const char *name);
    void findAnywhere();
    void findInBuilds();
    void walkStock();
    void writeDown();
    void changeAnswers();
    void lookAtPictures();
    void lookAtDates();
    void walkLists();

    WatchedApplication &m_application;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    std::unique_ptr<SpareMoment> m_spare;
    std::vector<RoundSaid> m_said;
    RoundSaid m_pauses; ///< All of them.
    Yardstick m_yardstick;
};

/// A window with one word in it, which changes with each key: what a frame costs without a shop.
[[nodiscard]] RoundSaid driveEmptyWindow(WatchedApplication &application);

} // namespace flarestock
