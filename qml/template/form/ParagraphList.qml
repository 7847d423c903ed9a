// SPDX-License-Identifier: MIT
//
// The paragraphs of a template's text; the one in hand is marked, and whatever is wrong in one.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

GroupedList {
    id: root

    required property TemplateForm form

    function follow() {
        const row = root.form.paragraphs.rowOf(root.form.chosen);
        if (row < 0 || row === currentIndex)
            return;
        currentIndex = row;
        positionViewAtIndex(row, ListView.Contain);
    }

    objectName: "paragraphList"
    model: form.paragraphs
    onCurrentIndexChanged: {
        const key = form.paragraphs.cell(currentIndex, "key");
        if (activeFocus && key !== undefined)
            form.choose(key);
    }
    Accessible.role: Accessible.List
    Accessible.name: qsTr("paragraphs of the template")
    Keys.onDeletePressed: form.remove()
    section.property: "section"

    Connections {
        target: root.form

        function onChanged() {
            root.follow();
        }
    }
    delegate: AbstractButton {
        id: line

        required property string key
        required property string title
        required property string detail
        required property bool wrong
        readonly property bool chosen: root.form.chosen === key

        objectName: "paragraph"
        activeFocusOnTab: false // The arrow keys lead there.
        width: root.width - 8
        implicitHeight: Theme.target
        hoverEnabled: true
        Accessible.role: Accessible.ListItem
        Accessible.name: wrong ? Gaps.fill(qsTr("%1, %2, something is wrong"), title, detail)
                               : Gaps.fill(qsTr("%1, %2"), title, detail)
        onClicked: {
            root.forceActiveFocus(Qt.MouseFocusReason);
            root.form.choose(key);
        }

        background: Rectangle {
            radius: Theme.corner
            color: line.chosen || line.hovered ? Theme.accentFill : "transparent"
            border.color: Theme.accent
            border.width: line.activeFocus ? Theme.ring : 0
        }
        contentItem: Column {
            topPadding: 3
            leftPadding: 8

            Words {
                width: parent.width - 16
                text: (line.wrong ? "▸ " : "") + line.title
                strong: line.chosen
                color: line.wrong ? Theme.stop : Theme.ink
                elide: Text.ElideRight
            }
            Words {
                width: parent.width - 16
                text: line.detail
                small: true
                quiet: true
                elide: Text.ElideRight
            }
        }
    }
}
