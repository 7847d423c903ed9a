// SPDX-License-Identifier: MIT
//
// The context under which the words of a detail are translated.

#pragma once

#include <QCoreApplication>

namespace flarestock {

struct DetailWords {
    Q_DECLARE_TR_FUNCTIONS(Detail)
};

} // namespace flarestock
