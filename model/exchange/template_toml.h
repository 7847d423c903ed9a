// SPDX-License-Identifier: MIT
//
// Templates and builds as TOML. The keys are described in demo-data/README.md.

#pragma once

#include "model/exchange/catalogue_csv.h"
#include "model/systems/template.h"

namespace flarestock {

/// Problem: with file, line, column, the line and a caret: TOML that does not parse, an unknown or
/// missing key, a wrong type, a bad condition or measure, a name used twice, a run to a station
/// that is not there, a default that is no choice, a file over 4 MB.
[[nodiscard]] Result<std::shared_ptr<const Template>> readTemplate(std::string_view text,
                                                                   std::string file);

/// All templates/*.toml of `files` that are not empty. Problem: as above, and an id twice, a module
/// of an unknown template, modules in a circle (the path is named).
[[nodiscard]] Result<std::shared_ptr<const TemplateBook>> readTemplates(const TextFiles &files);

/// A build of the shop: a template with answers and picks, for a car, by a date.
struct BuildPlan {
    std::string id; ///< "coupe-fuel"
    std::string title;
    std::string templateId;
    std::string car; ///< Place id of the car.
    std::string by;  ///< ISO date, "2026-12-12"; may be empty.
    Answers answers;
    Picks picks;
    std::string preference = "shelf";

    friend bool operator==(const BuildPlan &, const BuildPlan &) = default;
};
/// builds.toml: [[build]] tables, in order. Problem: as above.
[[nodiscard]] Result<std::vector<BuildPlan>> readBuilds(std::string_view text, std::string file);
/// The same text back: readBuilds(writeBuilds(x)) is x.
[[nodiscard]] std::string writeBuilds(const std::vector<BuildPlan> &builds);

} // namespace flarestock
