// SPDX-License-Identifier: MIT
//
// Builds by date: the builds that are planned side by side, who gets the pieces that are not enough
// for all, and what other days would change.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    readonly property AbreastDesk abreast: Desk.abreast
    readonly property bool busy: Desk.pen.busy
    readonly property bool roomy: height >= 700

    signal leaveAsked()
    signal buyAsked(string part)
    signal openAsked(string build)
    signal explained(string why)

    function enter() {
        table.enter();
    }
    /// On from the cell in hand.
    function goOn() {
        if (root.abreast.lacks)
            root.buyAsked(root.abreast.part);
        else if (root.abreast.build !== "")
            root.openAsked(root.abreast.build);
    }

    Keys.onEscapePressed: root.leaveAsked()

    ColumnLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.wideGap
        anchors.rightMargin: Theme.wideGap
        anchors.topMargin: root.roomy ? 12 : 6
        anchors.bottomMargin: root.roomy ? 10 : 4
        spacing: root.roomy ? 10 : 4

        AbreastTitle {
            abreast: root.abreast
            busy: root.busy
            problem: Desk.pen.problem
            Layout.fillWidth: true
            onLeaveAsked: root.leaveAsked()
        }
        Sheet {
            Layout.fillWidth: true
            Layout.fillHeight: true

            AbreastTable {
                id: table

                anchors.fill: parent
                focus: true
                abreast: root.abreast
                columns: widths
                roomy: root.roomy
                onEntered: root.goOn()
                onDayAsked: build => daySheet.ask(build)
            }
            AbreastColumns {
                id: widths

                width: parent.width - 2
                count: root.abreast.heads.count
                roomy: root.roomy
            }
        }
        AbreastKey {
            visible: root.roomy
        }
        AbreastFoot {
            abreast: root.abreast
            busy: root.busy
            roomy: root.roomy
            Layout.fillWidth: true
            onBuyAsked: root.buyAsked(root.abreast.part)
            onOpenAsked: root.openAsked(root.abreast.build)
            onExplained: why => root.explained(why)
        }
    }
    DaySheet {
        id: daySheet

        abreast: root.abreast
        onClosed: root.enter()
    }
}
