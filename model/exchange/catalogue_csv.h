// SPDX-License-Identifier: MIT
//
// The catalogue as CSV files that a person edits in a spreadsheet: one file a group of kinds, plus
// suppliers.csv and offers.csv. The columns are described in demo-data/README.md.

#pragma once

#include "model/exact/problem.h"
#include "model/parts/catalogue.h"

#include <map>
#include <string>
#include <vector>

namespace flarestock {

/// File name ("parts/adapters.csv") to its text.
using TextFiles = std::map<std::string, std::string, std::less<>>;

/// Reads every *.csv of `files` that belongs to the catalogue. Problem: the first thing that is
/// wrong, with file, line, column, and the line with a caret.
[[nodiscard]] Result<Catalogue> readCatalogue(const TextFiles &files);

/// The same, but goes on after a problem: all of them (at most 100), empty where the files are
/// good.
[[nodiscard]] std::vector<Problem> catalogueProblems(const TextFiles &files);

} // namespace flarestock
