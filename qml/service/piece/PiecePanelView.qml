// SPDX-License-Identifier: MIT
//
// The position in hand: what is there and how it stands, what can be done to it, what is looked out
// for before its system is opened, and what is known of it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property ServiceDesk service
    property bool busy: false

    signal asked(string deed)
    signal backAsked(string done, string what)
    signal gone()

    function enter() {
        flick.forceActiveFocus(Qt.TabFocusReason);
    }

    InSight {
        id: sight

        flick: flick
    }
    Flickable {
        id: flick

        objectName: "piecePanel"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: root.service.pieceTitle === "" ? qsTr("no position is in hand")
            : Gaps.fillAll(qsTr("%1, %2. %3"),
                           [root.service.pieceTitle, root.service.pieceAbout,
                            root.service.pieceState])
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

            PieceHead {
                width: column.width
                visible: root.service.pieceTitle !== ""
                service: root.service
            }
            Words {
                width: column.width
                visible: root.service.pieceTitle === ""
                text: qsTr("No position is in hand. Choose one at the left, or scan its lot.")
                quiet: true
                wrapMode: Text.Wrap
            }
            Flow {
                width: column.width
                spacing: 6

                Repeater {
                    model: Steps {
                        of: root.service.form.deeds
                    }

                    DeskButton {
                        id: button

                        required property string key
                        required property string label
                        required property string letter
                        required property string detail
                        required property string says

                        objectName: "work-" + key
                        text: Gaps.fill(qsTr("%1  %2"), label, letter)
                        padding: 11
                        enabled: !root.busy
                        Accessible.name: says
                        Accessible.description: detail
                        onClicked: root.asked(key)
                        onActiveFocusChanged: {
                            if (activeFocus)
                                sight.show(button);
                        }
                    }
                }
            }
            Words {
                objectName: "noWash"
                width: column.width
                visible: text !== ""
                text: root.service.form.noWash
                small: true
                strong: true
                color: Theme.caution
                wrapMode: Text.Wrap
            }
            OpeningCautionList {
                width: column.width
                visible: root.service.opened !== ""
                title: root.service.opened
                cautions: root.service.cautions
            }
            Repeater {
                model: Steps {
                    of: root.service.lines
                }

                CardLine {
                    width: column.width
                    onBackAsked: root.backAsked(back, says)
                    onReached: item => sight.show(item)
                }
            }
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
