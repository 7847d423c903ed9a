// SPDX-License-Identifier: MIT
//
// `flarestock backup`: a copy of the shop as it is at one moment, proved whole.

#include "app/command/command.h"

#include "model/storage/shop_file.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct BackupAsked {
    std::string shop;
    std::string to;
    bool json = false;
};

void answerBackup(const BackupAsked &asked, CommandOutcome &outcome)
{
    const auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    if (!file)
        return outcome.refuse(file.error());
    if (const auto made = file->backUp(asked.to); !made)
        return outcome.refuse(made.error());
    const auto said = ShopFile::verify(asked.to);
    if (!said)
        return outcome.refuse(said.error());
    if (!said->whole)
        return outcome.refuse({asked.to, "was made and is not whole: " + said->problems.front(),
                               "Verify the shop itself: flarestock verify " + asked.shop + "."});
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("backup"), jsonText(asked.to)},
                        {QStringLiteral("movements"), static_cast<qint64>(said->movements)},
                        {QStringLiteral("whole"), true}});
    outcome.print("backed up to " + asked.to + ": " + std::to_string(said->movements) +
                  " movements, proved whole");
}

} // namespace

void addBackupCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<BackupAsked>();
    CLI::App *command = app.add_subcommand(
        "backup", "Copies the shop as it is at one moment, and proves the copy whole.");
    command->add_option("--shop", asked->shop, "the shop file")->required();
    command->add_option("--to", asked->to, "the new file")->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerBackup(*asked, outcome); });
}

} // namespace flarestock
