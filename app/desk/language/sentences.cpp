// SPDX-License-Identifier: MIT

#include "app/desk/language/sentences.h"

#include <QFile>
#include <QHash>
#include <QMutex>
#include <QRegularExpression>

#include <algorithm>
#include <memory>
#include <vector>

namespace flarestock {

namespace {

constexpr int DeepestPlace = 4; ///< A place in a place in a place …

/// A line of a table that has places.
struct Pattern {
    QString other;
    QString longest; ///< Its longest piece without a place: what lacks that cannot match.
    int letters = 0; ///< Those that are not places.
    QRegularExpression form;
};

const QRegularExpression &placeForm()
{
    static const QRegularExpression form(QStringLiteral("%(\\d)"));
    return form;
}

Pattern patternOf(const QString &english, const QString &other)
{
    Pattern pattern;
    pattern.other = other;
    QString form = QStringLiteral("^");
    qsizetype from = 0;
    const auto addPiece = [&](const QString &piece) {
        form += QRegularExpression::escape(piece);
        pattern.letters += static_cast<int>(piece.size());
        if (piece.size() > pattern.longest.size())
            pattern.longest = piece;
    };
    for (auto at = placeForm().globalMatch(english); at.hasNext();) {
        const auto place = at.next();
        addPiece(english.mid(from, place.capturedStart() - from));
        form += QStringLiteral("(?<a%1>.+?)").arg(place.captured(1));
        from = place.capturedEnd();
    }
    addPiece(english.mid(from));
    pattern.form = QRegularExpression(form + u'$', QRegularExpression::DotMatchesEverythingOption);
    return pattern;
}

class Tables {
public:
    void read(const QString &name, bool isWords)
    {
        QFile file(name);
        if (!file.open(QIODevice::ReadOnly))
            return;
        for (const QString &line : QString::fromUtf8(file.readAll()).split(u'\n')) {
            const auto tab = line.indexOf(u'\t');
            if (tab <= 0 || line.startsWith(u'#'))
                continue;
            add(line.left(tab), line.mid(tab + 1), isWords);
        }
    }
    /// What has most letters is tried first.
    void sort()
    {
        std::stable_sort(m_patterns.begin(), m_patterns.end(),
                         [](const Pattern &a, const Pattern &b) { return a.letters > b.letters; });
    }
    QString said(const QString &english)
    {
        const auto known = m_said.constFind(english);
        if (known != m_said.constEnd())
            return *known;
        const auto word = m_words.constFind(english);
        const QString other = word != m_words.constEnd() ? *word : translated(english, 0);
        QString said = other.isNull() ? english : other;
        if (m_said.size() > SaidMost)
            m_said.clear();
        m_said.insert(english, said);
        return said;
    }

private:
    static constexpr int SaidMost = 20000;

    void add(const QString &english, const QString &other, bool isWord)
    {
        if (isWord)
            m_words.insert(english, other);
        else if (english.contains(placeForm()))
            m_patterns.push_back(patternOf(english, other));
        else
            m_exact.insert(english, other);
    }
    /// Null: no line has it.
    QString translated(const QString &english, int depth) const
    {
        QString whole = asWhole(english, depth);
        if (!whole.isNull() || depth >= DeepestPlace)
            return whole;
        static const QRegularExpression ends(QStringLiteral("(?<=[.!?]) "));
        static const QRegularExpression halves(QStringLiteral("(?<=;) "));
        const QString bySentence = byParts(english, ends, depth);
        return bySentence.isNull() ? byParts(english, halves, depth) : bySentence;
    }
    QString asWhole(const QString &english, int depth) const
    {
        const auto exact = m_exact.constFind(english);
        if (exact != m_exact.constEnd())
            return *exact;
        for (const Pattern &pattern : m_patterns) {
            if (!english.contains(pattern.longest))
                continue;
            const auto match = pattern.form.match(english);
            if (match.hasMatch())
                return filled(pattern, match, depth);
        }
        return {};
    }
    QString filled(const Pattern &pattern, const QRegularExpressionMatch &match, int depth) const
    {
        QString said;
        qsizetype from = 0;
        for (auto at = placeForm().globalMatch(pattern.other); at.hasNext();) {
            const auto place = at.next();
            const QString there = match.captured(u'a' + place.captured(1));
            const QString other = depth < DeepestPlace ? translated(there, depth + 1) : QString();
            said += pattern.other.mid(from, place.capturedStart() - from);
            said += other.isNull() ? there : other;
            from = place.capturedEnd();
        }
        return said + pattern.other.mid(from);
    }
    /// Null: it has no such parts, or none of them is in a table.
    QString byParts(const QString &english, const QRegularExpression &between, int depth) const
    {
        QStringList parts = english.split(between);
        bool isAny = false;
        for (QString &part : parts) {
            const bool isHalf = part.endsWith(u';');
            const QString body = isHalf ? part.chopped(1) : part;
            const QString other = parts.size() > 1 ? translated(body, depth + 1) : QString();
            isAny = isAny || !other.isNull();
            if (!other.isNull())
                part = isHalf ? QString(other + u';') : other;
        }
        return isAny ? parts.join(u' ') : QString();
    }

    QHash<QString, QString> m_words;
    QHash<QString, QString> m_exact;
    std::vector<Pattern> m_patterns;
    QHash<QString, QString> m_said; ///< What was looked for before.
};

QMutex &turn()
{
    static QMutex only;
    return only;
}

std::unique_ptr<Tables> &tables()
{
    static std::unique_ptr<Tables> now;
    return now;
}

} // namespace

void setSentences(const QStringList &sentences, const QStringList &words)
{
    std::unique_ptr<Tables> made;
    if (!sentences.isEmpty()) {
        made = std::make_unique<Tables>();
        for (const QString &name : sentences)
            made->read(name, false);
        for (const QString &name : words)
            made->read(name, true);
        made->sort();
    }
    const QMutexLocker inTurn(&turn());
    tables() = std::move(made);
}

QString inWords(const QString &english)
{
    const QMutexLocker inTurn(&turn());
    return tables() && !english.isEmpty() ? tables()->said(english) : english;
}

QString inWords(std::string_view english)
{
    return inWords(QString::fromUtf8(english.data(), static_cast<qsizetype>(english.size())));
}

} // namespace flarestock
