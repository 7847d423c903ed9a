// SPDX-License-Identifier: MIT
//
// What is known of the line in hand: who wants it, what is on its way, who sells it; and below it
// what the shop should know besides.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property LackingPage page

    signal gone()

    function enter() {
        flick.forceActiveFocus(Qt.TabFocusReason);
    }

    Flickable {
        id: flick

        objectName: "lackingPanel"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: root.page.part === "" ? qsTr("no line is in hand")
                                               : Gaps.fill(qsTr("%1, %2"),
                                                           root.page.part, root.page.what)
        Keys.onUpPressed: flick.contentY = Math.max(0, contentY - 40)
        Keys.onDownPressed: flick.contentY = Math.min(Math.max(0, contentHeight - height),
                                                      contentY + 40)
        Keys.onEscapePressed: root.gone()

        Column {
            id: column

            x: 12
            y: 10
            width: flick.width - 26
            spacing: 8

            PartNumber { // Smaller where it is long: here all of it is read.
                objectName: "lackingPart"
                visible: text !== ""
                width: column.width
                text: root.page.part
                font.pixelSize: Theme.titleText
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 8
            }
            Sentence {
                visible: text !== ""
                width: column.width
                sentence: root.page.what
            }
            Repeater {
                model: Steps {
                    of: root.page.facts
                }

                FactLine {
                    width: column.width
                }
            }
            Words {
                visible: root.page.notes.length > 0
                width: column.width
                topPadding: 6
                text: qsTr("To know besides")
                strong: true
                color: Theme.accent
            }
            Repeater {
                model: root.page.notes

                Words {
                    required property string modelData

                    width: column.width
                    text: modelData
                    small: true
                    quiet: true
                    wrapMode: Text.Wrap
                    Accessible.role: Accessible.StaticText
                    Accessible.name: text
                }
            }
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
