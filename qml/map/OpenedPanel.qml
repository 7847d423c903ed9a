// SPDX-License-Identifier: MIT
//
// A joint, a station or a run taken apart: how it stands, its pieces in the order of the flow with
// where each lies, and what else could be there.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Opened opened
    property bool canOpenAgain: false // The build has got pieces.

    signal picked(string slot, string value)
    signal letGo(string slot)
    signal openedAgain(string spot) // A joint that is opened for service.

    /// Whatever had the focus in here before may be gone by now.
    function enter() {
        flick.forceActiveFocus(Qt.TabFocusReason);
    }

    InSight {
        flick: flick
        within: column
        keysOnly: true
    }
    Flickable {
        id: flick

        objectName: "openedPanel"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: qsTr("opened: %1").arg(root.opened.title)
        Keys.onUpPressed: flick.contentY = Math.max(0, contentY - 40)
        Keys.onDownPressed: flick.contentY = Math.min(Math.max(0, contentHeight - height),
                                                      contentY + 40)

        Column {
            id: column

            x: 12
            y: 10
            width: flick.width - 26
            spacing: 6

            OpenedHead {
                width: column.width
                opened: root.opened
            }
            Item {
                visible: root.opened.picked
                width: column.width
                height: Theme.target

                Words {
                    anchors.verticalCenter: parent.verticalCenter
                    text: qsTr("⚑ picked by you: it stays")
                    small: true
                    strong: true
                }
                DeskButton {
                    objectName: "letGo"
                    anchors.right: parent.right
                    text: qsTr("let go")
                    Accessible.name: qsTr("let the pick go")
                    onClicked: {
                        root.letGo(root.opened.slot);
                        root.enter();
                    }
                }
            }
            BetterSlip {
                visible: root.opened.betterPick !== ""
                width: column.width
                words: root.opened.better
                pick: root.opened.betterPick
                onTaken: {
                    root.picked(root.opened.slot, root.opened.betterPick);
                    root.enter();
                }
            }
            Repeater {
                model: Steps {
                    of: root.opened.pieces
                }

                PieceLine {
                    width: column.width
                }
            }
            Words {
                visible: text !== ""
                width: column.width
                text: root.opened.why
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
            Words {
                visible: root.opened.source !== ""
                width: column.width
                text: qsTr("source: %1").arg(root.opened.source)
                small: true
                quiet: true
                font.italic: true
                wrapMode: Text.Wrap
            }
            DeskButton {
                objectName: "openJoint"
                visible: root.canOpenAgain && root.opened.spot.startsWith("joint|")
                text: qsTr("Opened again for service …")
                Accessible.description: qsTr("Fresh rings and washers go in; the old ones are "
                                             + "used up.")
                onClicked: root.openedAgain(root.opened.spot)
            }
            Words {
                visible: root.opened.ways.count > 0
                width: column.width
                topPadding: 6
                text: root.opened.waysTitle
                strong: true
                wrapMode: Text.Wrap
            }
            Repeater {
                model: Steps {
                    of: root.opened.ways
                }

                WayButton {
                    required property string pick

                    objectName: "way"
                    width: column.width
                    onClicked: {
                        root.picked(root.opened.slot, pick);
                        root.enter();
                    }
                }
            }
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
