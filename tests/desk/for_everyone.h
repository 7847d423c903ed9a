// SPDX-License-Identifier: MIT
//
// For everyone: what every screen has to pass, whoever sits at it: Tab comes round and passes what
// counts, every control has a name, no word is cut, a hand in a glove hits what it wants. Each says
// what is wrong as a sentence, and nothing where all is well.

#pragma once

#include "tests/desk/named_controls.h"
#include "tests/desk/seen.h"

#include <QSize>
#include <QTest>

namespace flarestock {

using PartNames = std::vector<const char *>;

struct TabRound {
    Qt::Key tab = Qt::Key_Tab; ///< Or Key_Backtab.
    int most = 70;             ///< Presses after which it has come round.
};
/// From the find field on.
inline QString missedByTab(QQuickWindow &window, const PartNames &parts, const TabRound &round = {})
{
    QQuickItem *first = seen(window, "findField");
    first->forceActiveFocus();
    QStringList passed;
    for (int at = 0; at < round.most; ++at) {
        QTest::keyClick(&window, round.tab);
        passed.append(focusName(window));
        if (window.activeFocusItem() == first)
            break;
    }
    if (window.activeFocusItem() != first)
        return QStringLiteral("it does not come round: ") + passed.join(u' ');
    for (const char *part : parts)
        if (!passed.contains(QLatin1String(part)))
            return QLatin1String(part) + QStringLiteral(" is not in ") + passed.join(u' ');
    return {};
}

/// At least so many controls are expected.
inline QString namelessControls(QQuickWindow &window, int least)
{
    int controls = 0;
    QStringList nameless;
    visit(QAccessible::queryAccessibleInterface(&window), controls, nameless);
    return controls > least ? nameless.join(u'\n')
                            : QStringLiteral("only %1 controls").arg(controls);
}

/// The column "size": small, middling, as it opens.
inline void addScreenSizes()
{
    QTest::addColumn<QSize>("size");
    for (const QSize size : {QSize(1024, 640), QSize(1280, 720), QSize(1440, 900)})
        QTest::newRow(QByteArray::number(size.width()).constData()) << size;
}

/// The words that were on the screen, one look after the other.
class WordsSeen {
public:
    /// `listed`: the name of lines that may be longer than their column, as all of them is said
    /// elsewhere.
    void look(const QQuickWindow &window, const PartNames &listed = {})
    {
        for (const QQuickItem *one : allSeen(window)) {
            if (!one->property("truncated").isValid() || isIn(one, listed))
                continue;
            ++m_texts;
            const QString text = one->property("text").toString();
            if (one->property("truncated").toBool())
                m_cut.append(text);
            // A column of single letters: nobody can read that either.
            if (const int lines = one->property("lineCount").toInt(); lines > 3)
                if (2 * lines >= text.size())
                    m_cut.append(QStringLiteral("a letter a line: ") + text);
        }
    }
    /// More than so many texts are expected.
    [[nodiscard]] QString cut(int least = 100)
    {
        m_cut.removeDuplicates();
        return m_texts > least ? m_cut.join(u'\n') : QStringLiteral("only %1 texts").arg(m_texts);
    }

private:
    static bool isIn(const QQuickItem *item, const PartNames &parts)
    {
        for (; item != nullptr; item = item->parentItem())
            for (const char *part : parts)
                if (item->objectName() == QLatin1String(part))
                    return true;
        return false;
    }

    int m_texts = 0;
    QStringList m_cut;
};

/// 40 px: common practice for a hand in a glove, no source.
inline QString tooSmallForGloves(const QQuickWindow &window, const PartNames &parts)
{
    for (const char *part : parts) {
        const QQuickItem *target = seen(window, part);
        if (target == nullptr || target->height() < 40 || target->width() < 40)
            return QLatin1String(part) +
                   (target ? QStringLiteral(" is too small") : QStringLiteral(" is not there"));
    }
    return {};
}

} // namespace flarestock
