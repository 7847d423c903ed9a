// SPDX-License-Identifier: MIT
//
// Options: what the command line asks of flarestock-desk.

#pragma once

#include "model/exact/problem.h"

#include <QSize>
#include <QString>
#include <QStringList>

namespace flarestock {

struct DeskOptions {
    QString shop;
    QString build;
    int area = 1;              ///< As Alt and its number show it.
    QString theme;             ///< "light", "dark" or empty: as last time.
    QString units;             ///< "in", "mm" or empty: as last time, else as the locale has it.
    QString language;          ///< "en", "de" or empty: as last time, else as the system speaks.
    int passwordFrom = -1;     ///< The descriptor that a server's password comes from; -1: none.
    bool keepPassword = false; ///< In the desktop's keyring.
    bool selfTest = false;
    QString screenshot;
    QSize size{1440, 900};
    double scale = 0; ///< 0: as the desktop says.
    bool help = false;
    bool version = false;

    /// Whether a person looks on; otherwise no display is needed.
    [[nodiscard]] bool isSeen() const { return !selfTest && screenshot.isEmpty(); }
};

/// Problem: an unknown option, a size or scale that is none. The first word is the program.
[[nodiscard]] Result<DeskOptions> readOptions(const QStringList &words);
[[nodiscard]] QString optionsHelp();

} // namespace flarestock
