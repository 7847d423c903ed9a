// SPDX-License-Identifier: MIT
//
// Workshop: a shop as one immutable snapshot: catalogue, templates, builds, what is free. Commands
// and desk read it; a new one is made when the file has changed.
//
//   const auto workshop = Workshop::read(*ShopFile::open(path, OpenMode::ReadOnly));
//   workBuild(request, (*workshop)->settings.currency);

#pragma once

#include "model/buying/bought.h"
#include "model/exchange/photos/photo_toml.h"
#include "model/exchange/template_toml.h"
#include "model/joints/closing.h"
#include "model/journal/notes/shop_notes.h"
#include "model/spares/season.h"
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
    std::vector<BoxCheck> looks;                     ///< Into boxes, oldest first.
    Bars bars;                                       ///< The lots that a build may not use.
    std::map<std::string, Part, std::less<>> madeUp; ///< Made-up hoses, by their folded tags.
    Bought bought;         ///< What is ordered, what came of it, what suppliers owe.
    Season season;         ///< The events that the shop goes to; none where it has no season.csv.
    TextFiles photos = {}; ///< Documents, as photoOf() reads them.
    /// The claims of the ledger once more, by their builds.
    std::map<std::string, std::vector<const Claims::value_type *>, std::less<>> claimsBy = {};

    /// Problem: a document of the shop that does not read (with its place), a damaged file.
    [[nodiscard]] static Result<std::shared_ptr<const Workshop>> read(const ShopFile &file);
    /// Opens the file to read it only. Problem: as ShopFile::open() and read().
    [[nodiscard]] static Result<std::shared_ptr<const Workshop>>
    open(const std::filesystem::path &path);

    /// Of the catalogue, or a made-up hose by its tag; nullptr where it is neither.
    [[nodiscard]] const Part *part(std::string_view number) const;
    [[nodiscard]] const BuildPlan *build(std::string_view id) const noexcept;
    /// What a build was promised or issued of each part, by the parts' numbers.
    [[nodiscard]] std::vector<const Claims::value_type *> claimsOf(std::string_view build) const;
    /// What is free to a build: what was issued to it, its own promises, and no lot that is another
    /// car's or past its day when the build is due.
    [[nodiscard]] Shelf shelfFor(const BuildPlan &plan) const;
    /// The same by another ledger of this shop, and other days of its builds.
    [[nodiscard]] Shelf shelfFor(const BuildPlan &plan, const Ledger &now,
                                 const Bars &barsThen) const;
};

/// What was seen and done in boxes.
struct Boxes {
    const std::vector<BoxCheck> &looks;
    const std::vector<OpenedBox> &opened;
};
/// With what the newest looks into boxes found missing of it, and what was taken out of those that
/// were opened, as far as they are in stock or at a car.
[[nodiscard]] Shelf withLooks(Shelf shelf, const Boxes &boxes, const Ledger &ledger);
/// Whether pieces of it lie counted, so that no level says how much there is. Of what is used by
/// measure the bottles are counted, and how full they are is seen besides.
[[nodiscard]] bool isCounted(const Part &part, const FreeStock &stock);
/// With the levels of what nobody counts: of several places the best.
[[nodiscard]] Shelf withLevels(Shelf shelf, const ShopNotes &notes, const Catalogue &catalogue);

} // namespace flarestock
