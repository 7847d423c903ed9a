// SPDX-License-Identifier: MIT
//
// What python-fluids says (Debian package python3-fluids): one run of Debian's own Python for many
// expressions, each printed so that the same double comes back.

#pragma once

#include <QProcess>
#include <QStringList>

#include <stdexcept>
#include <vector>

namespace flarestock {

/// One number for each expression; `f` is the library, `by('K_run_converging_')` the one function
/// whose name begins like that. Throws where one cannot be worked out.
inline std::vector<double> pythonFluids(const QStringList &expressions)
{
    QProcess python;
    python.start(
        QStringLiteral("/usr/bin/python3"),
        {QStringLiteral("-c"),
         QStringLiteral("import sys, fluids as f\n"
                        "def by(start):\n"
                        "    [name] = [n for n in dir(f.fittings) if n.startswith(start)]\n"
                        "    return getattr(f.fittings, name)\n"
                        "for line in sys.stdin:\n"
                        "    print(repr(float(eval(line))))\n")});
    python.write(expressions.join(QLatin1Char('\n')).toUtf8());
    python.closeWriteChannel();
    if (!python.waitForFinished(120000) || python.exitStatus() != QProcess::NormalExit ||
        python.exitCode() != 0)
        throw std::runtime_error("python-fluids: " + python.readAllStandardError().toStdString());
    std::vector<double> answers;
    for (const QByteArray &line : python.readAllStandardOutput().trimmed().split('\n'))
        answers.push_back(line.toDouble());
    if (answers.size() != static_cast<std::size_t>(expressions.size()))
        throw std::runtime_error("python-fluids did not answer everything");
    return answers;
}

} // namespace flarestock
