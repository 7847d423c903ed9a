// SPDX-License-Identifier: MIT

#include "app/desk/words/gaps.h"

namespace flarestock {

QString Gaps::fill(const QString &text, const QString &one, const QString &two)
{
    return fillAll(text, {one, two});
}

QString Gaps::fillAll(const QString &text, const QStringList &fillings)
{
    QString said;
    for (qsizetype at = 0; at < text.size(); ++at) {
        const int gap = text[at] == u'%' && at + 1 < text.size() ? text[at + 1].digitValue() : 0;
        if (gap < 1 || gap > fillings.size()) {
            said += text[at];
            continue;
        }
        said += fillings[gap - 1];
        ++at;
    }
    return said;
}

} // namespace flarestock
