// SPDX-License-Identifier: MIT
//
// The demo shop as its files say, read once for all tests of this folder by the readers that a
// shop's own files go through.

#pragma once

#include "model/checks/check.h"
#include "model/checks/flow/system_flow.h"
#include "model/exchange/catalogue_csv.h"
#include "model/exchange/shop_toml.h"
#include "model/exchange/template_toml.h"
#include "model/joints/closing.h"
#include "model/journal/ledger.h"
#include "model/systems/expand.h"

#include <QTest>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

namespace flarestock {

inline TextFiles demoFiles()
{
    const std::filesystem::path folder = std::filesystem::path(FLARESTOCK_SOURCE_DIR) / "demo-data";
    TextFiles files;
    for (const auto &entry : std::filesystem::recursive_directory_iterator(folder)) {
        const std::string extension = entry.path().extension().string();
        if (extension != ".csv" && extension != ".toml")
            continue;
        std::ostringstream whole;
        whole << std::ifstream(entry.path(), std::ios::binary).rdbuf();
        files.emplace(std::filesystem::relative(entry.path(), folder).generic_string(),
                      whole.str());
    }
    return files;
}

/// What a reader gave, or the end of the program with what it says is wrong.
template <class T>
T readOrEnd(Result<T> read)
{
    if (!read) {
        std::cerr << read.error().text() << '\n';
        std::exit(1);
    }
    return std::move(*read);
}

class DemoShop {
public:
    static const DemoShop &it()
    {
        static const DemoShop shop;
        return shop;
    }

    const TextFiles files = demoFiles();
    const Catalogue catalogue = readOrEnd(readCatalogue(files));
    const std::shared_ptr<const TemplateBook> book = readOrEnd(readTemplates(files));
    const std::vector<BuildPlan> builds =
        readOrEnd(readBuilds(files.at("builds.toml"), "builds.toml"));
    const JointCloser closer{catalogue};
    const ShopPlan shop = readOrEnd(readShop(files.at("shop.toml"), "shop.toml"));
    const std::vector<OpeningStock> stock =
        readOrEnd(readOpeningStock(files.at("stock.csv"), "stock.csv", catalogue, shop.places));
    const Shelf shelf = openingShelf();

    [[nodiscard]] ExpandRequest request(const std::string &templateId) const
    {
        ExpandRequest asked;
        asked.templateId = templateId;
        asked.book = book;
        asked.catalogue = &catalogue;
        asked.closer = &closer;
        asked.shelf = &shelf;
        return asked;
    }
    [[nodiscard]] Expansion expanded(const ExpandRequest &asked) const
    {
        return readOrEnd(expand(asked));
    }
    [[nodiscard]] Expansion expanded(const BuildPlan &plan) const
    {
        ExpandRequest asked = request(plan.templateId);
        asked.answers = plan.answers;
        asked.picks = plan.picks;
        asked.preference = readOrEnd(parsePreference(plan.preference));
        return expanded(asked);
    }

private:
    DemoShop() = default;

    /// The rows of stock.csv as movements out of the opening place, folded.
    Shelf openingShelf() const
    {
        Ledger ledger(shop.places);
        for (std::size_t i = 0; i < stock.size(); ++i) {
            const auto refused = ledger.apply(movementOf(stock[i], i));
            if (refused) {
                std::cerr << "stock.csv, " << stock[i].part << ": " << text(*refused) << '\n';
                std::exit(1);
            }
        }
        Shelf shelved = ledger.shelf(catalogue);
        for (const OpeningStock &row : stock)
            for (const std::string &missing : row.missing)
                shelved[row.part].missing.push_back(missing);
        return shelved;
    }

    Movement movementOf(const OpeningStock &row, std::size_t number) const
    {
        const Quantity quantity{row.quantity, catalogue.find(row.part)->unit};
        Movement movement;
        movement.id = MovementId::make(
            0, {static_cast<std::uint8_t>(number & 0xff), static_cast<std::uint8_t>(number >> 8)});
        movement.part = row.part;
        movement.quantity = readOrEnd(quantity.smallest());
        movement.value = (row.value * Decimal(1000000)).toInt64().value();
        movement.from = "opening";
        movement.to = row.place;
        movement.lot = row.lot;
        movement.condition = row.condition;
        return movement;
    }
};

} // namespace flarestock
