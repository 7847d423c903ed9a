// SPDX-License-Identifier: MIT
//
// The order in hand: what can be done with it, its lines with what has come, its sums, its steps.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property OrdersPage page
    property bool busy: false

    readonly property var papers: [
        { kind: "pdf", label: qsTr("PDF") },
        { kind: "english", label: qsTr("PDF in English") }, // For a supplier abroad.
        { kind: "csv", label: qsTr("CSV") },
        { kind: "xlsx", label: qsTr("Spreadsheet") }
    ]

    signal asked(string deed, string why)
    signal paperAsked(string kind)
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

        objectName: "orderPanel"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: Gaps.fill(qsTr("order %1, %2"), root.page.heading, root.page.state)
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
            visible: root.page.heading !== ""

            Words {
                objectName: "orderHeading"
                width: column.width
                text: root.page.heading
                strong: true
                font.pixelSize: Theme.titleText
                wrapMode: Text.Wrap
            }
            Words {
                objectName: "orderState"
                width: column.width
                text: root.page.state
                quiet: true
            }
            BuyingDeeds {
                width: column.width
                deeds: root.page.deeds
                busy: root.busy
                onAsked: (deed, why) => root.asked(deed, why)
            }
            Flow {
                width: column.width
                spacing: 6

                Words {
                    height: Theme.target
                    verticalAlignment: Text.AlignVCenter
                    rightPadding: 6
                    text: root.page.writing ? qsTr("Being written …") : qsTr("Write it to a file:")
                    quiet: true
                }
                Repeater {
                    model: root.papers

                    DeskButton {
                        required property var modelData

                        objectName: "paper-" + modelData.kind
                        text: modelData.label
                        padding: 11
                        visible: modelData.kind !== "english" || Look.language !== "en"
                        enabled: !root.page.writing
                        Accessible.name: qsTr("write the order as %1").arg(modelData.label)
                        onClicked: root.paperAsked(modelData.kind)
                    }
                }
            }
            Repeater {
                model: Steps {
                    of: root.page.lines
                }

                OrderLineTag {
                    id: line

                    required property string key

                    width: column.width
                    checked: key === root.page.line
                    onClicked: root.page.line = key
                    onActiveFocusChanged: {
                        if (activeFocus)
                            sight.show(line);
                    }
                }
            }
            Repeater {
                model: Steps {
                    of: root.page.sums
                }

                SlipSum {
                    width: column.width
                }
            }
            Rectangle {
                width: column.width
                height: 1
                color: Theme.rule
            }
            Repeater {
                model: Steps {
                    of: root.page.facts
                }

                FactLine {
                    width: column.width
                }
            }
        }
        Words {
            anchors.centerIn: parent
            width: parent.width - 40
            visible: root.page.heading === ""
            text: qsTr("No order is in hand. Choose one at the left, or scan its number.")
            quiet: true
            wrapMode: Text.Wrap
            horizontalAlignment: Text.AlignHCenter
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
