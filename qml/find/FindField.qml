// SPDX-License-Identifier: MIT
//
// The find field: words in; what has them is on the screen of the area or below the field, and
// below that what of the shop has them elsewhere. Enter goes there.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

TextField {
    id: root

    required property AreaScreen screen // The one that is asked.
    required property FindAnywhere anywhere
    readonly property Rows found: screen ? screen.found : null
    readonly property int nearby: found ? found.count : 0
    readonly property int count: nearby + anywhere.rows.count
    readonly property bool isAnswering: answers.opened
    property int at: -1 // Of all lines that stand below it; -1: none.

    signal wentTo(string kind, string target)
    signal takeBackAsked() // The field has nothing of its own to undo.

    function take(line: int) {
        if (line < 0 && !found)
            return screen.done();
        const here = line < nearby;
        const rows = here ? found : anywhere.rows;
        const row = here ? line : line - nearby;
        const target = line < count ? rows.cell(row, "target") || "" : "";
        if (target === "")
            return; // What to measure next leads nowhere; one types on.
        const kind = rows.cell(row, here ? "kind" : "area");
        root.reset();
        const go = here ? screen.go : root.wentTo;
        go(kind, target);
    }
    /// As if it had been typed.
    function seek(words: string) {
        root.forceActiveFocus(Qt.ShortcutFocusReason);
        root.text = words;
        root.textEdited();
    }
    function putAway() {
        answers.close();
    }
    /// Nothing is sought any more.
    function reset() {
        root.clear();
        answers.close();
        anywhere.find("", []);
        if (screen)
            screen.find("");
    }
    function showAnswers() {
        if (text.trim() !== "" && activeFocus && (found || anywhere.rows.count > 0))
            answers.open();
        else if (!activeFocus || text.trim() === "" || !anywhere.looking)
            answers.close();
    }

    /// The line that Enter takes comes into sight.
    function showLine() {
        const line = here.lineAt(at) || elsewhere.lineAt(at);
        if (!line)
            return;
        const top = line.mapToItem(lines, 0, 0).y;
        if (top < scroller.contentY)
            scroller.contentY = top;
        else if (top + line.height > scroller.contentY + scroller.height)
            scroller.contentY = top + line.height - scroller.height;
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
        anywhere.find(text, screen.ownKinds);
        at = found ? 0 : -1;
        showAnswers();
    }
    onActiveFocusChanged: showAnswers()
    onAtChanged: showLine()
    Keys.onPressed: event => {
        const back = event.matches(StandardKey.Undo); // qmllint disable unqualified
        event.accepted = back && text === "";
        if (event.accepted)
            root.takeBackAsked();
    }
    Keys.onDownPressed: at = Math.min(at + 1, count - 1)
    Keys.onUpPressed: at = Math.max(at - 1, found ? 0 : -1)
    Keys.onReturnPressed: root.take(at)
    Keys.onEnterPressed: root.take(at)
    Keys.onEscapePressed: {
        if (text === "" && screen)
            screen.widen();
        root.reset();
    }

    Connections {
        target: root.anywhere

        function onChanged() {
            root.at = Math.max(root.found ? 0 : -1, Math.min(root.at, root.count - 1));
            root.showAnswers();
        }
    }
    Popup {
        id: answers

        property real room: 560 // Down to the end of the window.

        y: root.height + 4
        width: Math.max(root.width, 420)
        height: Math.min(lines.implicitHeight + 2 * padding, 560, room)
        padding: 4
        closePolicy: Popup.CloseOnPressOutside
        onAboutToShow: {
            scroller.contentY = 0;
            room = root.Window.height - root.mapToItem(null, 0, root.height).y - 12;
        }
        background: Sheet {
            border.color: Theme.ruleStrong
        }

        Flickable {
            id: scroller

            objectName: "foundScroller"
            anchors.fill: parent
            contentHeight: lines.height
            boundsBehavior: Flickable.StopAtBounds
            clip: true
            ScrollBar.vertical: SlimScrollBar {}

            Column {
                id: lines

                width: scroller.width

                FoundList {
                    id: here

                    objectName: "foundHere"
                    width: parent.width
                    rows: root.found
                    first: 0
                    at: root.at
                    nothing: root.screen ? root.screen.foundNothing : ""
                    name: qsTr("found")
                    onTaken: line => root.take(line)
                }
                Words {
                    visible: root.anywhere.rows.count > 0
                    text: qsTr("In the whole shop")
                    small: true
                    quiet: true
                    topPadding: 6
                    leftPadding: 6
                    bottomPadding: 2
                }
                FoundList {
                    id: elsewhere

                    objectName: "foundAnywhere"
                    width: parent.width
                    rows: root.anywhere.rows
                    first: root.nearby
                    at: root.at
                    name: qsTr("found in the whole shop")
                    onTaken: line => root.take(line)
                }
            }
        }
    }
}
