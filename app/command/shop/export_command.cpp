// SPDX-License-Identifier: MIT
//
// `flarestock export`: writes the shop's files into a folder, to be edited: parts, offers,
// templates, builds. None of them is read for that, so that one that does not read comes out too.

#include "app/command/shop_options.h"
#include "app/workshop/documents.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct ExportAsked : ShopAsked {
    std::string to;
};

void answerExport(const ExportAsked &asked, OpenShopFile &shop)
{
    const auto documents = shop.file.documents();
    if (!documents)
        return shop.outcome.refuse(documents.error());
    if (const auto written = writeDocuments(*documents, asked.to); !written)
        return shop.outcome.refuse(written.error());
    QJsonArray files;
    for (const auto &[name, text] : *documents)
        files.append(jsonText(name));
    if (asked.json)
        return shop.outcome.print(QJsonObject{{QStringLiteral("files"), files}});
    shop.outcome.print(counted(documents->size(), "file") + " written to " + asked.to);
}

} // namespace

void addExportCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ExportAsked>();
    CLI::App *command = app.add_subcommand(
        "export", "Writes the shop's CSV and TOML files into a folder, to be edited there.");
    command->add_option("--to", asked->to, "the folder; it is new or empty")->required();
    addShopOptions(*command, *asked);
    command->callback([asked, &outcome] {
        withShopFile(*asked, OpenMode::ReadOnly, outcome,
                     [&](OpenShopFile &shop) { answerExport(*asked, shop); });
    });
}

} // namespace flarestock
