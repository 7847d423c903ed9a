// SPDX-License-Identifier: MIT

#include "app/desk/coming/shop_opening.h"

namespace flarestock {

bool ShopOpening::open(const OpenShop &deed, const QString &file, There there)
{
    if (!deed || m_errand.isUnderWay())
        return false;
    m_file = file;
    m_errand.run(
        [this, deed, path = file.toStdString(), told = std::move(there)]() -> Errand::Back {
            const auto shop = std::make_shared<Result<ShopOnDesk>>(deed(path));
            return [this, shop, told] {
                m_file.clear();
                Q_EMIT changed();
                told(std::move(*shop));
            };
        });
    Q_EMIT changed();
    return true;
}

} // namespace flarestock
