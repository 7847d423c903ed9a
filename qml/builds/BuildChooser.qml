// SPDX-License-Identifier: MIT
//
// The builds that the shop has planned, and its templates to try out.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

Popup {
    id: root

    required property Rows builds

    signal chosen(string key)
    signal templatesAsked()

    function take(row: int) {
        root.close();
        root.chosen(builds.cell(row, "key"));
    }

    modal: true
    focus: true
    anchors.centerIn: Overlay.overlay
    width: 560
    height: Math.min(parent ? parent.height - 80 : 480,
                     list.contentHeight + foot.height + 2 * padding)
    padding: 8
    onOpened: list.forceActiveFocus()

    background: Sheet {
        border.color: Theme.ruleStrong
    }
    GroupedList {
        id: list

        width: parent.width
        height: parent.height - foot.height
        objectName: "buildList"
        model: root.builds
        Accessible.role: Accessible.List
        Accessible.name: qsTr("builds and templates")
        Keys.onReturnPressed: root.take(currentIndex)
        Keys.onEnterPressed: root.take(currentIndex)
        section.property: "section"
        delegate: BuildLine {
            width: list.width
            current: ListView.isCurrentItem
            onClicked: root.take(index)
        }
    }
    DeskButton {
        id: foot

        objectName: "toTemplates"
        anchors.bottom: parent.bottom
        text: qsTr("Change templates, or make one…")
        framed: false
        Accessible.description: qsTr("Ctrl+T")
        onClicked: {
            root.close();
            root.templatesAsked();
        }
    }
}
