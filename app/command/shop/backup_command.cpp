// SPDX-License-Identifier: MIT
//
// `flarestock backup`: a copy of the shop as it is at one moment, proved whole.

#include "app/command/command.h"

#include "app/workshop/clock.h"
#include "model/storage/server/server_address.h"
#include "model/storage/upkeep/kept_backups.h"

#include <CLI/CLI.hpp>

#include <memory>

namespace flarestock {

namespace {

struct BackupAsked {
    std::string shop;
    std::string to;
    bool json = false;
};

void sayBackup(const BackupAsked &asked, const std::string &path, const Verification &found,
               CommandOutcome &outcome)
{
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("backup"), jsonText(path)},
                        {QStringLiteral("movements"), static_cast<qint64>(found.movements)},
                        {QStringLiteral("whole"), true}});
    outcome.print("backed up to " + path + ": " +
                  counted(static_cast<std::size_t>(found.movements), "movement") +
                  ", proved whole");
}

void answerBackup(const BackupAsked &asked, CommandOutcome &outcome)
{
    const auto file = ShopFile::open(asked.shop, OpenMode::ReadOnly);
    if (!file)
        return outcome.refuse(file.error());
    if (!asked.to.empty()) {
        const auto found = provenBackup(*file, asked.to);
        return found ? sayBackup(asked, asked.to, *found, outcome) : outcome.refuse(found.error());
    }
    if (isServer(asked.shop))
        return outcome.refuse({asked.shop, "has no folder beside it for a backup by number",
                               "Name the new file: --to FILE."});
    const auto kept = keepBackup(*file, nowMilliseconds());
    if (!kept)
        return outcome.refuse(kept.error());
    sayBackup(asked, kept->backup.path.string(), kept->found, outcome);
}

} // namespace

void addBackupCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<BackupAsked>();
    CLI::App *command = app.add_subcommand(
        "backup", "Copies the shop as it is at one moment, and proves the copy whole.");
    command->add_option("--shop", asked->shop, ShopHelp)->required();
    command->add_option("--to", asked->to, "the new file; otherwise one by number");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerBackup(*asked, outcome); });
}

} // namespace flarestock
