// SPDX-License-Identifier: MIT

#pragma once

#include <QCoreApplication>

namespace flarestock {

/// Words of how many spares are carried.
struct CarrySaid {
    Q_DECLARE_TR_FUNCTIONS(Carrying)
};

} // namespace flarestock
