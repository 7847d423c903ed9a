// SPDX-License-Identifier: MIT

#include "app/command/shop/made_shop.h"

namespace flarestock {

void sayMade(const std::string &to, const Result<ShopFile> &shop, bool json,
             CommandOutcome &outcome)
{
    if (!shop)
        return outcome.refuse(shop.error());
    const auto movements = shop->movements();
    if (!movements)
        return outcome.refuse(movements.error());
    if (json)
        return outcome.print(
            QJsonObject{{QStringLiteral("shop"), jsonText(to)},
                        {QStringLiteral("title"), jsonText(shop->settings().title)},
                        {QStringLiteral("movements"), static_cast<qint64>(movements->size())}});
    outcome.print("made " + to + ": " + shop->settings().title + ", " +
                  counted(movements->size(), "movement") + " of opening stock");
}

} // namespace flarestock
