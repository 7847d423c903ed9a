// SPDX-License-Identifier: MIT
//
// The find field: words in; below it, or on the screen of the area, what has them.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

TextField {
    id: root

    required property AreaScreen screen // The one that is asked.
    readonly property Rows found: screen ? screen.found : null

    function take(row: int) {
        if (!found)
            return screen.done();
        if (row < 0 || row >= found.count || found.cell(row, "target") === "")
            return; // What to measure next leads nowhere; one types on.
        screen.go(found.cell(row, "kind"), found.cell(row, "target"));
        root.clear();
        answers.close();
    }
    /// As if it had been typed.
    function seek(words: string) {
        root.forceActiveFocus(Qt.ShortcutFocusReason);
        root.text = words;
        root.textEdited();
    }
    /// Nothing is sought any more.
    function reset() {
        root.clear();
        answers.close();
        if (screen)
            screen.find("");
    }

    implicitHeight: Theme.target
    leftPadding: 12
    color: Theme.ink
    placeholderTextColor: Theme.quiet
    placeholderText: screen ? screen.findHint : ""
    font.family: Theme.family
    font.pixelSize: Theme.text
    selectByMouse: true
    Accessible.name: screen ? screen.findName : qsTr("Find")
    background: Rectangle {
        radius: Theme.corner
        color: Theme.surface
        border.color: root.activeFocus ? Theme.accent : Theme.ruleStrong
        border.width: root.activeFocus ? Theme.ring : 1
    }
    onTextEdited: {
        screen.find(text);
        list.currentIndex = 0;
        if (text.trim() === "" || !found)
            answers.close();
        else
            answers.open();
    }
    Keys.onDownPressed: list.incrementCurrentIndex()
    Keys.onUpPressed: list.decrementCurrentIndex()
    Keys.onReturnPressed: root.take(list.currentIndex)
    Keys.onEnterPressed: root.take(list.currentIndex)
    Keys.onEscapePressed: root.reset()

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
            Accessible.name: qsTr("found")
            delegate: FoundLine {
                width: list.width
                current: ListView.isCurrentItem
                onClicked: root.take(index)
            }

            Words {
                anchors.centerIn: parent
                visible: list.count === 0
                text: root.screen ? root.screen.foundNothing : ""
                quiet: true
            }
        }
    }
}
