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
#include "model/journal/notes/shop_notes.h"
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
    Shelf shelf; ///< What is free to whoever comes, so without what builds are promised.
    std::unique_ptr<const JointCloser> closer; ///< Of this catalogue.
    ShopNotes notes;
    std::vector<BoxCheck> looks; ///< Into boxes, oldest first.

    /// Problem: a document of the shop that does not read (with its place), a damaged file.
    [[nodiscard]] static Result<std::shared_ptr<const Workshop>> read(const ShopFile &file);
    /// Opens the file to read it only. Problem: as ShopFile::open() and read().
    [[nodiscard]] static Result<std::shared_ptr<const Workshop>>
    open(const std::filesystem::path &path);

    [[nodiscard]] const BuildPlan *build(std::string_view id) const noexcept;
    /// What is free to a build: what was issued to it, its own promises, and no lot that is another
    /// car's or past its day when the build is due.
    [[nodiscard]] Shelf shelfFor(const BuildPlan &plan) const;
};

/// With what the newest looks into boxes found missing of it.
[[nodiscard]] Shelf withLooks(Shelf shelf, const std::vector<BoxCheck> &looks);

} // namespace flarestock
