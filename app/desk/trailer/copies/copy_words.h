// SPDX-License-Identifier: MIT

#pragma once

#include "app/desk/words/spoken.h"

#include <QCoreApplication>

namespace flarestock {

/// Words of copies that go along.
struct CopySaid {
    Q_DECLARE_TR_FUNCTIONS(Copies)
};

} // namespace flarestock
