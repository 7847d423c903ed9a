// SPDX-License-Identifier: MIT
//
// `flarestock verify`: proves a shop file whole.

#include "app/command/command.h"

#include "model/storage/shop_file.h"

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

void answerVerify(const VerifyAsked &asked, CommandOutcome &outcome)
{
    const auto said = ShopFile::verify(asked.file);
    if (!said)
        return outcome.refuse(said.error());
    if (!said->whole)
        outcome.ending = Ending::InputProblem;
    if (asked.json)
        return outcome.print(
            QJsonObject{{QStringLiteral("whole"), said->whole},
                        {QStringLiteral("movements"), static_cast<qint64>(said->movements)},
                        {QStringLiteral("heads"), textArray(said->heads)},
                        {QStringLiteral("problems"), textArray(said->problems)},
                        {QStringLiteral("lastGood"), jsonText(said->lastGood)}});
    if (said->whole)
        return outcome.print(asked.file + " is whole: " + std::to_string(said->movements) +
                             " movements, every balance is what they add up to");
    for (const auto &problem : said->problems)
        outcome.print(problem);
    outcome.refuse({asked.file,
                    "is not whole; the last good movement is " +
                        (said->lastGood.empty() ? std::string("none") : said->lastGood),
                    "Do not write to it: keep it aside and restore the newest backup."});
}

} // namespace

void addVerifyCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<VerifyAsked>();
    CLI::App *command =
        app.add_subcommand("verify", "Proves a shop file whole; never writes to it.");
    command->add_option("FILE", asked->file, "the shop file")->required();
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerVerify(*asked, outcome); });
}

} // namespace flarestock
