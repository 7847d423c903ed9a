// SPDX-License-Identifier: MIT
//
// The walk past the bins in their order: what is in the hand is ticked by a touch, by the space
// bar, or by typing or scanning its number; what is ticked goes to the car.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property Rows picks
    required property string notFound
    required property int tickedCount
    property bool busy: false

    signal ticked(int row)
    signal scanned(string code)
    signal issued(bool all)

    title: qsTr("Pick, in the order of the bins")
    about: qsTr("Space, a touch or a scan ticks what is in the hand.")
    onOpened: list.forceActiveFocus()
    onClosed: list.typed = ""

    function show(row: int) {
        list.typed = "";
        list.show(row);
    }

    Shortcut { // What was just issued comes back without leaving the walk.
        sequence: "Ctrl+Z"
        enabled: root.opened && Desk.canTakeBack
        onActivated: Desk.takeBack()
    }
    TickedList {
        id: list

        objectName: "pickList"
        model: root.picks
        Accessible.name: qsTr("what to take where")
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: 96
        Layout.preferredHeight: contentHeight
        onTicked: row => root.ticked(row)
        onScanned: code => root.scanned(code)
        delegate: PickLine {
            objectName: "pickLine"
            width: list.width
            current: ListView.isCurrentItem && list.activeFocus
            onClicked: {
                list.currentIndex = index;
                root.ticked(index);
            }
        }
    }
    Words {
        visible: list.typed !== ""
        text: qsTr("typed or scanned: %1, Enter looks for it").arg(list.typed)
        Layout.fillWidth: true
    }
    ShortLine {
        visible: root.notFound !== ""
        text: root.notFound
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "issueTicked"
            text: Gaps.fill(qsTr("Issue what is ticked: %1 of %2"),
                            root.tickedCount, root.picks.count)
            enabled: !root.busy
            onClicked: {
                list.forceActiveFocus(Qt.OtherFocusReason);
                root.issued(false);
            }
        }
        DeskButton {
            objectName: "issueAll"
            text: qsTr("Issue all")
            enabled: !root.busy
            onClicked: {
                list.forceActiveFocus(Qt.OtherFocusReason);
                root.issued(true);
            }
        }
        DeskButton {
            text: qsTr("Back to the build  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
