// SPDX-License-Identifier: MIT
//
// Documents: the CSV and TOML files of a shop as a folder of them, which a person edits: catalogue,
// offers, templates, builds. Their formats are described in demo-data/README.md.

#pragma once

#include "model/exchange/catalogue_csv.h"

#include <filesystem>

namespace flarestock {

/// Every *.csv and *.toml in the folder and below, by its name there ("parts/adapters.csv").
/// Problem: no folder, none in it, one that cannot be read or is larger than 64 MB.
[[nodiscard]] Result<TextFiles> documentsIn(const std::filesystem::path &folder);

/// Writes them into the folder, which is made where it is not there. Problem: there is something in
/// it already, it cannot be written.
[[nodiscard]] Result<void> writeDocuments(const TextFiles &documents,
                                          const std::filesystem::path &folder);

/// The catalogue of documents of which catalogue, templates and builds can be read. Problem: the
/// first that cannot, with file, line and column.
[[nodiscard]] Result<Catalogue> readCatalogueAndPlans(const TextFiles &documents);

} // namespace flarestock
