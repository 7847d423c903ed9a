// SPDX-License-Identifier: MIT

#include "app/buyer/whole_file.h"

#include <QSaveFile>

namespace flarestock {

Result<void> writeWhole(const std::string &path, std::string_view bytes)
{
    QSaveFile file(QString::fromStdString(path));
    const auto size = static_cast<qint64>(bytes.size());
    if (file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size && file.commit())
        return {};
    return problem(path, "cannot be written: " + file.errorString().toStdString(),
                   "Name a file in a folder that you may write to.");
}

} // namespace flarestock
