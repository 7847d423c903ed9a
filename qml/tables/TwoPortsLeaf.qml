// SPDX-License-Identifier: MIT
//
// Two ports in words, and what happens when they meet.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ColumnLayout {
    id: root

    required property TwoPorts ports

    function enter() {
        one.enter();
    }

    spacing: Theme.gap

    RowLayout {
        spacing: Theme.wideGap
        Layout.fillWidth: true

        LookUpField {
            id: one

            key: "firstPort"
            name: qsTr("one port")
            hint: qsTr("AN -6 male")
            text: root.ports.first
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onEdited: text => root.ports.first = text
        }
        LookUpField {
            key: "secondPort"
            name: qsTr("the other")
            hint: qsTr("ORB -6 female + o-ring")
            text: root.ports.second
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onEdited: text => root.ports.second = text
        }
    }
    Answer {
        objectName: "portsEmpty"
        visible: !root.ports.met && root.ports.wrong === ""
        text: qsTr("Write both ports in words: family, size, male or female. What lies between "
                   + "them, a ring or sealant, goes behind a plus sign.")
        quiet: true
    }
    Answer {
        objectName: "portsWrong"
        text: root.ports.wrong
        color: Theme.stop
    }
    RowLayout {
        visible: root.ports.met
        spacing: Theme.gap
        Layout.fillWidth: true

        MarkIcon {
            mark: root.ports.mark
            Layout.alignment: Qt.AlignTop
        }
        Answer {
            objectName: "portsVerdict"
            text: root.ports.verdict
            strong: true
        }
    }
    Answer {
        objectName: "portsWhy"
        text: root.ports.why
    }
    Answer {
        objectName: "portsNeeds"
        text: root.ports.needs
    }
    Answer {
        objectName: "portsSource"
        text: root.ports.source
        small: true
        quiet: true
    }
}
