// SPDX-License-Identifier: MIT
//
// frames FILE [--make [PARTS MOVEMENTS]]
//
// Drives the desk's real window by keys on a shop of years, and says for each round how long the
// window's thread was held, beside an empty window in the same run. Exit status 1 where any piece
// of work took this thread more than 8 ms of the processor while keys were pressed.

#include "driven_window.h"
#include "made_shop.h"

#include "app/desk/launch/screens.h"

#include <QDir>

#include <cstdio>

using namespace flarestock;

namespace {

constexpr double MostMs = 8; ///< Of the window's thread; half a frame at 60 a second.

int make(const QStringList &words)
{
    YearsAsked asked;
    if (words.size() > 4) {
        asked.parts = words[3].toUInt();
        asked.movements = words[4].toULongLong();
    }
    const auto made = makeShopOfYears(words[1].toStdString(), asked);
    if (!made)
        std::fprintf(stderr, "%s\n", made.error().sentence().c_str());
    return made ? 0 : 2;
}

} // namespace

int main(int count, char **given)
{
    for (const char *name : {"QT_QPA_PLATFORM", "QT_QUICK_BACKEND"}) {
        if (!qEnvironmentVariableIsSet(name))
            qputenv(name, QByteArray(name).endsWith("BACKEND") ? "software" : "offscreen");
    }
    WatchedApplication application(count, given);
    const QStringList words = QCoreApplication::arguments();
    if (words.size() < 2) {
        std::fputs("say the shop's file, and --make where it is to be made\n", stderr);
        return 1;
    }
    if (words.size() > 2)
        return make(words);
    prepareScreens();
    std::vector<RoundSaid> rounds = {driveEmptyWindow(application)};
    DrivenWindow window(application);
    for (RoundSaid &round : window.drive(words[1]))
        rounds.push_back(std::move(round));
    return printRounds(rounds, MostMs) ? 0 : 1;
}
