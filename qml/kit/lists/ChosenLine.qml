// SPDX-License-Identifier: MIT
//
// The line in hand of a list is the one whose key is chosen, whatever becomes of its rows. As a
// timer it waits until the view has heard of a change; where somebody sits at the window, the first
// line of a list that opens has a frame of its own, and does not come with its rows.

import QtQuick
import Flarestock.Desk

Timer {
    id: root

    required property ItemView list
    required property var rows // They know the rowOf(key).
    required property string chosen

    readonly property bool opens: Pace.inSteps && list.currentItem === null
    readonly property Connections changes: Connections {
        target: root.rows

        function onRowsInserted() {
            root.restart();
        }
        function onRowsRemoved() {
            root.restart();
        }
        function onRowsMoved() {
            root.restart();
        }
        function onDataChanged() {
            root.restart();
        }
        function onModelReset() {
            root.restart();
        }
    }

    signal followed()

    function follow() {
        list.currentIndex = rows.rowOf(chosen);
        root.followed();
    }

    interval: opens ? 12 : 0
    onTriggered: {
        if (opens && !Pace.takesFrame())
            restart();
        else
            follow();
    }
    onChosenChanged: {
        if (opens)
            restart();
        else
            follow();
    }
    Component.onCompleted: follow()
}
