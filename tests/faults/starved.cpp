// SPDX-License-Identifier: MIT
//
// Starved: one operation of the core with its k-th allocation failing (failing_memory.c,
// preloaded), for every k that is asked for, each in a process of its own.
//
//   starved OPERATION SHOP FIRST STEP MOST EVER
//
// OPERATION: open, append, stock, verify; or bill, of a demo shop. EVER: 1 for all later
// allocations too. A line for each k, "k WORD": done (all the same), said (as a Problem, and the
// same done again goes well), through (std::bad_alloc left the core), ended (it could not pass a
// noexcept), qt (its SQLite driver reads through the null that SQLite gives it), stuck (does not go
// well again), hung, or crashed; and "lost" or "torn" behind it where the file is not whole or not
// what was acknowledged. "end k" where no allocation was left to fail.

#include "app/workshop/worked_build.h"
#include "model/storage/shop_file.h"

#include <QCoreApplication>

#include <csignal>
#include <dlfcn.h>
#include <execinfo.h>
#include <iostream>
#include <sys/wait.h>
#include <unistd.h>

using namespace flarestock;

namespace {

enum class Fate : int { NotReached, Done, Said, Through, Ended, Stuck, InQt, Crashed };

/// Those of failing_memory.c.
struct Memory {
    void (*fails)(long, int) = nullptr;
    int (*hasFailed)() = nullptr;
};
Memory memory;

Memory preloaded()
{
    return {reinterpret_cast<void (*)(long, int)>(dlsym(RTLD_DEFAULT, "memory_fails")),
            reinterpret_cast<int (*)()>(dlsym(RTLD_DEFAULT, "memory_has_failed"))};
}

struct Asked {
    std::string operation;
    std::string shop;
    long first = 1;
    long step = 1;
    long most = 1;
    int ever = 0;
};

/// What is at hand before the memory fails.
struct Ready {
    std::shared_ptr<const Workshop> workshop; ///< Of bill.
    std::uint32_t number = 0;                 ///< Of the action.
};

MovementId idOf(std::uint32_t number)
{
    std::array<std::uint8_t, 10> bytes{};
    for (std::size_t i = 0; i < 4; ++i)
        bytes[i] = static_cast<std::uint8_t>(number >> (24 - 8 * i));
    bytes[9] = 0x77;
    return MovementId::make(1'780'000'000'000, bytes);
}

/// One piece to the car, or back from it, so that there is always one.
Action oneMoved(std::uint32_t number)
{
    Movement movement;
    movement.id = idOf(number);
    movement.part = "BK-A";
    movement.quantity = 1;
    const bool isBack = number % 4 > 1;
    movement.from = isBack ? "car-1" : "A1";
    movement.to = isBack ? "A1" : "car-1";
    movement.who = "starved";
    movement.document = "starved " + std::to_string(number);
    return {{}, {movement}};
}

using Operation = std::function<bool()>; ///< Whether it went well, or a Problem came back.

Operation operationOf(const Asked &asked, const Ready &ready, std::optional<ShopFile> &file)
{
    if (asked.operation == "open")
        return [&] { return ShopFile::open(asked.shop, OpenMode::ReadWrite).has_value(); };
    if (asked.operation == "verify")
        return [&] {
            const auto said = ShopFile::verify(asked.shop);
            return said && said->whole;
        };
    if (asked.operation == "bill")
        return [&] {
            const auto worked = workBuild(*ready.workshop, ready.workshop->builds.front());
            return worked && !worked->bill.lines.empty();
        };
    file = std::move(ShopFile::open(asked.shop, OpenMode::ReadWrite).value());
    if (asked.operation == "append")
        return [&, action = oneMoved(ready.number)] { return file->append(action).has_value(); };
    return [&] { return file->ledger().has_value() && file->records().has_value(); };
}

/// Whose code it was that broke: the first above the C library.
[[noreturn]] void tellCrash(int)
{
    std::array<void *, 32> frames{};
    const int count = backtrace(frames.data(), static_cast<int>(frames.size()));
    for (int i = 1; i < count; ++i) { // The first is this.
        Dl_info at{};
        if (dladdr(frames[static_cast<std::size_t>(i)], &at) == 0 || !at.dli_fname)
            continue;
        const std::string_view file(at.dli_fname);
        if (file.find("/libc.so") != std::string_view::npos)
            continue;
        const bool isQt = file.find("/libqsqlite") != std::string_view::npos ||
                          file.find("/libQt6") != std::string_view::npos;
        if (isQt)
            _exit(static_cast<int>(Fate::InQt));
        break;
    }
    backtrace_symbols_fd(frames.data(), count, STDERR_FILENO);
    _exit(static_cast<int>(Fate::Crashed));
}

/// In a process of its own.
Fate fateOf(const Asked &asked, const Ready &ready, long at)
{
    std::optional<ShopFile> file;
    const Operation operation = operationOf(asked, ready, file);
    std::signal(SIGSEGV, tellCrash);
    std::set_terminate([] { _exit(static_cast<int>(Fate::Ended)); });
    Fate fate = Fate::Through;
    memory.fails(at, asked.ever);
    try {
        fate = operation() ? Fate::Done : Fate::Said;
    } catch (const std::bad_alloc &) {
    }
    const bool reached = memory.hasFailed() != 0;
    memory.fails(0, 0);
    if (!reached)
        return Fate::NotReached;
    if (!operation()) // The same again, with memory.
        return Fate::Stuck;
    return fate;
}

std::string wordOf(int status)
{
    if (WIFSIGNALED(status))
        return WTERMSIG(status) == SIGALRM ? "hung" : "crashed";
    switch (static_cast<Fate>(WEXITSTATUS(status))) {
    case Fate::NotReached:
        return "end";
    case Fate::Done:
        return "done";
    case Fate::Said:
        return "said";
    case Fate::Through:
        return "through";
    case Fate::Ended:
        return "ended";
    case Fate::Stuck:
        return "stuck";
    case Fate::InQt:
        return "qt";
    case Fate::Crashed:
        return "crashed";
    }
    return "crashed";
}

/// What the file says of it now: " torn", " lost", or nothing where it is as it has to be.
std::string lookAt(const Asked &asked, const Ready &ready, const std::string &word)
{
    if (asked.operation == "bill") // It has read the shop before.
        return {};
    const auto said = ShopFile::verify(asked.shop);
    if (!said || !said->whole)
        return " torn";
    const bool acknowledged = word == "done" || word == "said" || word == "through";
    if (asked.operation != "append" || !acknowledged) // Those were done once more.
        return {};
    const auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    const auto there = file ? file->movement(idOf(ready.number))
                            : Result<std::optional<Movement>>(tl::unexpected(file.error()));
    return there && *there ? "" : " lost";
}

int run(const Asked &asked)
{
    std::array<void *, 1> loaded{};
    static_cast<void>(backtrace(loaded.data(), 1)); // It loads its library the first time.
    Ready ready;
    if (asked.operation == "bill")
        ready.workshop = Workshop::open(asked.shop).value();
    for (long at = asked.first; at < asked.most; at += asked.step) {
        ready.number = static_cast<std::uint32_t>(2 * at + asked.ever);
        const pid_t child = fork();
        if (child == 0) {
            alarm(30);
            _exit(static_cast<int>(fateOf(asked, ready, at)));
        }
        int status = 0;
        if (child < 0 || waitpid(child, &status, 0) != child)
            return 1;
        const std::string word = wordOf(status);
        if (word == "end") {
            std::cout << "end " << at << std::endl;
            return 0;
        }
        std::cout << at << ' ' << word << lookAt(asked, ready, word) << '\n';
    }
    return 0;
}

} // namespace

int main(int count, char **given)
{
    const QCoreApplication application(count, given);
    memory = preloaded();
    if (count != 7 || !memory.fails || !memory.hasFailed) {
        std::cerr << "see the head of the source; failing_memory.so has to be preloaded\n";
        return 1;
    }
    return run({given[1], given[2], std::stol(given[3]), std::stol(given[4]), std::stol(given[5]),
                std::stoi(given[6])});
}
