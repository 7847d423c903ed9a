// SPDX-License-Identifier: MIT
//
// `flarestock restore`: makes a shop file out of a backup, which stays as it is.

#include "app/command/command.h"

#include "model/storage/upkeep/kept_backups.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct RestoreAsked {
    std::string backup;
    std::string to;
    bool json = false;
};

void answerRestore(const RestoreAsked &asked, CommandOutcome &outcome)
{
    const auto found = restore(asked.backup, asked.to);
    if (!found)
        return outcome.refuse(found.error());
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("shop"), jsonText(asked.to)},
                        {QStringLiteral("movements"), static_cast<qint64>(found->movements)},
                        {QStringLiteral("whole"), true}});
    outcome.print("made " + asked.to + " out of " + asked.backup + ": " +
                  counted(static_cast<std::size_t>(found->movements), "movement") +
                  ", proved whole");
}

} // namespace

void addRestoreCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<RestoreAsked>();
    CLI::App *command =
        app.add_subcommand("restore", "Makes a shop file out of a backup, which is left as it is.");
    command->footer("The damaged file stays where it is; move it aside to give its name to the new "
                    "one.");
    command->add_option("BACKUP", asked->backup, "the backup")->required();
    command->add_option("--to", asked->to, "the shop file to make")->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerRestore(*asked, outcome); });
}

} // namespace flarestock
