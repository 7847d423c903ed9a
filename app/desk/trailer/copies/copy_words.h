// SPDX-License-Identifier: MIT

#pragma once

#include "app/desk/words/spoken.h"
#include "model/exact/problem.h"

#include <QCoreApplication>

namespace flarestock {

/// Words of copies that go along.
struct CopySaid {
    Q_DECLARE_TR_FUNCTIONS(Copies)
};

/// A refusal without its remedy where that names what is typed on a command line; `instead` is
/// said then.
[[nodiscard]] QString refusalOnDesk(const Problem &problem, const QString &instead);

} // namespace flarestock
