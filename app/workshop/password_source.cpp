// SPDX-License-Identifier: MIT

#include "app/workshop/password_source.h"

#include "app/workshop/keyring.h"
#include "model/storage/server/password.h"

#include <cerrno>
#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace flarestock {

namespace {

constexpr std::size_t LongestLine = 1000;

/// Shows nothing of what is typed as long as this lives.
class WithoutEcho {
public:
    explicit WithoutEcho(int terminal) : m_terminal(terminal)
    {
        m_known = ::tcgetattr(terminal, &m_before) == 0;
        termios quiet = m_before;
        quiet.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        m_isQuiet = m_known && ::tcsetattr(terminal, TCSAFLUSH, &quiet) == 0;
    }
    ~WithoutEcho()
    {
        if (m_known)
            ::tcsetattr(m_terminal, TCSAFLUSH, &m_before);
    }
    WithoutEcho(const WithoutEcho &) = delete;
    WithoutEcho &operator=(const WithoutEcho &) = delete;

    [[nodiscard]] bool isQuiet() const noexcept { return m_isQuiet; }

private:
    int m_terminal;
    termios m_before{};
    bool m_known = false;
    bool m_isQuiet = false;
};

void say(int terminal, const std::string &text)
{
    // A terminal that takes no words cannot be told so either.
    [[maybe_unused]] const ssize_t written = ::write(terminal, text.data(), text.size());
}

} // namespace

std::optional<std::string> lineFrom(int descriptor)
{
    std::string line;
    for (char letter = 0; line.size() <= LongestLine;) {
        const ssize_t count = ::read(descriptor, &letter, 1);
        if (count < 0 && errno == EINTR)
            continue;
        if (count < 0 || (count == 0 && line.empty()))
            return std::nullopt;
        if (count == 0 || letter == '\n') {
            if (line.ends_with('\r'))
                line.pop_back();
            return line;
        }
        line += letter;
    }
    return std::nullopt;
}

std::optional<std::string> askedOnTerminal(const std::string &question)
{
    const int terminal = ::open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY);
    if (terminal < 0)
        return std::nullopt;
    std::optional<std::string> answer;
    {
        const WithoutEcho quiet(terminal);
        if (quiet.isQuiet()) {
            say(terminal, question);
            answer = lineFrom(terminal);
            say(terminal, "\n");
        }
    }
    ::close(terminal);
    return answer;
}

void takePasswordsFrom(int descriptor)
{
    askForPasswordsBy([descriptor](const ServerAddress &address) {
        if (descriptor >= 0)
            return lineFrom(descriptor);
        auto kept = passwordInKeyring(address.text());
        return kept ? kept : askedOnTerminal("password of " + address.text() + ": ");
    });
}

} // namespace flarestock
