// SPDX-License-Identifier: MIT
//
// Gaps: those of a translator's text, %1 to %9, are filled all at once. What goes into one may hold
// a "%2" itself, as addresses and file names do; filled one after the other, the next would land in
// it.
//
//   Gaps.fill(qsTr("%1: %2"), title, detail)
//   Gaps.fillAll(qsTr("%1, %2, %3"), [kind, title, detail])

#pragma once

#include <QJSEngine>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class Gaps : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
public:
    using QObject::QObject;

    Q_INVOKABLE static QString fill(const QString &text, const QString &one, const QString &two);
    Q_INVOKABLE static QString fillAll(const QString &text, const QStringList &fillings);
};

} // namespace flarestock
