// SPDX-License-Identifier: MIT

#include "app/buyer/whole_file.h"

#include <QSaveFile>

namespace flarestock {

namespace {

Problem notWritten(const std::string &path, const QSaveFile &file)
{
    return {path, "cannot be written: " + file.errorString().toStdString(),
            "Name a file in a folder that you may write to."};
}

} // namespace

Result<void> canWriteWhole(const std::string &path)
{
    QSaveFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::WriteOnly))
        return tl::unexpected(notWritten(path, file));
    file.cancelWriting();
    return {};
}

Result<void> writeWhole(const std::string &path, std::string_view bytes)
{
    QSaveFile file(QString::fromStdString(path));
    const auto size = static_cast<qint64>(bytes.size());
    if (file.open(QIODevice::WriteOnly) && file.write(bytes.data(), size) == size && file.commit())
        return {};
    return tl::unexpected(notWritten(path, file));
}

} // namespace flarestock
