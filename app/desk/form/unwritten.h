// SPDX-License-Identifier: MIT
//
// Unwritten: what is filled in on the sheets of this desk and not in the shop yet, a sheet by its
// name. It is told while it grows, so that it is there again at the next start where the desk ends
// in the midst of it: a killed program, a lost current. Who opens the sheet again has it filled in
// as it was. Written down, or put away by its person, it is gone.

#pragma once

#include <QDate>
#include <QObject>
#include <QTimer>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include <map>

namespace flarestock {

class Unwritten : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString said READ said NOTIFY found)
public:
    /// So long after the last letter it is told.
    static constexpr int AfterMs = 250;
    /// What nobody has opened again by then is let go.
    static constexpr int DaysKept = 14;

    explicit Unwritten(QObject *parent = nullptr);

    /// What waits of this shop, as kept() told it.
    void setShop(const QString &shop, const QString &text);
    [[nodiscard]] const QString &shop() const { return m_shop; }
    /// What stands in a sheet now. `title`: what a person knows it by. Nothing waits of one that is
    /// as it was opened, with what the program itself had filled in.
    void keep(const QString &sheet, const QString &title, const QVariantMap &filled,
              const QVariantMap &asOpened = {});
    /// It is written down, or put away.
    void forget(const QString &sheet);
    /// What stood in the sheet when the desk ended, or went elsewhere, in the midst of it; empty:
    /// nothing did. It is the sheet's from now on.
    [[nodiscard]] QVariantMap takeUp(const QString &sheet);
    /// Which sheets wait, and what to do, as a sentence; empty: none.
    [[nodiscard]] QString said() const;

Q_SIGNALS:
    void found(); ///< Other sheets wait.
    void kept(const QString &shop, const QString &text);

private:
    struct Sheet {
        QString title;
        QVariantMap filled;
        QDate day;
    };
    void tell();
    [[nodiscard]] QString text() const;

    QString m_shop;
    QString m_told;
    std::map<QString, Sheet> m_now;
    std::map<QString, Sheet> m_waiting; ///< Of a desk that ended.
    QTimer m_soon;
};

} // namespace flarestock
