// SPDX-License-Identifier: MIT

#include "model/storage/server/seat.h"

#include "model/storage/failure.h"
#include "model/storage/upkeep/backup.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <QStandardPaths>

namespace flarestock {

namespace {

constexpr int Bytes = 16;

[[noreturn]] void refuse(const QString &file, const char *wrong)
{
    throw StorageFailure{{file.toStdString(), wrong,
                          "It holds what this seat is called on the server: check who may write "
                          "there, or remove it, then the seat gets another name."}};
}

QByteArray idIn(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        refuse(path, "cannot be read");
    QByteArray id = QByteArray::fromHex(file.read(2 * Bytes));
    if (id.size() != Bytes)
        refuse(path, "is damaged");
    return id;
}

} // namespace

QByteArray seatOf(const ServerAddress &address)
{
    const std::string server =
        address.host + ":" + std::to_string(address.port) + "/" + address.database;
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
                           QStringLiteral("/flarestock/seats");
    const QString name = QString::fromLatin1(
        QCryptographicHash::hash(QByteArray::fromStdString(server), QCryptographicHash::Sha256)
            .toHex());
    const QString path = folder + QLatin1Char('/') + name;
    if (QFile::exists(path))
        return idIn(path);
    if (!QDir().mkpath(folder))
        refuse(folder, "cannot be made");
    // Written under a name of its own; of two programs that do so at once the first one's stays,
    // as a link never takes the place of a file.
    const QString unnamed =
        path + QLatin1Char('-') + QString::fromLatin1(randomReplicaId().toHex());
    QSaveFile file(unnamed);
    if (!file.open(QIODevice::WriteOnly) || file.write(randomReplicaId().toHex() + '\n') < 0 ||
        !file.commit())
        refuse(path, "cannot be written");
    std::error_code taken;
    std::filesystem::create_hard_link(unnamed.toStdString(), path.toStdString(), taken);
    QFile::remove(unnamed);
    return idIn(path);
}

} // namespace flarestock
