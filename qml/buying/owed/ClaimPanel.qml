// SPDX-License-Identifier: MIT
//
// The claim in hand: what can be done about it, the letter, and its steps.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property OwedPage page
    property bool busy: false

    signal asked(string deed, string why)
    signal letterAsked(string kind)
    signal gone()

    function enter() {
        flick.forceActiveFocus(Qt.TabFocusReason);
    }

    Flickable {
        id: flick

        objectName: "claimPanel"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: root.page.heading === "" ? qsTr("no claim is in hand")
                                                  : qsTr("claim %1").arg(root.page.heading)
        Keys.onEscapePressed: root.gone()

        Column {
            id: column

            x: 12
            y: 10
            width: flick.width - 26
            spacing: 8
            visible: root.page.heading !== ""

            Words {
                objectName: "claimHeading"
                width: column.width
                text: root.page.heading
                strong: true
                font.pixelSize: Theme.titleText
                wrapMode: Text.Wrap
            }
            BuyingDeeds {
                width: column.width
                deeds: root.page.deeds
                busy: root.busy
                onAsked: (deed, why) => root.asked(deed, why)
            }
            DeskButton {
                objectName: "letter"
                text: root.page.writing ? qsTr("Being written …")
                                        : qsTr("Letter to the supplier, as PDF")
                framed: false
                enabled: !root.page.writing
                onClicked: root.letterAsked("pdf")
            }
            DeskButton {
                objectName: "letterInEnglish"
                text: qsTr("The same in English, as PDF")
                visible: Look.language !== "en" // For a supplier abroad.
                framed: false
                enabled: !root.page.writing
                onClicked: root.letterAsked("english")
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
            text: qsTr("No claim is in hand.")
            quiet: true
            horizontalAlignment: Text.AlignHCenter
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
