// SPDX-License-Identifier: MIT
//
// Look: light or dark, in which units figures are said and in which language. Made by main(), or a
// test, before the engine, so that the first frame is in the right one.

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
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY inInchesChanged)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
public:
    /// Not default-constructible: QML would otherwise make a second one of its own.
    explicit Look(QObject *parent);
    ~Look() override;
    /// The look that exists (asserted).
    static Look *create(QQmlEngine *engine, QJSEngine *);

    [[nodiscard]] bool isDark() const { return m_dark; }
    void setDark(bool dark);
    /// in, psi, gph and gal; else mm, bar, L/h and L.
    [[nodiscard]] bool inInches() const { return m_inInches; }
    void setInInches(bool inInches);
    /// "en" or "de". One that there is not changes nothing.
    [[nodiscard]] QString language() const { return m_language; }
    void setLanguage(const QString &language);

Q_SIGNALS:
    void darkChanged();
    void inInchesChanged();
    void languageChanged();

private:
    bool m_dark = false;
    bool m_inInches = false;
    QString m_language = QStringLiteral("en");
};

} // namespace flarestock
