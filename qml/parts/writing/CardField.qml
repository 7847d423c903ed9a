// SPDX-License-Identifier: MIT
//
// One field of a card; what is wrong with it stands below it, in a line that is kept for it. What
// is longer lies over what follows, as long as the field has the keyboard.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property string key
    required property string title
    required property string form
    required property var choices
    required property string value
    required property string hint
    required property string problem

    signal filledIn(var filled)
    signal entered()
    signal reached(Item item)

    implicitHeight: field.height + 2 + metrics.height
    z: activeFocus ? 1 : 0
    onActiveFocusChanged: {
        if (activeFocus)
            root.reached(root);
    }

    FormField {
        id: field

        width: root.width
        focus: true
        key: root.key
        title: root.title
        form: root.form
        choices: root.choices
        value: root.value
        hint: root.hint
        onFilledChanged: root.filledIn(filled)
        onEntered: root.entered()
    }
    FontMetrics {
        id: metrics

        font: wrong.font
    }
    Rectangle {
        visible: wrong.visible && wrong.lineCount > 1
        anchors.fill: wrong
        anchors.margins: -3
        radius: Theme.corner
        color: Theme.stopFill
        border.color: Theme.stop
    }
    Words {
        id: wrong

        objectName: "wrong-" + root.key
        y: field.height + 2
        width: root.width
        visible: text !== ""
        text: root.problem
        small: true
        color: Theme.stop
        wrapMode: Text.Wrap
        maximumLineCount: root.activeFocus ? 8 : 1
        elide: Text.ElideRight
        Accessible.role: Accessible.AlertMessage
        Accessible.name: Gaps.fill(qsTr("%1: %2"), root.title, text)
    }
}
