// SPDX-License-Identifier: MIT

#pragma once

#include <QCoreApplication>

namespace flarestock {

/// Words of what a part's panel says.
struct CardWords {
    Q_DECLARE_TR_FUNCTIONS(PartCard)
};

} // namespace flarestock
