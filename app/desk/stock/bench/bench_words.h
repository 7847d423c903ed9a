// SPDX-License-Identifier: MIT

#pragma once

#include <QCoreApplication>

namespace flarestock {

/// Words of what a hand does at the bench.
struct BenchWords {
    Q_DECLARE_TR_FUNCTIONS(BenchDeed)
};

} // namespace flarestock
