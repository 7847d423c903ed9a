// SPDX-License-Identifier: MIT
//
// One field of a form under its title: written into, or chosen. Enter in a field that is written
// into says that the form is filled in.

import QtQuick
import Flarestock.Screens

FocusScope {
    id: root

    required property string key
    required property string title
    required property string form // "typed", "figure" or "choice"
    required property var choices
    required property string value
    required property string hint

    readonly property bool isTyped: form !== "choice"
    /// What stands in it now: words, or the number of the choice.
    readonly property var filled: isTyped ? written.text : box.currentIndex

    signal entered()

    function write(text: string) {
        written.text = text;
        written.forceActiveFocus(Qt.TabFocusReason);
    }

    function fill(what: var) {
        if (root.isTyped)
            written.text = what;
        else
            box.currentIndex = Number(what);
    }

    implicitHeight: label.height + 3 + (isTyped ? Theme.target : box.height)
    implicitWidth: 260

    Words {
        id: label

        width: root.width
        text: root.title
        small: true
        quiet: true
    }
    InkField {
        id: written

        objectName: "field-" + root.key
        name: root.title
        visible: root.isTyped
        focus: root.isTyped
        y: label.height + 3
        width: root.width
        text: root.isTyped ? root.value : ""
        placeholderText: root.hint
        Accessible.description: root.hint
        Keys.onReturnPressed: root.entered()
        Keys.onEnterPressed: root.entered()
    }
    ChoiceBox {
        id: box

        objectName: "choice-" + root.key
        name: root.title
        visible: !root.isTyped
        focus: !root.isTyped
        y: label.height + 3
        width: root.width
        model: root.choices
        currentIndex: root.isTyped ? -1 : Number(root.value)
    }
}
