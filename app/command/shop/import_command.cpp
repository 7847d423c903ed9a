// SPDX-License-Identifier: MIT
//
// `flarestock import`: takes the shop's files in as they were edited: parts, offers, templates,
// builds; all that changed, or nothing.

#include "app/command/shop_options.h"
#include "app/workshop/taking_in.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct ImportAsked : ShopAsked {
    std::string from;
};

/// What the shop began with; it is not read again.
bool isOfTheBeginning(const std::string &name)
{
    constexpr std::array<std::string_view, 5> begun = {"shop.toml", "stock.csv", "kept.csv",
                                                       "fitted.csv", "outings.csv"};
    return std::find(begun.begin(), begun.end(), name) != begun.end();
}

/// Those of the folder that were edited there and are not in the shop as they are there. Problem:
/// one was changed in the shop as well, since the folder was written.
Result<TextFiles> changedFiles(const std::string &folder, const AsExported &exported,
                               const TextFiles &before)
{
    auto edited = documentsIn(folder);
    if (!edited)
        return edited;
    std::erase_if(*edited, [&](const auto &file) {
        const auto was = before.find(file.first);
        return isOfTheBeginning(file.first) || exported.isAsThen(file.first, file.second) ||
               (was != before.end() && was->second == file.second);
    });
    for (const auto &[name, text] : *edited) {
        const auto was = before.find(name);
        if (was != before.end() && exported.knows(name) && !exported.isAsThen(name, was->second))
            return problem(name, "was changed in the shop too since it was exported to " + folder,
                           "Export into a new folder, make the same edits there and import that.");
    }
    return edited;
}

/// What was taken in.
Result<TextFiles> takenIn(const ImportAsked &asked, OpenShopFile &shop)
{
    const auto before = shop.file.documents();
    if (!before)
        return tl::unexpected(before.error());
    auto exported = AsExported::in(asked.from);
    if (!exported)
        return tl::unexpected(exported.error());
    auto changed = changedFiles(asked.from, *exported, *before);
    if (!changed || changed->empty())
        return changed;
    const auto put = takeIn(*changed, *before, shop.file, {shop.by.who, shop.by.at});
    if (!put)
        return tl::unexpected(put.error());
    if (const auto noted = exported->taken(*changed); !noted)
        shop.outcome.print("taken in, but " + noted.error().sentence() +
                           " Export into a new folder before you edit further.");
    return changed;
}

void answerImport(const ImportAsked &asked, OpenShopFile &shop)
{
    const auto changed = takenIn(asked, shop);
    if (!changed)
        return shop.outcome.refuse(changed.error());
    QJsonArray files;
    for (const auto &[name, text] : *changed)
        files.append(jsonText(name));
    if (asked.json)
        return shop.outcome.print(QJsonObject{{QStringLiteral("files"), files}});
    shop.outcome.print(counted(changed->size(), "changed file") + " taken in");
}

} // namespace

void addImportCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ImportAsked>();
    CLI::App *command = app.add_subcommand(
        "import", "Takes in the shop's CSV and TOML files as they were edited; all are read before "
                  "one is taken in.");
    command->add_option("--from", asked->from, "the folder of them, as `export` wrote it")
        ->required();
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShopFile(*asked, OpenMode::ReadWrite, outcome,
                     [&](OpenShopFile &shop) { answerImport(*asked, shop); });
    });
}

} // namespace flarestock
