// SPDX-License-Identifier: MIT
//
// The text of a template with its line numbers; what is wrong with it stands below, and each place
// that is wrong is marked at its line. The Tab key leaves it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property TemplateEditor editor
    readonly property real lineHigh: area.lineCount > 0 ? area.contentHeight / area.lineCount : 16

    property int shown: -1 // A place that was gone to, as long as the cursor stays there.

    function goTo(place: int) {
        area.cursorPosition = Math.min(place, area.length);
        root.shown = area.cursorPosition;
        root.show();
    }
    function show() { // Also once less of the text is seen, because something is said below it.
        if (root.shown < 0)
            return;
        const box = area.positionToRectangle(root.shown);
        flick.contentY = Math.max(0, Math.min(box.y - flick.height / 3,
                                              flick.contentHeight - flick.height));
        flick.contentX = 0;
    }

    function leave(forwards: bool) {
        area.nextItemInFocusChain(forwards).forceActiveFocus(forwards ? Qt.TabFocusReason
                                                                      : Qt.BacktabFocusReason);
    }
    /// A long text is drawn as far as it was seen; only moving it tells it that more is seen now.
    function drawAgain() {
        flick.contentY += 1;
        flick.contentY -= 1;
    }

    implicitHeight: 200
    onHeightChanged: again.restart()
    onWidthChanged: again.restart()
    onVisibleChanged: again.restart()

    Timer {
        id: again

        interval: 0
        onTriggered: {
            root.show();
            root.drawAgain();
        }
    }
    Connections {
        target: root.editor

        function onWentTo(place: int) {
            root.goTo(place);
        }
    }
    Sheet {
        id: paper

        width: parent.width
        height: parent.height - (faults.visible ? faults.height + 4 : 0)
        onHeightChanged: again.restart()

        Item {
            id: numbers

            readonly property real wide: figures.implicitWidth + 14

            width: wide
            height: parent.height
            clip: true

            Repeater {
                model: root.editor.faults

                Rectangle {
                    required property int line

                    visible: line > 0
                    y: area.topPadding + 2 + (line - 1) * root.lineHigh - flick.contentY
                    width: numbers.width
                    height: root.lineHigh
                    color: Theme.stopFill

                    Words {
                        text: "▸"
                        color: Theme.stop
                        strong: true
                        anchors.verticalCenter: parent.verticalCenter
                    }
                }
            }
            Words {
                id: figures

                x: 8
                y: area.topPadding + 2 - flick.contentY
                text: Array.from({ length: area.lineCount }, (none, at) => at + 1).join("\n")
                quiet: true
                horizontalAlignment: Text.AlignRight
                font: area.font
                Accessible.ignored: true
            }
        }
        Flickable {
            id: flick

            anchors.fill: parent
            anchors.leftMargin: numbers.wide
            anchors.margins: 2
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            onMovementStarted: root.shown = -1
            ScrollBar.vertical: SlimScrollBar {}
            ScrollBar.horizontal: SlimScrollBar {}
            TextArea.flickable: TextArea {
                id: area

                objectName: "templateText"
                focus: true
                textFormat: TextEdit.PlainText
                wrapMode: TextEdit.NoWrap
                color: Theme.ink
                selectionColor: Theme.selection
                selectedTextColor: Theme.ink
                font.family: "DejaVu Sans Mono"
                font.pixelSize: Theme.text
                selectByMouse: true
                Accessible.name: qsTr("text of the template")
                Accessible.description: qsTr("Tab leaves it.")
                background: null
                onCursorPositionChanged: {
                    if (cursorPosition !== root.shown)
                        root.shown = -1;
                }
                Keys.onTabPressed: root.leave(true)
                Keys.onBacktabPressed: root.leave(false)
                Component.onCompleted: root.editor.sheet = area.textDocument
            }
        }
        FocusFrame {
            visible: area.activeFocus
        }
    }
    FaultList {
        id: faults

        anchors.bottom: parent.bottom
        width: parent.width
        visible: root.editor.faults.count > 0
        editor: root.editor
        onWentTo: row => {
            root.editor.goToFault(row);
            area.forceActiveFocus(Qt.OtherFocusReason);
        }
    }
}
