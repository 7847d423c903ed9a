// SPDX-License-Identifier: MIT

#include "app/desk/shop/aside.h"

#include <QThreadPool>

namespace flarestock {

void letGoAside(std::shared_ptr<const void> last)
{
    QThreadPool::globalInstance()->start([held = std::move(last)]() mutable { held.reset(); });
}

} // namespace flarestock
