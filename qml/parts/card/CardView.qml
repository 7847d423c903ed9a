// SPDX-License-Identifier: MIT
//
// The card in hand: its ports in words beside its drawing, what each port meets, what its maker
// says, and what it has to do with others.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property PartsDesk parts

    readonly property PartPanel part: parts.panel
    readonly property bool wide: flick.width > 540
    readonly property bool low: flick.height < 460

    signal gone()
    signal asked(string deed)

    function enter() {
        flick.forceActiveFocus(Qt.TabFocusReason);
    }

    /// What the port in hand meets comes into sight below its tag, as far as there is room.
    function showMeetings() {
        if (!ports.inHand || flick.moving)
            return;
        const tag = ports.inHand.mapToItem(flick.contentItem, 0, 0).y - 3;
        const end = column.y + meetings.y + meetings.height - flick.height + 8;
        flick.contentY = Math.max(flick.contentY, Math.min(tag, end));
    }

    Timer {
        id: soon // Once the lines are laid out.

        interval: 0
        onTriggered: root.showMeetings()
    }
    InSight {
        id: sight

        flick: flick
    }
    Flickable {
        id: flick

        objectName: "cardView"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: Gaps.fill(qsTr("card of %1, %2"), root.part.number, root.part.title)
        Keys.onUpPressed: flick.contentY = Math.max(0, contentY - 40)
        Keys.onDownPressed: flick.contentY = Math.min(Math.max(0, contentHeight - height),
                                                      contentY + 40)
        Keys.onEscapePressed: root.gone()

        Column {
            id: column

            x: 12
            y: 10
            width: flick.width - 26
            spacing: root.low ? 5 : 10
            visible: root.part.number !== ""

            CardHead {
                width: column.width
                part: root.part
                offers: root.parts.offers
                onAsked: deed => root.asked(deed)
                onReached: item => sight.show(item)
            }
            GridLayout {
                width: column.width
                columns: root.wide ? 2 : 1
                columnSpacing: 12

                CardPorts {
                    id: ports

                    parts: root.parts
                    visible: root.parts.ports.count > 0
                    Layout.fillWidth: true
                    Layout.preferredWidth: 3
                    Layout.alignment: Qt.AlignTop
                    onReached: item => sight.show(item)
                }
                CardDrawing {
                    number: root.part.number
                    title: root.part.title
                    ports: root.part.portTexts
                    body: root.part.body
                    bend: root.part.bend
                    visible: root.part.body !== ""
                    Layout.fillWidth: true
                    Layout.preferredWidth: 2
                    Layout.preferredHeight: root.parts.ports.count > 2 ? 240 : root.low ? 142 : 170
                    Layout.alignment: Qt.AlignTop
                }
            }
            MeetingList {
                id: meetings

                width: column.width
                port: root.parts.portWords
                meetings: root.parts.meetings
                source: root.parts.portSource
                visible: root.parts.port !== ""
                onPortChanged: soon.restart()
                onHeightChanged: soon.restart()
            }
            Flow {
                width: column.width
                spacing: 6

                Repeater {
                    model: root.parts.facts

                    FactTag {
                        widest: column.width
                    }
                }
            }
            GridLayout {
                width: column.width
                columns: root.wide ? 2 : 1
                columnSpacing: 28

                CardLines {
                    lines: root.parts.trade
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.alignment: Qt.AlignTop
                }
                CardLines {
                    lines: root.parts.links
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.alignment: Qt.AlignTop
                }
            }
        }
        Words {
            anchors.centerIn: parent
            width: parent.width - 40
            visible: root.part.number === ""
            text: qsTr("No card is in hand. Choose one at the left, or scan a part.")
            quiet: true
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
