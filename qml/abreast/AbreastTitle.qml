// SPDX-License-Identifier: MIT
//
// What stands side by side; where days are tried, what comes of them, and the two ways out.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ColumnLayout {
    id: root

    required property AbreastDesk abreast
    property bool busy: false
    property string problem

    signal leaveAsked()

    spacing: 4

    RowLayout {
        spacing: Theme.gap

        ColumnLayout {
            spacing: 2
            Layout.fillWidth: true

            Words {
                text: qsTr("Builds by date")
                strong: true
                font.pixelSize: root.width < 1000 ? Theme.headText : Theme.titleText
            }
            Words {
                objectName: "abreastAbout"
                text: root.abreast.about
                quiet: true
                small: root.width < 1000
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
        }
        GroupButton {
            objectName: "shown-0"
            text: qsTr("Shared or short")
            checked: root.abreast.shown === 0
            onClicked: root.abreast.shown = 0
        }
        GroupButton {
            objectName: "shown-1"
            text: qsTr("All parts")
            checked: root.abreast.shown === 1
            onClicked: root.abreast.shown = 1
        }
        GroupButton {
            objectName: "shown-2"
            visible: root.abreast.trying
            text: qsTr("What changes: %1").arg(root.abreast.changedCount)
            checked: root.abreast.shown === 2
            onClicked: root.abreast.shown = 2
        }
        DeskButton {
            objectName: "leaveAbreast"
            text: qsTr("Back to the build  Esc")
            framed: false
            onClicked: root.leaveAsked()
        }
    }
    Rectangle {
        visible: root.abreast.trying
        color: Theme.cautionFill
        border.color: Theme.caution
        radius: Theme.corner
        implicitHeight: tried.implicitHeight + 12
        Layout.fillWidth: true

        RowLayout {
            id: tried

            anchors.fill: parent
            anchors.margins: 6
            anchors.leftMargin: 10
            spacing: Theme.gap

            Words {
                objectName: "abreastOutcome"
                text: root.abreast.loading || root.abreast.outcome === ""
                      ? qsTr("As if: working out who gets what …")
                      : qsTr("As if: %1").arg(root.abreast.outcome)
                wrapMode: Text.Wrap
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
                Layout.fillWidth: true
            }
            DeskButton {
                objectName: "keepDays"
                text: qsTr("Keep these days")
                enabled: !root.busy
                onClicked: root.abreast.keep()
            }
            DeskButton {
                objectName: "daysAsBefore"
                text: qsTr("As before")
                onClicked: root.abreast.asBefore()
            }
        }
    }
    Words {
        objectName: "abreastMeanwhile"
        visible: text !== ""
        text: root.problem !== "" ? root.problem : root.abreast.meanwhile
        color: root.problem !== "" ? Theme.stop : Theme.caution
        strong: true
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
        Layout.fillWidth: true
    }
}
