// SPDX-License-Identifier: MIT
//
// One template out of its TOML, and the checks that need only this template.

#pragma once

#include "model/exchange/templates/varying_values.h"

namespace flarestock {

/// Questions, in order; each may depend on those before it.
[[nodiscard]] std::vector<Question> readQuestions(const TomlFields &top);

/// Stations, runs, modules and extras, whose texts may name these questions.
void readParts(const TomlFields &top, Template &form);

/// The whole template; adds a problem for whatever is wrong.
[[nodiscard]] Template readTemplateTable(const TomlDocument &document, Problems &problems);

} // namespace flarestock
