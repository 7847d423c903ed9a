// SPDX-License-Identifier: MIT

#include "app/workshop/clock.h"

#include <QDateTime>
#include <QRandomGenerator>

#include <array>

namespace flarestock {

std::int64_t nowMilliseconds()
{
    return QDateTime::currentMSecsSinceEpoch();
}

MovementId freshId()
{
    std::array<std::uint8_t, 10> random{};
    for (auto &byte : random)
        byte = static_cast<std::uint8_t>(QRandomGenerator::system()->bounded(256));
    return MovementId::make(nowMilliseconds(), random);
}

} // namespace flarestock
