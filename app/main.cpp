// SPDX-License-Identifier: MIT
//
// flarestock: the commands. Without one it becomes the desk, `flarestock-desk`, that lies beside it
// or in PATH.

#include "app/command/command.h"

#include <QCoreApplication>
#include <QFile>
#include <QStandardPaths>

#include <cstdio>
#include <cstdlib>
#include <exception>
#include <new>
#include <unistd.h>

using namespace flarestock;

namespace {

/// Nothing but `--shop FILE` and where its password comes from, or nothing at all: a person wants
/// the desk.
bool wantsDesk(const std::vector<std::string> &arguments)
{
    for (auto word = arguments.begin(); word != arguments.end(); ++word) {
        if (*word == "--shop" || *word == "--password-fd") {
            if (++word == arguments.end())
                return false;
        } else if (!word->starts_with("--shop=") && !word->starts_with("--password-fd=") &&
                   *word != "--password-stdin" && *word != "--keep-password") {
            return false;
        }
    }
    return true;
}

/// Replaces this process by the desk; returns only where that failed.
CommandOutcome becomeDesk(std::vector<std::string> arguments)
{
    const QString name = QStringLiteral("flarestock-desk");
    QString path = QStandardPaths::findExecutable(name, {QCoreApplication::applicationDirPath()});
    if (path.isEmpty())
        path = QStandardPaths::findExecutable(name);
    CommandOutcome outcome;
    if (path.isEmpty()) {
        outcome.refuse({"flarestock-desk", "is neither beside flarestock nor in PATH",
                        "Install the desk, or give a command: flarestock --help."});
        return outcome;
    }
    arguments.insert(arguments.begin(), QFile::encodeName(path).toStdString());
    std::vector<char *> words;
    words.reserve(arguments.size() + 1);
    for (std::string &argument : arguments)
        words.push_back(argument.data());
    words.push_back(nullptr);
    execv(words[0], words.data());
    outcome.refuse({arguments[0], "cannot be started", "Check that it may be executed."});
    return outcome;
}

/// The sentence is ready: to make one would need memory.
[[noreturn]] void endWithoutMemory() noexcept
{
    constexpr std::string_view said =
        "flarestock: the memory ran out, and what was being done is not confirmed. Close other "
        "programs, then look with flarestock history, or say it again with the same --id.\n";
    static_cast<void>(::write(STDERR_FILENO, said.data(), said.size()));
    _exit(static_cast<int>(Ending::InputProblem));
}

/// Where it runs out in what may not throw.
[[noreturn]] void endAtOnce()
{
    try {
        if (const auto thrown = std::current_exception())
            std::rethrow_exception(thrown);
    } catch (const std::bad_alloc &) {
        endWithoutMemory();
    } catch (...) { // A bug: it may be seen as one.
    }
    std::abort();
}

int answer(int argc, char **argv)
{
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    const QCoreApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("flarestock"));
    QCoreApplication::setApplicationVersion(QStringLiteral(FLARESTOCK_VERSION));

    const CommandOutcome outcome =
        wantsDesk(arguments) ? becomeDesk(arguments) : runCommand(arguments);
    std::fwrite(outcome.out.data(), 1, outcome.out.size(), stdout);
    std::fwrite(outcome.err.data(), 1, outcome.err.size(), stderr);
    // An answer that did not reach its reader (a full disk, a closed pipe) is not "done".
    if (std::fflush(stdout) != 0)
        return static_cast<int>(Ending::InputProblem);
    return static_cast<int>(outcome.ending);
}

} // namespace

int main(int argc, char **argv)
{
    std::set_terminate(endAtOnce);
    try {
        return answer(argc, argv);
    } catch (const std::bad_alloc &) {
        endWithoutMemory();
    }
}
