// SPDX-License-Identifier: MIT
//
// Tables: what is looked up without a build: two ports, a torque, a line.

#pragma once

#include "app/desk/tables/line_table.h"
#include "app/desk/tables/torque_table.h"
#include "app/desk/tables/two_ports.h"

namespace flarestock {

class Tables : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::TwoPorts *ports READ ports CONSTANT)
    Q_PROPERTY(flarestock::TorqueTable *torques READ torques CONSTANT)
    Q_PROPERTY(flarestock::LineTable *line READ line CONSTANT)
public:
    explicit Tables(QObject *parent = nullptr) : QObject(parent) {}

    [[nodiscard]] TwoPorts *ports() { return &m_ports; }
    [[nodiscard]] TorqueTable *torques() { return &m_torques; }
    [[nodiscard]] LineTable *line() { return &m_line; }

    /// In units and language as they are now.
    Q_INVOKABLE void begin(bool inInches)
    {
        const Units units = inInches ? Units::Inch : Units::Metric;
        m_ports.say();
        m_torques.setUnits(units);
        m_line.setUnits(units);
    }

private:
    TwoPorts m_ports;
    TorqueTable m_torques;
    LineTable m_line;
};

} // namespace flarestock
