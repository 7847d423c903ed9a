// SPDX-License-Identifier: MIT
//
// `flarestock import`: takes the shop's files in as they were edited: parts, offers, templates,
// builds; all that changed, or nothing.

#include "app/command/shop_options.h"
#include "app/workshop/taking_in.h"
#include "app/workshop/whole/edited_folder.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct ImportAsked : ShopAsked {
    std::string from;
};

/// What was taken in.
Result<TextFiles> takenIn(const ImportAsked &asked, OpenShopFile &shop)
{
    const auto before = shop.file.documents();
    if (!before)
        return tl::unexpected(before.error());
    auto edited = EditedFolder::of(asked.from, *before);
    if (!edited)
        return tl::unexpected(edited.error());
    const TextFiles &changed = edited->changed;
    if (changed.empty())
        return changed;
    const auto put = takeIn(changed, *before, shop.file, {shop.by.who, shop.by.at});
    if (!put)
        return tl::unexpected(put.error());
    if (const auto noted = edited->exported.taken(changed); !noted)
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
