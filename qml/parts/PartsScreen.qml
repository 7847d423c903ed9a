// SPDX-License-Identifier: MIT
//
// Parts: what is asked for above, the cards at the left, the one in hand at the right.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property PartsDesk parts

    readonly property bool roomy: height >= 700

    signal asked(string deed)

    function enter() {
        list.enter();
    }

    Connections {
        target: root.parts

        function onArrived() {
            card.enter();
        }
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        anchors.topMargin: root.roomy ? 12 : 8
        anchors.bottomMargin: root.roomy ? 12 : 8
        spacing: root.roomy ? 10 : 6

        PartsTitle {
            parts: root.parts
            onAsked: deed => root.asked(deed)
            Layout.fillWidth: true
        }
        NarrowStrip {
            fields: root.parts.narrowing
            isNarrowed: root.parts.narrowed
            allName: qsTr("show all cards again")
            Layout.fillWidth: true
            onNarrowed: (field, choice) => root.parts.narrow(field, choice)
            onCleared: root.parts.clear()
        }
        RowLayout {
            spacing: 12
            Layout.fillWidth: true
            Layout.fillHeight: true

            Sheet {
                Layout.preferredWidth: Math.max(280, Math.min(420, root.width * 0.3))
                Layout.fillHeight: true

                CardList {
                    id: list

                    anchors.fill: parent
                    rows: root.parts.rows
                    selected: root.parts.selected
                    nothing: root.parts.nothing
                    focus: true
                    onChosen: number => root.parts.selected = number
                    onEntered: card.enter()
                }
            }
            Sheet {
                border.color: Theme.ruleStrong
                Layout.fillWidth: true
                Layout.fillHeight: true

                CardView {
                    id: card

                    anchors.fill: parent
                    parts: root.parts
                    onGone: list.enter()
                    onAsked: deed => root.asked(deed)
                }
            }
        }
    }
}
