// SPDX-License-Identifier: MIT
//
// What is short: the strip of days above, the list at the left, the line in hand at the right.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property LackingPage page
    property bool roomy: true

    function enter() {
        table.enter();
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: root.roomy ? 10 : 6

        Sheet {
            implicitHeight: strip.implicitHeight
            Layout.fillWidth: true

            DayStrip {
                id: strip

                anchors.fill: parent
                days: root.page.days
                part: root.page.part
                roomy: root.roomy
                onChosen: day => {
                    root.page.goToDay(day);
                    table.enter();
                }
            }
        }
        RowLayout {
            spacing: 12
            Layout.fillWidth: true
            Layout.fillHeight: true

            Sheet {
                Layout.fillWidth: true
                Layout.fillHeight: true

                LackingTable {
                    id: table

                    anchors.fill: parent
                    page: root.page
                    focus: true
                    onEntered: panel.enter()
                }
            }
            Sheet {
                Layout.preferredWidth: Math.max(280, Math.min(400, root.width * 0.29))
                Layout.fillHeight: true

                LackingPanel {
                    id: panel

                    anchors.fill: parent
                    page: root.page
                    onGone: table.enter()
                }
            }
        }
    }
}
