// SPDX-License-Identifier: MIT

#pragma once

#include <QCoreApplication>

namespace flarestock {

/// Words of what lies in the trailer's drawers.
struct DrawerWords {
    Q_DECLARE_TR_FUNCTIONS(Trailer)
};

} // namespace flarestock
