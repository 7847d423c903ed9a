// SPDX-License-Identifier: MIT

#include "driven_window.h"

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/screens.h"
#include "app/desk/launch/spare_moment.h"
#include "app/desk/rows/pace.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "seen.h"

#include <QElapsedTimer>
#include <QQmlEngine>
#include <QTest>

#include <algorithm>
#include <cstdio>

namespace flarestock {

namespace {

constexpr int Areas = 6;

/// A key pressed and let go, as a keyboard sends them: each an event of its own, and neither with
/// what waits behind it in the event loop (`QTest::keyClick` handles that, too).
Round::Acts pressed(QQuickWindow *window, Qt::Key key, Qt::KeyboardModifiers with,
                    const QString &text)
{
    const auto send = [=](QEvent::Type type) {
        return [=] { qt_handleKeyEvent(window, type, key, with, text); };
    };
    return {send(QEvent::KeyPress), send(QEvent::KeyRelease)};
}

Round::Acts pressed(QQuickWindow *window, Qt::Key key, Qt::KeyboardModifiers with)
{
    const char letter = QTest::keyToAscii(key);
    return pressed(window, key, with, letter != 0 ? QString(QChar::fromLatin1(letter)) : QString());
}

} // namespace

DrivenWindow::DrivenWindow(WatchedApplication &application)
    : m_application(application), m_look(std::make_unique<Look>(nullptr)),
      m_desk(std::make_unique<Desk>(nullptr)), m_screens(std::make_unique<Screens>()),
      m_spare(std::make_unique<SpareMoment>(m_screens->engine()))
{
    m_desk->setDeeds({openShopFile, makeDemoFile});
    m_desk->setWho(QStringLiteral("Kim"));
    m_desk->build()->setPatience(Working::AtTheWindowMs);
    Pace::instance().setInSteps(true);
}

DrivenWindow::~DrivenWindow() = default;

/// What the engine does when nobody has touched the window for a moment is said for itself.
void DrivenWindow::keep(Round &round)
{
    RoundSaid said = round.said();
    const auto others =
        std::stable_partition(said.events.begin(), said.events.end(), [](const Held &one) {
            return !one.what.contains(QStringLiteral("spareMoment"));
        });
    m_pauses.events.insert(m_pauses.events.end(), others, said.events.end());
    said.events.erase(others, said.events.end());
    m_said.push_back(std::move(said));
}

/// As long as a person looks at what has come before the next round of keys.
void DrivenWindow::pause()
{
    QElapsedTimer since;
    since.start();
    Round pause(
        m_application, QStringLiteral("between rounds: the engine collects, nobody waits"),
        [&since] { return since.elapsed() < SpareMoment::AfterMs + 200; }, 0);
    (void)pause.press("nothing", {[] {}});
    const RoundSaid said = pause.said();
    m_pauses.name = said.name;
    m_pauses.isKeyed = false;
    m_pauses.events.insert(m_pauses.events.end(), said.events.begin(), said.events.end());
}

/// What lies in memory is as far off as the machine has it after a pause.
Round DrivenWindow::round(const char *name)
{
    if (m_screens->window() != nullptr)
        pause();
    const double walk = m_yardstick.walk();
    m_pauses.walk = std::max(m_pauses.walk, walk);
    return {m_application, QString::fromLatin1(name),
            [this] {
                return m_desk->isLoading() || m_desk->pen()->isBusy() ||
                       m_desk->build()->isWorking() || m_desk->pictures()->isWorking() ||
                       (m_desk->abreast()->isLooking() && m_desk->abreast()->isLoading()) ||
                       !m_desk->opening().isEmpty() || Pace::instance().isBusy();
            },
            walk};
}

void DrivenWindow::key(Round &round, Qt::Key key, Qt::KeyboardModifiers with)
{
    if (!round.press("key", pressed(m_screens->window(), key, with)))
        std::printf("a key's work did not end\n");
}

void DrivenWindow::type(Round &round, const char *text)
{
    for (const char *letter = text; *letter != 0; ++letter) {
        if (!round.press("letter", pressed(m_screens->window(), QTest::asciiToKey(*letter), {},
                                           QString(QChar::fromLatin1(*letter)))))
            std::printf("a letter's work did not end\n");
    }
}

void DrivenWindow::focus(const char *name)
{
    QQuickItem *item = seen(*m_screens->window(), name);
    if (item == nullptr)
        std::printf("there is no %s on the screen\n", name);
    else
        item->forceActiveFocus(Qt::TabFocusReason);
}

std::vector<RoundSaid> DrivenWindow::drive(const QString &file)
{
    open(file);
    goThroughAreas("each area, for the first time");
    goThroughAreas("each area, again");
    findAnywhere();
    findInBuilds();
    walkStock();
    writeDown();
    changeAnswers();
    lookAtPictures();
    lookAtDates();
    walkLists();
    m_said.push_back(std::exchange(m_pauses, {}));
    return std::exchange(m_said, {});
}

/// The window is there first, and the shop comes onto it.
void DrivenWindow::open(const QString &file)
{
    Round screens = round("the window without a shop");
    (void)screens.press("load", {[&] { (void)m_screens->load(); }});
    keep(screens);
    m_said.back().isKeyed = false;
    m_application.watch(*m_screens->window());
    m_screens->window()->resize(1440, 900);
    Round opening = round("the shop is opened");
    (void)opening.press("open", {[&] { m_desk->openShop(QUrl::fromLocalFile(file)); }});
    keep(opening);
    if (!m_desk->hasShop())
        std::printf("not opened: %s\n", qPrintable(m_desk->problem()));
}

void DrivenWindow::goThroughAreas(const char *name)
{
    Round areas = round(name);
    for (int area = 0; area < Areas; ++area)
        key(areas, static_cast<Qt::Key>(Qt::Key_1 + area), Qt::AltModifier);
    keep(areas);
}

void DrivenWindow::findAnywhere()
{
    Round finding = round("find from Trailer: -8 orb, P0, 10 micron");
    key(finding, Qt::Key_4, Qt::AltModifier);
    for (const char *words : {"-8 orb", "P0", "10 micron"}) {
        key(finding, Qt::Key_F, Qt::ControlModifier);
        key(finding, Qt::Key_A, Qt::ControlModifier);
        type(finding, words);
    }
    key(finding, Qt::Key_Escape);
    keep(finding);
}

void DrivenWindow::walkStock()
{
    key(*std::make_unique<Round>(round("to stock")), Qt::Key_2, Qt::AltModifier);
    Round finding = round("stock narrowed: brack, 0, -8 orb");
    for (const char *words : {"brack", "0", "-8 orb"}) {
        key(finding, Qt::Key_F, Qt::ControlModifier);
        key(finding, Qt::Key_A, Qt::ControlModifier);
        type(finding, words);
    }
    key(finding, Qt::Key_Escape);
    keep(finding);
    focus("stockLine");
    Round walking = round("stock walked: 40 arrows, 20 pages, to the end");
    for (int at = 0; at < 40; ++at)
        key(walking, Qt::Key_Down);
    for (int at = 0; at < 20; ++at)
        key(walking, Qt::Key_PageDown);
    key(walking, Qt::Key_End);
    key(walking, Qt::Key_Home);
    keep(walking);
    Round sorting = round("stock sorted");
    for (const char *by : {"sort-1", "sort-2", "sort-3"}) {
        if (seen(*m_screens->window(), by) == nullptr)
            continue;
        focus(by);
        key(sorting, Qt::Key_Space);
    }
    keep(sorting);
}

void DrivenWindow::findInBuilds()
{
    key(*std::make_unique<Round>(round("to builds")), Qt::Key_1, Qt::AltModifier);
    Round finding = round("find in Builds: -8 orb, od 22.1 mm");
    for (const char *words : {"-8 orb", "od 22.1 mm"}) {
        key(finding, Qt::Key_F, Qt::ControlModifier);
        key(finding, Qt::Key_A, Qt::ControlModifier);
        type(finding, words);
    }
    key(finding, Qt::Key_Escape);
    keep(finding);
}

/// A count, and its take back: each is written, and the shop is read anew.
void DrivenWindow::writeDown()
{
    Round writing = round("a count is written and taken back");
    key(writing, Qt::Key_F, Qt::ControlModifier);
    key(writing, Qt::Key_A, Qt::ControlModifier);
    type(writing, "AD-10-10");
    key(writing, Qt::Key_Return);
    focus("deed-count");
    key(writing, Qt::Key_Return);
    focus("doDeed");
    key(writing, Qt::Key_Return);
    focus("field-found");
    type(writing, "1");
    key(writing, Qt::Key_Return);
    key(writing, Qt::Key_Z, Qt::ControlModifier);
    keep(writing);
}

void DrivenWindow::changeAnswers()
{
    key(*std::make_unique<Round>(round("to builds")), Qt::Key_1, Qt::AltModifier);
    Round opening = round("the largest build is opened");
    (void)opening.press("open", {[&] { (void)m_desk->openBuild(QStringLiteral("coupe-fuel")); }});
    keep(opening);
    focus("measure");
    Round answering = round("a build's power changed, and taken back");
    for (const char *power : {"300 hp", "620 hp", "450 hp"}) {
        key(answering, Qt::Key_A, Qt::ControlModifier);
        type(answering, power);
        key(answering, Qt::Key_Return);
    }
    for (int at = 0; at < 3; ++at)
        key(answering, Qt::Key_Z, Qt::ControlModifier);
    keep(answering);
    focus("lineMap");
    Round walking = round("the map walked: 30 joints opened");
    for (int at = 0; at < 30; ++at)
        key(walking, Qt::Key_Right);
    keep(walking);
}

/// Pressure, pump, cost and the map again, twice: each first time they are made.
void DrivenWindow::lookAtPictures()
{
    for (const char *name : {"pictures of a build, first time", "pictures of a build, again"}) {
        Round pictures = round(name);
        for (const Qt::Key picture : {Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_1})
            key(pictures, picture, Qt::ControlModifier);
        keep(pictures);
    }
}

/// The planned builds side by side; the one on the desk tried some days later.
void DrivenWindow::lookAtDates()
{
    Round opening = round("builds by date opened");
    key(opening, Qt::Key_D, Qt::ControlModifier);
    keep(opening);
    Round trying = round("builds by date: 6 days tried");
    for (int at = 0; at < 3; ++at)
        key(trying, Qt::Key_Right, Qt::ControlModifier);
    for (int at = 0; at < 3; ++at)
        key(trying, Qt::Key_Left, Qt::ControlModifier);
    key(trying, Qt::Key_Escape);
    keep(trying);
}

void DrivenWindow::walkLists()
{
    struct List {
        const char *name;
        Qt::Key area;
        const char *list;
    };
    for (const List &list : {List{"buying's list walked", Qt::Key_3, "lackingList"},
                             List{"service's list walked", Qt::Key_5, "dueList"},
                             List{"parts' cards walked", Qt::Key_6, "cardList"}}) {
        key(*std::make_unique<Round>(round("to a list")), list.area, Qt::AltModifier);
        focus(list.list);
        Round walking = round(list.name);
        for (int at = 0; at < 20; ++at)
            key(walking, Qt::Key_Down);
        for (int at = 0; at < 10; ++at)
            key(walking, Qt::Key_PageDown);
        keep(walking);
    }
    Round finding = round("cards sought: brack, 0, -8 orb");
    for (const char *words : {"brack", "0", "-8 orb"}) {
        key(finding, Qt::Key_F, Qt::ControlModifier);
        key(finding, Qt::Key_A, Qt::ControlModifier);
        type(finding, words);
    }
    keep(finding);
}

RoundSaid driveEmptyWindow(WatchedApplication &application)
{
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick\nimport QtQuick.Window\n"
                    "Window { id: root; visible: true; width: 1440; height: 900\n"
                    "property int pressed: 0\n"
                    "Text { focus: true; text: root.pressed\n"
                    "Keys.onPressed: root.pressed += 1 } }\n");
    auto *window = qobject_cast<QQuickWindow *>(engine.rootObjects().value(0));
    if (window == nullptr)
        return {};
    application.watch(*window);
    Round round(
        application, QStringLiteral("an empty window: 40 keys"), [] { return false; },
        Yardstick().walk());
    for (int at = 0; at < 40; ++at)
        (void)round.press("key", pressed(window, Qt::Key_A, Qt::NoModifier));
    return round.said();
}

} // namespace flarestock
