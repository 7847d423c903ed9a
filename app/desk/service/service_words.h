// SPDX-License-Identifier: MIT

#pragma once

#include <QCoreApplication>

namespace flarestock {

/// Words of what is in the cars and what is done to it.
struct ServiceWords {
    Q_DECLARE_TR_FUNCTIONS(ServiceDesk)
};

} // namespace flarestock
