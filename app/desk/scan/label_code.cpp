// SPDX-License-Identifier: MIT

#include "app/desk/scan/label_code.h"

namespace flarestock {

LabelCode LabelCode::of(const QString &code)
{
    const QString all = code.trimmed();
    const auto equals = all.indexOf(u'=');
    if (equals < 0)
        return {all, {}};
    return {all.left(equals).trimmed(), all.mid(equals + 1).trimmed()};
}

bool LabelCode::means(const QString &ofPart, const QString &ofLot) const
{
    const auto same = [](const QString &a, const QString &b) {
        return !a.isEmpty() && a.compare(b, Qt::CaseInsensitive) == 0;
    };
    if (lot.isEmpty())
        return same(part, ofPart) || same(part, ofLot);
    return same(part, ofPart) && same(lot, ofLot);
}

} // namespace flarestock
