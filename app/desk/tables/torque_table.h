// SPDX-License-Identifier: MIT
//
// TorqueTable: how tight a nut or stud is turned, by each published table, of a port or size that
// somebody types. A figure never goes without its source, and none is made out of two.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"
#include "model/ports/torque.h"

#include <QStringList>

namespace flarestock {

class TorqueTable : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString port READ port WRITE setPort NOTIFY changed)
    Q_PROPERTY(int on READ on WRITE setOn NOTIFY changed)
    Q_PROPERTY(int metal READ metal WRITE setMetal NOTIFY changed)
    Q_PROPERTY(QStringList nuts READ nuts NOTIFY said)
    Q_PROPERTY(QStringList metals READ metals NOTIFY said)
    Q_PROPERTY(bool read READ hasRead NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString differ READ differ NOTIFY changed)
    Q_PROPERTY(QString advice READ advice NOTIFY said)
    Q_PROPERTY(QString wrong READ wrong NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *torques READ torques CONSTANT)
public:
    explicit TorqueTable(QObject *parent = nullptr);

    [[nodiscard]] QString port() const { return m_port; }
    void setPort(const QString &typed); ///< "ORB -8 male", "an -6"
    [[nodiscard]] int on() const { return m_on; }
    void setOn(int nut); ///< Of nuts(): what a flare nut holds.
    [[nodiscard]] int metal() const { return m_metal; }
    void setMetal(int metal); ///< Of metals().
    [[nodiscard]] static QStringList nuts();
    [[nodiscard]] static QStringList metals();

    [[nodiscard]] bool hasRead() const { return !m_heading.isEmpty(); }
    /// "ORB -6 male, all of steel"; without a row: that no table has it.
    [[nodiscard]] QString heading() const { return m_heading; }
    [[nodiscard]] QString differ() const { return m_differ; } ///< Empty: the tables agree.
    [[nodiscard]] static QString advice();
    /// Why it does not read; empty where it does, or nothing is typed.
    [[nodiscard]] QString wrong() const { return m_wrong; }
    [[nodiscard]] Rows *torques() { return &m_torques; }

    void setUnits(Units units);
    /// Says it once more: in another language.
    void say();

Q_SIGNALS:
    void changed();
    void said();

private:
    void lookUp();
    [[nodiscard]] Row rowOf(const Torque &torque, std::size_t at) const;

    QString m_port;
    int m_on = 0;
    int m_metal = 0;
    Units m_units = Units::Metric;
    QString m_heading;
    QString m_differ;
    QString m_wrong;
    Rows m_torques; ///< torque other says source
};

} // namespace flarestock
