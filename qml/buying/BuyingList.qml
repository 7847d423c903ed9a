// SPDX-License-Identifier: MIT
//
// A list of orders or of claims in groups, one of them in hand: up and down walk it, Enter goes to
// what is known of it.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows rows
    required property string selected
    property string nothing: ""
    property string name: ""
    property alias delegate: list.delegate
    readonly property bool inHand: list.activeFocus

    signal chosen(string key)
    signal entered()

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    function goTo(row: int) {
        const to = Math.max(0, Math.min(list.count - 1, row));
        if (list.count > 0)
            root.chosen(root.rows.cell(to, "key"));
    }

    ChosenLine {
        list: list
        rows: root.rows
        chosen: root.selected
    }
    GroupedList {
        id: list

        objectName: "buyingList"
        anchors.fill: parent
        anchors.margins: 1
        model: root.rows
        focus: true
        keyNavigationEnabled: false
        section.property: "section"
        Accessible.role: Accessible.List
        Accessible.name: root.name
        Keys.onUpPressed: root.goTo(currentIndex - 1)
        Keys.onDownPressed: root.goTo(currentIndex + 1)
        Keys.onReturnPressed: root.entered()
        Keys.onEnterPressed: root.entered()
        Keys.onPressed: event => {
            const steps = {
                [Qt.Key_Home]: 0,
                [Qt.Key_End]: count - 1
            };
            if (steps[event.key] !== undefined) {
                root.goTo(steps[event.key]);
                event.accepted = true;
            }
        }
    }
    Words {
        objectName: "listNothing"
        anchors.centerIn: parent
        width: Math.min(parent.width - 48, 400)
        visible: text !== ""
        text: root.nothing
        quiet: true
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignHCenter
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
