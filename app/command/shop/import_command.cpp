// SPDX-License-Identifier: MIT
//
// `flarestock catalogue`: the shop's files, parts, offers, templates and builds, out of the shop
// into a folder, and back when they were edited.

#include "app/command/shop_options.h"
#include "app/workshop/documents.h"

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
    return name == "shop.toml" || name == "stock.csv";
}

/// Of what lies somewhere or is promised the catalogue has to know what it is.
Result<void> knowsTheStock(const TextFiles &documents, const Workshop &workshop)
{
    const auto catalogue = readCatalogue(documents);
    if (!catalogue)
        return tl::unexpected(catalogue.error());
    for (const auto &[key, held] : workshop.ledger.balances()) {
        const Part *before = workshop.catalogue.find(key.part);
        const Part *now = catalogue->find(key.part);
        if (held.quantity == 0 || !before)
            continue;
        if (!now)
            return problem(key.part, "is no longer in the catalogue, and lies at " + key.place,
                           "Keep its row for as long as there is any.");
        if (now->unit != before->unit)
            return problem(key.part, "is kept in another unit, and lies at " + key.place,
                           "Give the new unit a new part number.");
    }
    return {};
}

Result<std::vector<std::string>> takenIn(const ImportAsked &asked, OpenShop &shop)
{
    auto all = shop.file.documents();
    if (!all)
        return tl::unexpected(all.error());
    const auto edited = documentsIn(asked.from);
    if (!edited)
        return tl::unexpected(edited.error());
    std::vector<std::string> changed;
    for (const auto &[name, text] : *edited) {
        const auto before = all->find(name);
        if (isOfTheBeginning(name) || (before != all->end() && before->second == text))
            continue;
        (*all)[name] = text;
        changed.push_back(name);
    }
    if (const auto read = readable(*all); !read)
        return tl::unexpected(read.error());
    if (const auto knows = knowsTheStock(*all, *shop.workshop); !knows)
        return tl::unexpected(knows.error());
    for (const std::string &name : changed) {
        const auto put = shop.file.putDocument(name, all->at(name), shop.by.who, shop.by.at);
        if (!put)
            return tl::unexpected(put.error());
    }
    return changed;
}

void answerImport(const ImportAsked &asked, OpenShop &shop)
{
    const auto changed = takenIn(asked, shop);
    if (!changed)
        return shop.outcome.refuse(changed.error());
    QJsonArray files;
    for (const std::string &name : *changed)
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
        withShop(*asked, OpenMode::ReadWrite, outcome,
                 [&](OpenShop &shop) { answerImport(*asked, shop); });
    });
}

} // namespace flarestock
