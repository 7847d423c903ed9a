// SPDX-License-Identifier: MIT
//
// Another process of this very program, that does something with a shop file meanwhile. Nobody here
// may have a shop open when it begins, because it would inherit it.

#pragma once

#include <csignal>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace flarestock::tests {

class OtherProcess {
public:
    /// Says something to whom it was begun by.
    class Say {
    public:
        explicit Say(int to) : m_to(to) {}
        void operator()(const std::string &text) const
        {
            if (::write(m_to, text.data(), text.size()) != static_cast<ssize_t>(text.size()))
                ::_exit(3);
        }

    private:
        int m_to;
    };

    /// Does `work(say)` and ends.
    template <class Work>
    explicit OtherProcess(const Work &work)
    {
        int ends[2] = {-1, -1};
        if (::pipe(ends) != 0)
            ::abort();
        m_child = ::fork();
        if (m_child == 0) {
            ::close(ends[0]);
            work(Say(ends[1]));
            ::_exit(0);
        }
        ::close(ends[1]);
        m_from = ends[0];
    }
    ~OtherProcess()
    {
        kill();
        ::close(m_from);
    }
    OtherProcess(const OtherProcess &) = delete;
    OtherProcess &operator=(const OtherProcess &) = delete;

    /// The next that it says, waited for; empty where it ended before.
    [[nodiscard]] std::string said() const
    {
        char text[512];
        const ssize_t count = ::read(m_from, text, sizeof text);
        return {text, count > 0 ? static_cast<std::size_t>(count) : 0};
    }
    /// All that it says until it ends.
    [[nodiscard]] std::string saidToItsEnd() const
    {
        std::string all;
        for (std::string more = said(); !more.empty(); more = said())
            all += more;
        return all;
    }
    /// As by kill -9; returns when it is gone.
    void kill()
    {
        if (m_child <= 0)
            return;
        ::kill(m_child, SIGKILL);
        ::waitpid(m_child, nullptr, 0);
        m_child = -1;
    }

private:
    pid_t m_child = -1;
    int m_from = -1;
};

} // namespace flarestock::tests
