// SPDX-License-Identifier: MIT

#include "app/desk/form/typed_ahead.h"

#include <QVariant>

namespace flarestock {

namespace {

/// The first from there on, then from the beginning; -1: none.
int beginningWith(const QString &typed, const QStringList &words, int from)
{
    const int count = static_cast<int>(words.size());
    for (int step = 0; step < count; ++step) {
        const int at = (from + step) % count;
        if (words[at].toCaseFolded().startsWith(typed))
            return at;
    }
    return -1;
}

bool isOpen(const QObject &choice)
{
    const auto *popup = choice.property("popup").value<QObject *>();
    return popup != nullptr && popup->property("visible").toBool();
}

} // namespace

int TypedAhead::find(const QString &letter, const QStringList &words, int at)
{
    const bool goesOn = m_since.isValid() && m_since.elapsed() < PauseMs;
    if (letter.size() != 1 || !letter.front().isPrint() || words.isEmpty())
        return -1;
    if (!goesOn)
        m_typed.clear();
    if (letter.front().isSpace() && m_typed.isEmpty())
        return -1; // It opens, or presses.
    const QString typed = m_typed + letter.toCaseFolded();
    int found = beginningWith(typed, words, typed.size() == 1 ? at + 1 : qMax(0, at));
    const bool isAgain = typed.count(typed.front()) == typed.size();
    if (found < 0 && isAgain)
        found = beginningWith(typed.left(1), words, at + 1);
    if (found < 0 && letter.front().isSpace())
        return -1;
    m_typed = typed;
    m_since.start();
    return found < 0 ? at : found;
}

void TypedAhead::bring(QObject *choice, int to)
{
    if (choice == nullptr)
        return;
    if (!isOpen(*choice)) {
        if (choice->property("currentIndex").toInt() == to)
            return;
        choice->setProperty("currentIndex", to);
        QMetaObject::invokeMethod(choice, "activated", Q_ARG(int, to));
        return;
    }
    int at = choice->property("highlightedIndex").toInt();
    for (; at < to; ++at)
        QMetaObject::invokeMethod(choice, "incrementCurrentIndex");
    for (; at > to; --at)
        QMetaObject::invokeMethod(choice, "decrementCurrentIndex");
}

QStringList TypedAhead::wordsOf(QObject *choice)
{
    QStringList words;
    const int count = choice == nullptr ? 0 : choice->property("count").toInt();
    for (int at = 0; at < count; ++at) {
        QString word;
        QMetaObject::invokeMethod(choice, "textAt", Q_RETURN_ARG(QString, word), Q_ARG(int, at));
        words.append(word);
    }
    return words;
}

} // namespace flarestock
