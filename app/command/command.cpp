// SPDX-License-Identifier: MIT

#include "app/command/command.h"

#include "app/workshop/password_source.h"

#include <CLI/CLI.hpp>
#include <QCoreApplication>
#include <QJsonDocument>

#include <algorithm>
#include <cassert>
#include <unistd.h>

namespace flarestock {

namespace {

/// CLI11's message as the middle of our sentence: one line, no full stop.
std::string oneLineOf(std::string message)
{
    std::replace(message.begin(), message.end(), '\n', ' ');
    while (!message.empty() && (message.back() == '.' || message.back() == ' '))
        message.pop_back();
    return message;
}

/// The first word, where it is neither one of the commands nor asks about them.
std::optional<Problem> unknownCommand(const CLI::App &app,
                                      const std::vector<std::string> &arguments)
{
    const std::string &first = arguments.front();
    if (first == "--help" || first == "-h" || first == "--version" ||
        first.starts_with("--password-"))
        return std::nullopt;
    std::string known;
    for (const CLI::App *command : app.get_subcommands({})) {
        if (command->get_name() == first)
            return std::nullopt;
        known += (known.empty() ? "" : ", ") + command->get_name();
    }
    return Problem{first, "is not a command", "Commands are: " + known + "."};
}

/// The full name of the command that was being read: "flarestock server setup".
std::string commandReadIn(const CLI::App &app)
{
    std::string name = app.get_name();
    for (const CLI::App *command : app.get_subcommands())
        name += " " + commandReadIn(*command);
    return name;
}

/// A server's password is read from where they say, else from the keyring, else asked on the
/// terminal; only where a server wants one.
void addPasswordOptions(CLI::App &app)
{
    takePasswordsFrom(-1);
    app.add_option_function<int>("--password-fd", takePasswordsFrom,
                                 "the server's password is the first line of this descriptor");
    app.add_flag_callback(
        "--password-stdin", [] { takePasswordsFrom(STDIN_FILENO); },
        "the server's password is the first line of the standard input");
    for (CLI::App *command : app.get_subcommands({})) {
        command->fallthrough();
        if (command->get_option_no_throw("--shop") != nullptr)
            command->footer("Of a shop on a server also --password-stdin or --password-fd N: where "
                            "its password is the first line.");
        for (CLI::App *below : command->get_subcommands({}))
            below->fallthrough();
    }
}

} // namespace

void CommandOutcome::print(std::string_view line)
{
    out += line;
    out += '\n';
}

void CommandOutcome::print(const QJsonObject &document)
{
    print(QJsonDocument(document).toJson(QJsonDocument::Compact).toStdString());
}

void CommandOutcome::refuse(const Problem &problem)
{
    err += problem.text() + '\n';
    ending = Ending::InputProblem;
}

std::string counted(std::size_t count, std::string_view noun)
{
    return std::to_string(count) + " " + std::string(noun) + (count == 1 ? "" : "s");
}

QString jsonText(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString jsonAmount(const Decimal &number)
{
    return jsonText(number.stripped().text());
}

QJsonValue textOrNull(std::string_view text)
{
    return text.empty() ? QJsonValue() : QJsonValue(jsonText(text));
}
namespace {

/// A line typed as several words ("--line AD-3-3 12 at 5.95") becomes one, as it is in quotes.
std::vector<std::string> withWholeLines(const std::vector<std::string> &typed)
{
    const auto isWord = [&typed](std::size_t at) {
        return at < typed.size() && !typed[at].starts_with('-');
    };
    std::vector<std::string> words;
    for (std::size_t at = 0; at < typed.size(); ++at) {
        words.push_back(typed[at]);
        if (typed[at] != "--line" || !isWord(at + 1) || !isWord(at + 2) ||
            typed[at + 1].find(' ') != std::string::npos)
            continue;
        words.push_back(typed[at + 1] + ' ' + typed[at + 2]);
        at += 2;
        if (isWord(at + 2) && typed[at + 1] == "at") {
            words.back() += " at " + typed[at + 2];
            at += 2;
        }
    }
    return words;
}

} // namespace

CommandOutcome runCommand(const std::vector<std::string> &arguments)
{
    assert(!arguments.empty());
    CommandOutcome outcome;
    CLI::App app("Fluid-system builds and the stock of a race shop.\n"
                 "Without a command the desk is opened: flarestock [--shop FILE]",
                 "flarestock");
    app.require_subcommand(1);
    app.set_version_flag("--version",
                         "flarestock " + QCoreApplication::applicationVersion().toStdString());
    addEveryCommand(app, outcome);
    addPasswordOptions(app);
    if (const auto unknown = unknownCommand(app, arguments)) {
        outcome.refuse(*unknown);
        return outcome;
    }
    try {
        auto words = withWholeLines(arguments);
        std::reverse(words.begin(), words.end()); // CLI11 takes the words last first.
        app.parse(words);
    } catch (const CLI::Success &asked) { // --help and --version
        std::ostringstream out;
        app.exit(asked, out, out);
        outcome.out = out.str();
    } catch (const CLI::ParseError &wrong) {
        const std::string name = commandReadIn(app);
        outcome.refuse({name, oneLineOf(wrong.what()), "Say " + name + " --help for its words."});
    }
    return outcome;
}

} // namespace flarestock
