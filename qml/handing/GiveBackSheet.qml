// SPDX-License-Identifier: MIT
//
// What the build was issued and did not use goes back to its place.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property Rows inCar
    property bool busy: false

    signal another(int row)
    signal given(int row, string typed, string to, string now)

    title: qsTr("Give back")
    about: qsTr("How much of it, to which place (type or scan the bin), and what it is from now "
                + "on. Where another piece went into the car instead, say which.")
    onOpened: list.forceActiveFocus()

    ListView {
        id: list

        objectName: "inCarList"
        model: root.inCar
        clip: true
        cacheBuffer: 0
        activeFocusOnTab: true
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.List
        Accessible.name: qsTr("what is in the car")
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: 60
        Layout.preferredHeight: contentHeight
        ScrollBar.vertical: SlimScrollBar {}
        delegate: InCarLine {
            width: list.width
            busy: root.busy
            onAnother: root.another(index)
            onGiven: (typed, to, now) => root.given(index, typed, to, now)
        }

        Words {
            anchors.centerIn: parent
            visible: list.count === 0
            text: qsTr("Nothing of this build is in the car now.")
            quiet: true
        }
        FocusFrame {
            visible: list.activeFocus
        }
    }
    DeskButton {
        text: qsTr("Back to the build  Esc")
        framed: false
        onClicked: root.close()
    }
}
