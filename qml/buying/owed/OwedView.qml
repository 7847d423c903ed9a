// SPDX-License-Identifier: MIT
//
// What suppliers owe at the left; the claim in hand at the right.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property OwedPage page
    property bool busy: false

    signal asked(string deed, string why)
    signal letterAsked(string kind)

    function enter() {
        list.enter();
    }

    RowLayout {
        anchors.fill: parent
        spacing: 12

        ColumnLayout {
            spacing: 6
            Layout.preferredWidth: Math.max(290, Math.min(440, root.width * 0.36))
            Layout.maximumWidth: Layout.preferredWidth
            Layout.fillHeight: true

            Sheet {
                Layout.fillWidth: true
                Layout.fillHeight: true

                BuyingList {
                    id: list

                    anchors.fill: parent
                    rows: root.page.claims
                    selected: root.page.selected
                    nothing: root.page.nothing
                    name: qsTr("claims, %1").arg(root.page.claims.count)
                    focus: true
                    onChosen: key => root.page.selected = key
                    onEntered: panel.enter()
                    delegate: ClaimCard {
                        width: ListView.view.width
                        current: ListView.isCurrentItem
                        inHand: list.inHand
                        onClicked: {
                            list.enter();
                            root.page.selected = key;
                        }
                    }
                }
            }
            DeskButton {
                objectName: "deed-raise"
                text: qsTr("He owes something else")
                enabled: !root.busy
                Layout.fillWidth: true
                onClicked: root.asked("raise", "")
            }
        }
        Sheet {
            Layout.fillWidth: true
            Layout.fillHeight: true

            ClaimPanel {
                id: panel

                anchors.fill: parent
                page: root.page
                busy: root.busy
                onAsked: (deed, why) => root.asked(deed, why)
                onLetterAsked: kind => root.letterAsked(kind)
                onGone: list.enter()
            }
        }
    }
}
