// SPDX-License-Identifier: MIT
//
// Worked defaults: what a question of a template says about how its default is worked out.

#pragma once

#include "model/exchange/templates/varying_values.h"

namespace flarestock {

/// Nothing where it is not worked out. `question` is read but for this; `earlier` are those that
/// its calculation may ask. Adds problems: a key without its calculation or the other way round, a
/// question of another form, a power that nobody is asked for.
[[nodiscard]] std::optional<WorkedDefault> readWorkedDefault(const TomlFields &fields,
                                                             const Question &question,
                                                             const std::vector<Question> &earlier);

} // namespace flarestock
