// SPDX-License-Identifier: MIT
//
// File to be: where something is going to be written: a folder, a name as it is typed, and what
// stands against it: no name, no such folder, a file that is there already.

#pragma once

#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class FileToBe : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QUrl folder READ folder WRITE setFolder NOTIFY changed)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed)
    Q_PROPERTY(QStringList filters READ filters WRITE setFilters NOTIFY changed)
    Q_PROPERTY(QStringList kinds READ kinds NOTIFY changed)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY changed)
    Q_PROPERTY(QUrl url READ url NOTIFY changed)
    Q_PROPERTY(QString where READ where NOTIFY changed)
    Q_PROPERTY(bool there READ isThere NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    /// In the person's folder, without a name.
    explicit FileToBe(QObject *parent = nullptr);

    [[nodiscard]] QUrl folder() const { return QUrl::fromLocalFile(m_folder); }
    void setFolder(const QUrl &folder);
    [[nodiscard]] QString name() const { return m_name; } ///< As it is typed.
    void setName(const QString &name);
    /// What kinds of files it may be: "PDF (*.pdf)".
    [[nodiscard]] QStringList filters() const { return m_filters; }
    void setFilters(const QStringList &filters);
    /// "PDF", "CSV": of each of the filters.
    [[nodiscard]] QStringList kinds() const;
    /// By the ending of the name; the first where it has none of them.
    [[nodiscard]] int kind() const;
    void setKind(int kind);

    /// The name ends as its kind does, whether that was typed or not.
    [[nodiscard]] QUrl url() const;
    [[nodiscard]] QString where() const; ///< The folder, as the person's system writes it.
    [[nodiscard]] bool isThere() const;  ///< A file of this name.
    /// Why nothing can be written there, and what to do; empty where it can.
    [[nodiscard]] QString problem() const;

    /// Looks again whether it is there.
    Q_INVOKABLE void look() { Q_EMIT changed(); }

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] QString ending(int kind) const;
    [[nodiscard]] QString path() const;

    QString m_folder;
    QString m_name;
    QStringList m_filters;
};

} // namespace flarestock
