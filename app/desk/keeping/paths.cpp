// SPDX-License-Identifier: MIT

#include "app/desk/keeping/paths.h"

#include <QCoreApplication>
#include <QDir>

namespace flarestock {

namespace {

/// Whose texts these are, for the translators.
struct PathWords {
    Q_DECLARE_TR_FUNCTIONS(flarestock::PathWords)
};

} // namespace

QString notWhole(const QString &path)
{
    return QDir::isAbsolutePath(path)
               ? QString()
               : PathWords::tr("%1: does not say where it is. Choose it, or write all folders "
                               "down to it.")
                     .arg(path);
}

} // namespace flarestock
