// SPDX-License-Identifier: MIT
//
// Why the last try failed, at the foot of a sheet beside its buttons. Its place is kept while there
// is nothing to say, so that nothing on the sheet moves.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

Item {
    id: root

    required property string text
    property int linesKept: 3

    implicitHeight: Math.max(words.implicitHeight, kept.implicitHeight)
    Layout.fillWidth: true

    Words { // As high as so many lines.
        id: kept

        visible: false
        text: "\n".repeat(root.linesKept - 1)
    }
    Words {
        id: words

        objectName: "sheetProblem"
        visible: text !== ""
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: root.text
        color: Theme.stop
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
}
