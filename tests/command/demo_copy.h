// SPDX-License-Identifier: MIT
//
// A demo shop made by the real executable, in a temporary folder, and copies of it to change.

#pragma once

#include "tests/command/run_flarestock.h"

#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>

#include <set>

namespace flarestock::tests {

inline QByteArray bytesOf(const std::string &path)
{
    QFile file(QString::fromStdString(path));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("unreadable");
}

inline void writeBytes(const std::string &path, const QByteArray &bytes)
{
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) || file.write(bytes) != bytes.size())
        qFatal("cannot write %s", path.c_str());
}

inline QStringList keysOf(const QJsonObject &object)
{
    return object.keys(); // Sorted.
}

class DemoCopy {
public:
    /// Where a file of this name would lie.
    [[nodiscard]] std::string file(const char *name) const
    {
        return m_folder.filePath(QString::fromUtf8(name)).toStdString();
    }
    /// The demo shop, made once; not to be changed.
    [[nodiscard]] const std::string &made()
    {
        if (m_made.empty()) {
            m_made = file("made.shop");
            if (runFlarestock({"demo", "--to", m_made}).status != 0)
                qFatal("the demo shop cannot be made");
        }
        return m_made;
    }
    /// A fresh copy of it. Nobody has the demo shop open, so that it is one file.
    [[nodiscard]] std::string copied()
    {
        const std::string path = file(("copy-" + std::to_string(++m_copies) + ".shop").c_str());
        if (!QFile::copy(QString::fromStdString(made()), QString::fromStdString(path)))
            qFatal("the demo shop cannot be copied");
        return path;
    }

private:
    QTemporaryDir m_folder;
    std::string m_made;
    int m_copies = 0;
};

} // namespace flarestock::tests
