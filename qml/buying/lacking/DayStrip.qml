// SPDX-License-Identifier: MIT
//
// The days on which something arrives or is needed, side by side: arrivals above the line of days,
// needs hanging below it, and below them how much is short from then on. Left and right walk the
// days, Enter goes to what is short by that day.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Rows days
    required property string part
    property bool roomy: true

    readonly property real columnWidth: Math.max(168, Math.min(230, list.width
                                                                    / Math.max(1, list.count)))

    signal chosen(string day)

    function choose() {
        const column = list.currentItem as DayColumn;
        if (column)
            root.chosen(column.key);
    }

    implicitHeight: roomy ? 214 : 166
    implicitWidth: 600

    ListView {
        id: list

        objectName: "dayStrip"
        anchors.fill: parent
        anchors.margins: 2
        model: root.days
        displayMarginEnd: unfolding.margin
        orientation: ListView.Horizontal
        clip: true
        focus: true
        activeFocusOnTab: true
        keyNavigationEnabled: true
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        Accessible.role: Accessible.List
        Accessible.name: qsTr("days on which something comes or is needed")
        Keys.onReturnPressed: root.choose()
        Keys.onEnterPressed: root.choose()

        Unfolding {
            id: unfolding

            list: list
            across: true
            step: 3 * root.columnWidth
        }

        delegate: DayColumn {
            objectName: "dayColumn"
            width: root.columnWidth
            height: list.height
            ofPart: root.part
            roomy: root.roomy
            current: ListView.isCurrentItem && list.activeFocus
            onClicked: {
                list.currentIndex = index;
                root.chosen(key);
            }
        }
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
