// SPDX-License-Identifier: MIT
//
// Look: light or dark, for the Theme of the screens. Made by main(), or a test, before the engine,
// so that the first frame is in the right one.

#pragma once

#include <QJSEngine>
#include <QObject>
#include <QtQml/qqmlregistration.h>

class QQmlEngine;

namespace flarestock {

class Look : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool dark READ isDark WRITE setDark NOTIFY darkChanged)
public:
    /// Not default-constructible: QML would otherwise make a second one of its own.
    explicit Look(QObject *parent);
    ~Look() override;
    /// The look that exists (asserted).
    static Look *create(QQmlEngine *engine, QJSEngine *);

    [[nodiscard]] bool isDark() const { return m_dark; }
    void setDark(bool dark);

Q_SIGNALS:
    void darkChanged();

private:
    bool m_dark = false;
};

} // namespace flarestock
