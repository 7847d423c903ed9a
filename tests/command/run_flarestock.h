// SPDX-License-Identifier: MIT
//
// Runs the real executable, as a shell would.

#pragma once

#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QProcessEnvironment>

#include <algorithm>
#include <string>
#include <vector>

namespace flarestock::tests {

using Words = std::vector<std::string>;

struct Ran {
    int status = -1; ///< -1: did not start, crashed, or took over a minute.
    std::string out;
    std::string err;

    [[nodiscard]] QJsonObject json() const
    {
        return QJsonDocument::fromJson(QByteArray::fromStdString(out)).object();
    }
    /// What is wrong and what to do, in one line.
    [[nodiscard]] bool refusesInOneLine() const
    {
        return status == 2 && out.empty() && err.ends_with(".\n") &&
               std::count(err.begin(), err.end(), '\n') == 1;
    }
};

inline Ran runFlarestock(const Words &words, const std::string &path = {})
{
    QProcess process;
    if (!path.empty()) {
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("PATH"), QString::fromStdString(path));
        process.setProcessEnvironment(environment);
    }
    QStringList arguments;
    for (const std::string &word : words)
        arguments << QString::fromStdString(word);
    process.start(QStringLiteral(FLARESTOCK_EXECUTABLE), arguments);
    Ran ran;
    if (process.waitForFinished(60'000) && process.exitStatus() == QProcess::NormalExit)
        ran.status = process.exitCode();
    ran.out = process.readAllStandardOutput().toStdString();
    ran.err = process.readAllStandardError().toStdString();
    return ran;
}

} // namespace flarestock::tests
