// SPDX-License-Identifier: MIT
//
// A sheet that is laid over the screen for one piece of work: its title, what it is about, why the
// last try failed, the work. Escape puts it away. Where there are fields, the work itself says why,
// at its foot, so that no field moves.

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Screens

Popup {
    id: root

    property string title
    property string about
    property string problem
    property bool saidBelow: false // The work says the problem.
    property real widest: 940
    readonly property Item ground: Overlay.overlay
    default property alias work: column.data

    modal: true
    focus: true
    anchors.centerIn: ground
    width: Math.min(ground ? ground.width - 60 : widest, widest)
    height: Math.min(ground ? ground.height - 60 : 600, column.implicitHeight + 2 * padding)
    padding: Theme.wideGap

    background: Sheet {
        border.color: Theme.ruleStrong
    }
    contentData: ColumnLayout {
        id: column

        anchors.fill: parent
        spacing: Theme.gap

        Words {
            visible: text !== ""
            text: root.title
            strong: true
            font.pixelSize: Theme.headText
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Words {
            objectName: "sheetAbout"
            visible: text !== ""
            text: root.about
            quiet: true
            wrapMode: Text.Wrap
            Layout.fillWidth: true
        }
        Words {
            objectName: "sheetProblem"
            visible: text !== "" && !root.saidBelow
            text: root.problem
            color: Theme.stop
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
            Layout.fillWidth: true
        }
    }
}
