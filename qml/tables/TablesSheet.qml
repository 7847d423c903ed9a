// SPDX-License-Identifier: MIT
//
// What is looked up without a build, on three leaves: two ports, a torque, a line.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property Tables tables
    property int leaf: 0
    readonly property var leaves: [ports, torque, line]

    /// As units and language are now.
    function look() {
        root.tables.begin(Look.inInches);
        root.open();
    }
    function show(which: int) {
        root.leaf = which;
        root.leaves[which].enter();
    }

    title: qsTr("Look up")
    about: [qsTr("What happens when two ports meet, by thread and seat."),
            qsTr("How tight a nut or stud is turned, by each published table."),
            qsTr("What pressure a line takes from a flow, and how fast it flows there.")][leaf]
    widest: 780
    height: ground ? Math.min(ground.height - 60, 560) : 560 // Whatever the answer is.
    onOpened: root.show(root.leaf)

    Row {
        spacing: 4

        GroupButton {
            objectName: "leafPorts"
            text: qsTr("two ports")
            checked: root.leaf === 0
            onClicked: root.show(0)
        }
        GroupButton {
            objectName: "leafTorque"
            text: qsTr("torque")
            checked: root.leaf === 1
            onClicked: root.show(1)
        }
        GroupButton {
            objectName: "leafLine"
            text: qsTr("a line")
            checked: root.leaf === 2
            onClicked: root.show(2)
        }
    }
    TwoPortsLeaf {
        id: ports

        visible: root.leaf === 0
        ports: root.tables.ports
        Layout.fillWidth: true
    }
    TorqueLeaf {
        id: torque

        visible: root.leaf === 1
        table: root.tables.torques
        Layout.fillWidth: true
        Layout.fillHeight: true
    }
    LineLeaf {
        id: line

        visible: root.leaf === 2
        table: root.tables.line
        Layout.fillWidth: true
    }
    Item {
        visible: root.leaf !== 1
        Layout.fillHeight: true
    }
    DeskButton {
        text: qsTr("Back to the cards  Esc")
        framed: false
        onClicked: root.close()
    }
}
