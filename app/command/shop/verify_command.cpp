// SPDX-License-Identifier: MIT
//
// `flarestock verify`: proves a shop file whole.

#include "app/command/command.h"

#include "model/storage/server/server_address.h"
#include "model/storage/upkeep/kept_backups.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct VerifyAsked {
    std::string file;
    bool json = false;
};

QJsonArray textArray(const std::vector<std::string> &texts)
{
    QJsonArray array;
    for (const auto &text : texts)
        array.append(jsonText(text));
    return array;
}

/// What a person whose file is not whole goes on with.
std::string remedyWith(const std::optional<GoodBackup> &good, const std::string &shop)
{
    if (isServer(shop))
        return "Do not write to it: ask who runs the server what was changed there, and move a "
               "backup that is whole to another database: flarestock server move.";
    const std::string aside = "Do not write to it: keep it aside and restore ";
    if (!good)
        return aside + "the newest backup from elsewhere: none is whole in " + shop + ".backups.";
    return aside + "the newest good backup, " + good->backup.path.string() + ", with " +
           counted(static_cast<std::size_t>(good->found.movements), "movement") + " up to " +
           (good->found.lastGood.empty() ? std::string("none") : good->found.lastGood) +
           ": flarestock restore.";
}

QJsonObject document(const Verification &said, const std::optional<GoodBackup> &good)
{
    QJsonObject document{{QStringLiteral("whole"), said.whole},
                         {QStringLiteral("movements"), static_cast<qint64>(said.movements)},
                         {QStringLiteral("heads"), textArray(said.heads)},
                         {QStringLiteral("problems"), textArray(said.problems)},
                         {QStringLiteral("lastGood"), jsonText(said.lastGood)}};
    if (!said.whole)
        document.insert(QStringLiteral("newestGoodBackup"),
                        good ? jsonText(good->backup.path.string()) : QJsonValue());
    return document;
}

void answerVerify(const VerifyAsked &asked, CommandOutcome &outcome)
{
    const auto said = ShopFile::verify(asked.file);
    if (!said) { // Not to be read as a shop at all; then a backup is all the more asked for.
        Problem problem = said.error();
        if (const auto good = newestGoodBackup(asked.file); good && !isServer(asked.file))
            problem.remedy = remedyWith(good, asked.file);
        return outcome.refuse(problem);
    }
    const auto good = said->whole ? std::nullopt : newestGoodBackup(asked.file);
    if (!said->whole)
        outcome.ending = Ending::InputProblem;
    if (asked.json)
        return outcome.print(document(*said, good));
    if (said->whole)
        return outcome.print(asked.file + " is whole: " +
                             counted(static_cast<std::size_t>(said->movements), "movement") +
                             ", every balance is what they add up to");
    for (const auto &problem : said->problems)
        outcome.print(problem);
    outcome.refuse({asked.file,
                    "is not whole; the last good movement is " +
                        (said->lastGood.empty() ? std::string("none") : said->lastGood),
                    remedyWith(good, asked.file)});
}

} // namespace

void addVerifyCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<VerifyAsked>();
    CLI::App *command =
        app.add_subcommand("verify", "Proves a shop file whole; never writes to it.");
    command->add_option("FILE", asked->file, ShopHelp)->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerVerify(*asked, outcome); });
}

} // namespace flarestock
