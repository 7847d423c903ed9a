// SPDX-License-Identifier: MIT

#include "app/desk/words/sentence.h"

namespace flarestock {

QString Sentence::of(const QString &text, const QString &one, const QString &two,
                     const QString &three)
{
    return ofAll(text, {one, two, three});
}

QString Sentence::ofAll(const QString &text, const QStringList &fillings)
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
