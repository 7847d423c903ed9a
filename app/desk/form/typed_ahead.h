// SPDX-License-Identifier: MIT
//
// Typed ahead: the beginning of a word, typed letter after letter on a list or a closed choice. As
// long as each letter comes soon after the one before, they are one word; after a pause another
// begins. One letter again and again goes from one word that begins with it to the next.
//
//   ahead.find("t", words, 0);   // "tank"
//   ahead.find("e", words, 4);   // "tee"

#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class TypedAhead : public QObject {
    Q_OBJECT
    QML_ELEMENT
public:
    /// Beyond this a word is over; common practice, no source.
    static constexpr qint64 PauseMs = 1000;

    using QObject::QObject;

    /// The word meant by what was typed so far and this letter; -1: none, or it is no letter. `at`:
    /// where one is now, -1 for nowhere.
    Q_INVOKABLE int find(const QString &letter, const QStringList &words, int at);
    /// Brings a choice there as its user would, whatever its index is bound to; in an open list the
    /// word is in hand and not chosen yet.
    Q_INVOKABLE static void bring(QObject *choice, int to);
    /// The words of a choice.
    Q_INVOKABLE static QStringList wordsOf(QObject *choice);

private:
    QString m_typed; ///< Folded.
    QElapsedTimer m_since;
};

} // namespace flarestock
