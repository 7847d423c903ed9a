// SPDX-License-Identifier: MIT
//
// Documents: the CSV and TOML files of a shop as a folder of them, which a person edits: catalogue,
// offers, templates, builds. Their formats are described in demo-data/README.md.

#pragma once

#include "model/exchange/catalogue_csv.h"
#include "model/journal/movement.h"
#include "model/spares/season.h"

#include <filesystem>
#include <span>

namespace flarestock {

/// Every *.csv and *.toml in the folder and below, by its name there ("parts/adapters.csv").
/// Problem: no folder, none in it, one that cannot be read or is larger than 64 MB.
[[nodiscard]] Result<TextFiles> documentsIn(const std::filesystem::path &folder);

/// The text of one such file. Problem: it cannot be read, or is larger than 64 MB.
[[nodiscard]] Result<std::string> textOfFile(const std::filesystem::path &file);

/// Writes them into the folder, which is made where it is not there, and beside them how they were
/// then (as-exported.json). Problem: there is something in it already, it cannot be written.
[[nodiscard]] Result<void> writeDocuments(const TextFiles &documents,
                                          const std::filesystem::path &folder);

/// Of a folder that writeDocuments() has written: whether a document is still as it was then.
class AsExported {
public:
    /// Of another folder nothing is known. Problem: what stands there about it cannot be read.
    [[nodiscard]] static Result<AsExported> in(const std::filesystem::path &folder);
    [[nodiscard]] bool knows(const std::string &name) const { return m_seals.contains(name); }
    /// False where the name is not known.
    [[nodiscard]] bool isAsThen(const std::string &name, const std::string &text) const;
    /// The shop has these of the folder now, so that the folder goes on from there; nothing of
    /// another folder. Problem: it cannot be written.
    [[nodiscard]] Result<void> taken(const TextFiles &documents);

private:
    std::filesystem::path m_folder;
    std::map<std::string, std::string> m_seals; ///< sha256 in hex, by name.
};

/// The events that the shop goes to; none where it has no season.csv. Problem: it does not read.
[[nodiscard]] Result<Season> readSeasonOf(const TextFiles &documents);

/// Problem: a season that does not read; a car of an event that is no place of kind car.
[[nodiscard]] Result<void> seasonFits(const TextFiles &documents, std::span<const Place> places);

/// The catalogue of documents of which catalogue, templates, season, intervals and builds can be
/// read. Problem: the first that cannot, with file, line and column.
[[nodiscard]] Result<Catalogue> readCatalogueAndPlans(const TextFiles &documents);

} // namespace flarestock
