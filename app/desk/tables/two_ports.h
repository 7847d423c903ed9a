// SPDX-License-Identifier: MIT
//
// TwoPorts: what happens when two ports meet that somebody types, at each key: the verdict with its
// reason, what the joint needs, and where that is from.

#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class TwoPorts : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString first READ first WRITE setFirst NOTIFY changed)
    Q_PROPERTY(QString second READ second WRITE setSecond NOTIFY changed)
    Q_PROPERTY(bool met READ isMet NOTIFY changed)
    Q_PROPERTY(int mark READ mark NOTIFY changed)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(QString needs READ needs NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    Q_PROPERTY(QString wrong READ wrong NOTIFY changed)
public:
    explicit TwoPorts(QObject *parent = nullptr) : QObject(parent) {}

    [[nodiscard]] QString first() const { return m_first; }
    void setFirst(const QString &typed); ///< "AN -6 male", "ORB -6 male + o-ring"
    [[nodiscard]] QString second() const { return m_second; }
    void setSecond(const QString &typed);

    [[nodiscard]] bool isMet() const { return !m_verdict.isEmpty(); } ///< Both of them read.
    [[nodiscard]] int mark() const { return m_mark; }                 ///< Of Standing.
    [[nodiscard]] QString verdict() const { return m_verdict; }
    [[nodiscard]] QString why() const { return m_why; }
    [[nodiscard]] QString needs() const { return m_needs; } ///< Empty: nothing.
    [[nodiscard]] QString source() const { return m_source; }
    /// Why one of them does not read; empty where both do, or nothing is typed.
    [[nodiscard]] QString wrong() const { return m_wrong; }

    /// Says it once more: in another language.
    void say();

Q_SIGNALS:
    void changed();

private:
    void meet();

    QString m_first;
    QString m_second;
    int m_mark = 0;
    QString m_verdict;
    QString m_why;
    QString m_needs;
    QString m_source;
    QString m_wrong;
};

} // namespace flarestock
