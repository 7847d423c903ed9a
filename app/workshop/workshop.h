// SPDX-License-Identifier: MIT
//
// Workshop: a shop as one immutable snapshot: catalogue, templates, builds, what is free. Commands
// and desk read it; a new one is made when the file has changed.
//
//   const auto workshop = Workshop::read(*ShopFile::open(path, OpenMode::ReadOnly));
//   workBuild(request, (*workshop)->settings.currency);

#pragma once

#include "model/exchange/template_toml.h"
#include "model/joints/closing.h"
#include "model/storage/shop_file.h"
#include "model/systems/template.h"

#include <memory>

namespace flarestock {

struct Workshop {
    ShopSettings settings;
    std::filesystem::path path;
    Catalogue catalogue;
    std::shared_ptr<const TemplateBook> templates;
    std::vector<BuildPlan> builds;
    Ledger ledger;
    Shelf shelf;
    std::unique_ptr<const JointCloser> closer; ///< Of this catalogue.

    /// Problem: a document of the shop that does not read (with its place), a damaged file.
    [[nodiscard]] static Result<std::shared_ptr<const Workshop>> read(const ShopFile &file);
    /// Opens the file to read it only. Problem: as ShopFile::open() and read().
    [[nodiscard]] static Result<std::shared_ptr<const Workshop>>
    open(const std::filesystem::path &path);

    [[nodiscard]] const BuildPlan *build(std::string_view id) const noexcept;
};

/// What is free, with what the newest looks into boxes found missing of it.
[[nodiscard]] Shelf shelfOf(const Ledger &ledger, const Catalogue &catalogue,
                            const std::vector<BoxCheck> &looks);

} // namespace flarestock
