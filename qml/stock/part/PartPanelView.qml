// SPDX-License-Identifier: MIT
//
// The part in hand: drawn from its ports, where its pieces lie, what can be done with them, and
// what else is known of it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property PartPanel part
    required property PartPhoto photo
    required property Rows deeds
    required property Rows more
    property bool busy: false

    signal asked(string deed, string why)
    signal backAsked(string movement, string what)
    signal gone()

    function enter() {
        flick.forceActiveFocus(Qt.TabFocusReason);
    }
    /// Whatever gets the keyboard comes into sight.
    function show(item: Item) {
        const top = item.mapToItem(column, 0, 0).y;
        if (top < flick.contentY)
            flick.contentY = Math.max(0, top - 8);
        else if (top + item.height > flick.contentY + flick.height - 16)
            flick.contentY = top + item.height - flick.height + 24;
    }

    Flickable {
        id: flick

        objectName: "partPanel"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: Gaps.fillAll(qsTr("%1, %2. %3"),
                                      [root.part.number, root.part.title, root.part.sum])
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
            visible: root.part.number !== ""

            PartHead {
                width: column.width
                part: root.part
                photo: root.photo
            }
            Words {
                width: column.width
                topPadding: 4
                text: qsTr("Where it lies")
                strong: true
            }
            Words {
                objectName: "stockSum"
                width: column.width
                text: root.part.sum
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
            Flow {
                width: column.width
                spacing: 6
                visible: root.part.lying.count > 0

                Repeater {
                    model: Steps {
                        of: root.part.lying
                    }

                    BinTag {
                        id: tag

                        required property string key

                        width: amount.length > 9 ? column.width : (column.width - 6) / 2
                        checked: key === root.part.pieces
                        onClicked: root.part.pieces = key
                        onActiveFocusChanged: {
                            if (activeFocus)
                                root.show(tag);
                        }
                    }
                }
            }
            Flow {
                width: column.width
                spacing: 6

                Repeater {
                    model: Steps {
                        of: root.deeds
                    }

                    DeedButton {
                        id: button

                        enabled: !root.busy
                        onClicked: root.asked(key, detail)
                        onActiveFocusChanged: {
                            if (activeFocus)
                                root.show(button);
                        }
                    }
                }
                Repeater {
                    model: Steps {
                        of: root.more
                    }

                    DeedButton {
                        id: besides

                        enabled: !root.busy
                        onClicked: root.asked(key, detail)
                        onActiveFocusChanged: {
                            if (activeFocus)
                                root.show(besides);
                        }
                    }
                }
            }
            OverTimePicture {
                width: column.width
                time: root.part.time
            }
            Repeater {
                model: Steps {
                    of: root.part.lines
                }

                CardLine {
                    width: column.width
                    onBackAsked: root.backAsked(back, title)
                    onReached: item => root.show(item)
                }
            }
            DeskButton {
                id: more

                objectName: "allEvents"
                visible: root.part.hasMore
                framed: false
                small: true
                text: root.part.allShown ? qsTr("fewer ▴") : qsTr("all that happened ▾")
                onClicked: root.part.allShown = !root.part.allShown
                onActiveFocusChanged: {
                    if (activeFocus)
                        root.show(more);
                }
            }
            Words {
                width: column.width
                visible: text !== ""
                text: root.part.problem !== "" ? root.part.problem
                    : root.part.reading ? qsTr("Reading what happened …") : ""
                small: true
                color: root.part.problem !== "" ? Theme.stop : Theme.quiet
                wrapMode: Text.Wrap
            }
        }
        Words {
            anchors.centerIn: parent
            width: parent.width - 40
            visible: root.part.number === ""
            text: qsTr("No part is in hand. Choose one at the left, or scan it.")
            quiet: true
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
