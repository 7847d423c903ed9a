// SPDX-License-Identifier: MIT

#pragma once

#include <QCoreApplication>

namespace flarestock {

/// Words of what a hand does with stock.
struct DeedWords {
    Q_DECLARE_TR_FUNCTIONS(StockDeed)
};

} // namespace flarestock
