// SPDX-License-Identifier: MIT
//
// The find field: words in, the places of this build that have them below it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

TextField {
    id: root

    required property Rows found

    signal sought(string typed)
    signal chosen(string kind, string target)

    function take(row: int) {
        if (row < 0 || row >= found.count || found.cell(row, "target") === "")
            return; // What to measure next leads nowhere; one types on.
        root.chosen(found.cell(row, "kind"), found.cell(row, "target"));
        root.clear();
        answers.close();
    }

    implicitHeight: Theme.target
    leftPadding: 12
    color: Theme.ink
    placeholderTextColor: Theme.quiet
    placeholderText: qsTr("Find: pump, -8 orb, 10 micron, od 22.1 mm  (Ctrl+F)")
    font.family: Theme.family
    font.pixelSize: Theme.text
    selectByMouse: true
    Accessible.name: qsTr("Find in this build")
    background: Rectangle {
        radius: Theme.corner
        color: Theme.surface
        border.color: root.activeFocus ? Theme.accent : Theme.ruleStrong
        border.width: root.activeFocus ? Theme.ring : 1
    }
    onTextEdited: {
        root.sought(text);
        list.currentIndex = 0;
        if (text.trim() === "")
            answers.close();
        else
            answers.open();
    }
    Keys.onDownPressed: list.incrementCurrentIndex()
    Keys.onUpPressed: list.decrementCurrentIndex()
    Keys.onReturnPressed: root.take(list.currentIndex)
    Keys.onEnterPressed: root.take(list.currentIndex)
    Keys.onEscapePressed: {
        root.clear();
        root.sought("");
        answers.close();
    }

    Popup {
        id: answers

        y: root.height + 4
        width: Math.max(root.width, 420)
        height: Math.max(Theme.target, list.contentHeight) + 2 * padding
        padding: 4
        closePolicy: Popup.CloseOnPressOutside
        background: Sheet {
            border.color: Theme.ruleStrong
        }

        ListView {
            id: list

            anchors.fill: parent
            clip: true
            cacheBuffer: 0
            model: root.found
            Accessible.role: Accessible.List
            Accessible.name: qsTr("found in this build")
            delegate: FoundLine {
                width: list.width
                current: ListView.isCurrentItem
                onClicked: root.take(index)
            }

            Words {
                anchors.centerIn: parent
                visible: list.count === 0
                text: qsTr("Nothing in this build has all these words.")
                quiet: true
            }
        }
    }
}
