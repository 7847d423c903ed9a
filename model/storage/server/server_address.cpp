// SPDX-License-Identifier: MIT

#include "model/storage/server/server_address.h"

#include <QByteArray>

#include <algorithm>
#include <charconv>
#include <optional>
#include <string_view>

namespace flarestock {

namespace {

constexpr std::string_view Scheme = "postgresql://";

tl::unexpected<Problem> refused(const std::string &text, std::string wrong)
{
    return tl::unexpected(Problem{text, std::move(wrong),
                                  "Write postgresql://role@host/database, and in a name %2F for a "
                                  "slash."});
}

/// What may be shown of it: without its options, and without what may be a password.
std::string withoutSecrets(const std::string &text)
{
    std::string shown = text.substr(0, text.find('?'));
    const auto at = shown.rfind('@');
    const auto colon = shown.find(':', Scheme.size());
    if (at != std::string::npos && colon < at)
        shown.replace(colon, at - colon, ":…");
    return shown;
}

/// What was left of a mark, which is taken out with it; nothing where the mark is not there.
std::optional<std::string> takenUpTo(std::string &text, char mark)
{
    const auto at = text.find(mark);
    if (at == std::string::npos)
        return std::nullopt;
    std::string before = text.substr(0, at);
    text.erase(0, at + 1);
    return before;
}

std::string decoded(const std::string &text)
{
    return QByteArray::fromPercentEncoding(QByteArray::fromStdString(text)).toStdString();
}

/// Of "host", "host:port", "[::1]:port": the port goes into `port`; false where it is none.
bool takePort(std::string &host, std::uint16_t &port)
{
    const auto colon = host.rfind(':');
    const auto bracket = host.rfind(']');
    if (colon == std::string::npos || (bracket != std::string::npos && colon < bracket))
        return true;
    const char *last = host.data() + host.size();
    const auto [end, wrong] = std::from_chars(host.data() + colon + 1, last, port);
    if (wrong != std::errc() || end != last || port == 0)
        return false;
    host.erase(colon);
    return true;
}

/// "name=value" of the address; a sentence's middle where it is refused.
std::optional<std::string> optionRefused(ServerAddress &address, std::string option)
{
    const std::string name = takenUpTo(option, '=').value_or(option);
    const std::string value = decoded(option);
    if (name == "sslrootcert") {
        address.rootCertificate = value;
        return std::nullopt;
    }
    if (name == "sslmode" && value == "verify-full")
        return std::nullopt;
    if (name == "sslmode")
        return "asks for sslmode " + value + ", and only verify-full shows that it is the server";
    return "has an option that is not ours: " + name;
}

/// Qt hands options to libpq in one text that is divided by these.
bool isPlain(const std::string &text)
{
    return std::ranges::none_of(text, [](char letter) {
        return letter == ';' || letter == '\'' || letter == '\\' ||
               static_cast<unsigned char>(letter) < ' ';
    });
}

std::optional<std::string> wrongWith(const ServerAddress &address)
{
    if (address.role.empty())
        return "names no role to work as";
    if (address.host.empty())
        return "names no host";
    if (address.database.empty())
        return "names no database";
    for (const auto &word :
         {address.role, address.host, address.database, address.rootCertificate}) {
        if (!isPlain(word))
            return "has a letter that no name here may have";
    }
    return std::nullopt;
}

} // namespace

std::string ServerAddress::text() const
{
    const bool numbered = host.find(':') != std::string::npos;
    return role + "@" + (numbered ? "[" + host + "]" : host) + ":" + std::to_string(port) + "/" +
           database;
}

Result<ServerAddress> ServerAddress::parse(const std::string &text)
{
    const std::string shown = withoutSecrets(text);
    if (!text.starts_with(Scheme))
        return refused(shown, "is no address of a server");
    std::string rest = text.substr(Scheme.size());
    ServerAddress address;
    std::string options;
    if (auto before = takenUpTo(rest, '?')) {
        options = rest + "&";
        rest = std::move(*before);
    }
    std::string role = takenUpTo(rest, '@').value_or("");
    if (role.find(':') != std::string::npos)
        return refused(shown, "holds a password, which everybody reads who lists the programs that "
                              "run; leave it out, it is asked for");
    std::string host = rest;
    if (auto before = takenUpTo(rest, '/')) {
        host = std::move(*before);
        address.database = decoded(rest);
    }
    if (!takePort(host, address.port))
        return refused(shown, "has a port that is none");
    if (host.starts_with('[') && host.ends_with(']'))
        host = host.substr(1, host.size() - 2);
    address.host = decoded(host);
    address.role = decoded(role);
    while (const auto option = takenUpTo(options, '&')) {
        const auto wrong = option->empty() ? std::nullopt : optionRefused(address, *option);
        if (wrong)
            return refused(shown, *wrong);
    }
    if (const auto wrong = wrongWith(address))
        return refused(shown, *wrong);
    return address;
}

bool isServer(const std::filesystem::path &shop)
{
    const std::string text = shop.string();
    return text.starts_with("postgresql:") || text.starts_with("postgres:");
}

} // namespace flarestock
