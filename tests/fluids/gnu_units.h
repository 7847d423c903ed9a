// SPDX-License-Identifier: MIT
//
// What GNU units says (Debian package units, run by the test).

#pragma once

#include <QProcess>

#include <cmath>

namespace flarestock {

/// NaN where it does not understand.
inline double gnuUnits(const QString &from, const QString &to)
{
    QProcess units;
    units.start(QStringLiteral("units"), {QStringLiteral("-1"), QStringLiteral("-t"),
                                          QStringLiteral("-o"), QStringLiteral("%.17g"), from, to});
    if (!units.waitForFinished() || units.exitStatus() != QProcess::NormalExit ||
        units.exitCode() != 0)
        return std::nan("");
    return units.readAllStandardOutput().trimmed().toDouble();
}

} // namespace flarestock
