// SPDX-License-Identifier: MIT
//
// Copies that go along: which are away, taking one, and what the one that came back brings.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property CopiesDesk copies

    signal takeAsked()
    signal lookAsked()
    signal releaseAsked(string trip, string name, var places)
    signal endAsked(string trip, string name)

    function enter() {
        flick.forceActiveFocus(Qt.OtherFocusReason);
    }

    Timer {
        id: soon // Once what is to come into sight has its place.

        interval: 0
        onTriggered: sight.show(problem)
    }
    InSight {
        id: sight

        flick: flick
        within: column
    }
    Flickable {
        id: flick

        objectName: "copies"
        anchors.fill: parent
        anchors.margins: 2
        contentHeight: column.height + 24
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: qsTr("copies that go along: %1").arg(root.copies.awayWords)
        Keys.onUpPressed: contentY = Math.max(0, contentY - 40)
        Keys.onDownPressed: contentY = Math.min(Math.max(0, contentHeight - height), contentY + 40)

        Column {
            id: column

            x: 12
            y: 10
            width: flick.width - 26
            spacing: 8

            Words {
                width: column.width
                text: root.copies.barrier !== "" ? root.copies.barrier
                    : qsTr("A copy is the shop in one file for another machine, without a network. "
                           + "What lies in its drawers is the copy's until it is back: here nobody "
                           + "moves, counts or promises it meanwhile.")
                color: root.copies.barrier !== "" ? Theme.caution : Theme.quiet
                wrapMode: Text.Wrap
            }
            Words {
                id: problem

                objectName: "copyProblem"
                width: column.width
                visible: text !== ""
                text: root.copies.looked ? "" : root.copies.problem
                color: Theme.stop
                wrapMode: Text.Wrap
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
                onTextChanged: soon.restart()
            }
            CopyProgress {
                width: column.width
                visible: root.copies.busy
                words: root.copies.progress
                share: root.copies.share
                canStop: root.copies.canStop
                onStopped: root.copies.stop()
            }
            Flow {
                width: column.width
                visible: root.copies.barrier === ""
                spacing: Theme.gap

                DeskButton {
                    objectName: "takeCopy"
                    text: qsTr("Take a copy along…")
                    enabled: !root.copies.busy
                    onClicked: root.takeAsked()
                }
                DeskButton {
                    objectName: "lookCopy"
                    text: qsTr("A copy came back: look at it…")
                    enabled: !root.copies.busy
                    onClicked: root.lookAsked()
                }
            }
            BroughtView {
                width: column.width
                visible: root.copies.looked
                copies: root.copies
                onRefused: item => sight.show(item)
            }
            Words {
                width: column.width
                topPadding: 4
                visible: root.copies.trips.count > 0
                text: qsTr("Copies that went along: %1").arg(root.copies.awayWords)
                strong: true
            }
            Repeater {
                model: root.copies.trips

                TripLine {
                    width: column.width
                    busy: root.copies.busy
                    mayGiveUp: root.copies.barrier === ""
                    onReleaseAsked: root.releaseAsked(key, name, places)
                    onEndAsked: root.endAsked(key, name)
                }
            }
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
