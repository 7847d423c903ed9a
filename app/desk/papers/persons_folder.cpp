// SPDX-License-Identifier: MIT

#include "app/desk/papers/persons_folder.h"

#include <QDir>
#include <QStandardPaths>

namespace flarestock {

QString personsFolder()
{
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QDir(documents).exists() ? documents : QDir::homePath();
}

} // namespace flarestock
