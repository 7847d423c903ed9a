// SPDX-License-Identifier: MIT
//
// Opened: the joint, station or run that is open on the map, as QML sees it.

#pragma once

#include "app/desk/opened/detail.h"
#include "app/desk/rows/rows.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

/// What a change would bring, in words, and by how many lines, joints and stops it is worse:
/// "total +12.40 USD; leaves short: HE-8".
struct Weighed {
    QString says;
    int worseBy = 0;
};

class Opened : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString spot READ spot NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed)
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    Q_PROPERTY(QString better READ better NOTIFY changed)
    Q_PROPERTY(QString betterPick READ betterPick NOTIFY changed)
    Q_PROPERTY(QString waysTitle READ waysTitle NOTIFY changed)
    Q_PROPERTY(QString slot READ slotName NOTIFY changed)
    Q_PROPERTY(int mark READ mark NOTIFY changed)
    Q_PROPERTY(bool toBuy READ toBuy NOTIFY changed)
    Q_PROPERTY(bool picked READ picked NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *pieces READ pieces CONSTANT)
    Q_PROPERTY(flarestock::Rows *ways READ ways CONSTANT)
public:
    explicit Opened(QObject *parent = nullptr)
        : QObject(parent), m_pieces(pieceCells()), m_ways(wayCells())
    {
    }

    [[nodiscard]] QString spot() const { return m_spot; }
    [[nodiscard]] QString title() const { return m_detail.title; }
    [[nodiscard]] QString subtitle() const { return m_detail.subtitle; }
    [[nodiscard]] QString standing() const { return m_detail.standing; }
    [[nodiscard]] QString why() const { return m_detail.why; }
    [[nodiscard]] QString source() const { return m_detail.source; }
    [[nodiscard]] QString better() const { return m_detail.better; }
    [[nodiscard]] QString betterPick() const { return m_detail.betterPick; }
    [[nodiscard]] QString waysTitle() const { return m_detail.waysTitle; }
    [[nodiscard]] QString slotName() const { return m_detail.slot; }
    [[nodiscard]] int mark() const { return m_detail.mark; }
    [[nodiscard]] bool toBuy() const { return m_detail.toBuy; }
    [[nodiscard]] bool picked() const { return m_detail.picked; }
    [[nodiscard]] Rows *pieces() { return &m_pieces; }
    [[nodiscard]] Rows *ways() { return &m_ways; }

    /// `spot` as LineMap names it; empty closes.
    void show(const QString &spot, Detail detail);
    /// Adds to a way what picking it would bring. The way is there (asserted).
    void weigh(int way, const Weighed &weighed);

Q_SIGNALS:
    void changed();

private:
    QString m_spot;
    Detail m_detail;
    Rows m_pieces;
    Rows m_ways;
};

} // namespace flarestock
