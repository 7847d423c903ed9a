// SPDX-License-Identifier: MIT
//
// Commands of `flarestock`: one file, <name>_command.cpp, makes one command. Nothing else has to be
// edited; CMake finds it by its name (see CMakeLists.txt here). Only those files include CLI11.
//
//   // mate_command.cpp
//   void addMateCommand(CLI::App &app, CommandOutcome &outcome)
//   {
//       struct Asked {
//           std::string a, b;
//           bool json = false;
//       };
//       const auto asked = std::make_shared<Asked>();
//       CLI::App *command = app.add_subcommand("mate", "Says what happens when two ports meet.");
//       command->add_option("A", asked->a, "a port: \"AN -6 male\"")->required();
//       command->add_option("B", asked->b, "the other")->required();
//       command->add_flag("--json", asked->json, JsonHelp);
//       command->callback([asked, &outcome] {
//           const auto end = parseEnd(asked->a);
//           if (!end)
//               return outcome.refuse(end.error());
//           …
//           outcome.print(QJsonObject{…});
//       });
//   }
//
// A command writes into its outcome and never to the terminal itself, so that tests can call it.
// An option that may stand several times takes ->allow_extra_args(false), or it swallows what
// follows.

#pragma once

#include "model/exact/decimal.h"
#include "model/exact/problem.h"

#include <QJsonObject>

#include <string>
#include <string_view>
#include <vector>

namespace CLI {
class App;
}

namespace flarestock {

/// The exit status of a command; the numbers are part of the contract.
enum class Ending : std::uint8_t {
    Done = 0,
    Attention = 1,    ///< With --strict: there are stops or shortages.
    InputProblem = 2, ///< What was typed, or a file, is wrong; said in a sentence on stderr.
};

/// What a command has to say, and how it ended.
struct CommandOutcome {
    std::string out; ///< For the standard output.
    std::string err; ///< For the standard error.
    Ending ending = Ending::Done;

    /// A line (or several); the line end is added.
    void print(std::string_view line);
    /// One JSON document. Money and quantities go in as strings, through jsonText().
    void print(const QJsonObject &document);
    /// Ends with InputProblem. Where the problem lies in a file its line and a caret are shown.
    void refuse(const Problem &problem);
};

inline constexpr const char *JsonHelp = "print one JSON document";
inline constexpr const char *ShopHelp = "the shop: a file, or postgresql://role@host/database";

/// "1 line", "2 lines", "0 lines".
[[nodiscard]] std::string counted(std::size_t count, std::string_view noun);
[[nodiscard]] QString jsonText(std::string_view text);      ///< UTF-8 to a JSON string.
[[nodiscard]] QJsonValue textOrNull(std::string_view text); ///< The same; null where it is empty.

/// "2.5": without zeros at its end.
[[nodiscard]] QString jsonAmount(const Decimal &number);

/// Parses the arguments (without the program's name; at least one, asserted) and does what they
/// say. Never throws for what was typed: an unknown command or option is refused in a sentence.
[[nodiscard]] CommandOutcome runCommand(const std::vector<std::string> &arguments);

/// Made by CMake: every *_command.cpp of this folder and below.
void addEveryCommand(CLI::App &app, CommandOutcome &outcome);

} // namespace flarestock
