// SPDX-License-Identifier: MIT
//
// Steps: a list as a view shows it that makes a line for every row at once (a Repeater). Where
// somebody sits at the window the rows come one by one, as the Pace has time for them.
//
//   Repeater { model: Steps { of: part.lines } }

#pragma once

#include "app/desk/rows/rows.h"

#include <QPointer>
#include <QSet>

namespace flarestock {

class Steps : public Rows {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(flarestock::Rows *of READ of WRITE setOf NOTIFY ofChanged)
public:
    explicit Steps(QObject *parent = nullptr) : Rows({}, parent) {}

    [[nodiscard]] Rows *of() const { return m_of; }
    void setOf(Rows *of);

Q_SIGNALS:
    void ofChanged();
    void settled(); ///< All of it is shown as it is.

private:
    void follow();
    void lookAnew();
    [[nodiscard]] bool removeOne();
    [[nodiscard]] bool goOn();

    QPointer<Rows> m_of;
    std::vector<Row> m_to;  ///< What it becomes.
    QSet<QString> m_keys;   ///< Of it.
    std::size_t m_at = 0;   ///< So many rows are as they will be.
    bool m_isStale = false; ///< The list has changed since m_to was taken.
    bool m_isOnTheWay = false;
};

} // namespace flarestock
