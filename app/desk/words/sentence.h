// SPDX-License-Identifier: MIT
//
// Sentence: a text of the translators whose gaps, %1 to %9, are filled all at once. What goes into
// one may hold a "%2" itself, as addresses and file names do; filled one after the other, a later
// one would land in it.
//
//   Sentence.of(qsTr("%1: %2"), title, detail)

#pragma once

#include <QJSEngine>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class Sentence : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
public:
    using QObject::QObject;

    Q_INVOKABLE static QString of(const QString &text, const QString &one, const QString &two,
                                  const QString &three = {});
    Q_INVOKABLE static QString ofAll(const QString &text, const QStringList &fillings);
};

} // namespace flarestock
