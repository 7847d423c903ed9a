// SPDX-License-Identifier: MIT

#include "app/paper/columns.h"

#include <QFontMetricsF>

#include <algorithm>
#include <numeric>

namespace flarestock {

namespace {

double longestWord(const QString &text, const QFontMetricsF &metrics)
{
    double longest = 0;
    for (const QString &word : text.split(u' '))
        longest = std::max(longest, metrics.horizontalAdvance(word));
    return longest;
}

/// What each column needs at least.
QVector<double> leastWidths(const Paper &paper, const ColumnLetters &letters, QPaintDevice &device)
{
    const QFontMetricsF head(letters.head, &device);
    const QFontMetricsF first(letters.first, &device);
    const QFontMetricsF rest(letters.rest, &device);
    QVector<double> least;
    for (int at = 0; at < paper.columns.size(); ++at) {
        double longest = head.horizontalAdvance(paper.columns[at].title); // One line.
        for (const QStringList &row : paper.rows) {
            const QStringList lines = row[at].split(u'\n');
            for (int line = 0; line < lines.size(); ++line)
                longest = std::max(longest, longestWord(lines[line], line == 0 ? first : rest));
        }
        least.append(longest + 2 * letters.pad + 1); // 1: for what is rounded.
    }
    return least;
}

} // namespace

QVector<double> columnWidths(const Paper &paper, double room, const ColumnLetters &letters,
                             QPaintDevice &device)
{
    QVector<double> least = leastWidths(paper, letters, device);
    if (std::accumulate(least.begin(), least.end(), 0.0) > room)
        least.fill(0);
    QVector<double> widths(paper.columns.size(), 0);
    QVector<bool> isLeast(paper.columns.size(), false);
    for (bool isNew = true; isNew;) {
        isNew = false;
        double left = room;
        double shares = 0;
        for (int at = 0; at < widths.size(); ++at)
            (isLeast[at] ? left : shares) += isLeast[at] ? -least[at] : paper.columns[at].width;
        for (int at = 0; at < widths.size(); ++at) {
            widths[at] = isLeast[at] ? least[at] : left * paper.columns[at].width / shares;
            if (widths[at] < least[at])
                isNew = isLeast[at] = true;
        }
    }
    return widths;
}

QFont within(const QString &words, QFont font, double room, QPaintDevice &device)
{
    while (font.pixelSize() > 1 && QFontMetricsF(font, &device).horizontalAdvance(words) > room)
        font.setPixelSize(font.pixelSize() - 1);
    return font;
}

} // namespace flarestock
