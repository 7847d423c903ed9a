// SPDX-License-Identifier: MIT
//
// The list of what is short, under the day by which it is needed. Up and down walk it, Enter goes
// to what is known of the line in hand.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property LackingPage page

    signal entered()

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    function goTo(row: int) {
        const to = Math.max(0, Math.min(list.count - 1, row));
        if (list.count > 0)
            root.page.selected = root.page.keyAt(to);
    }

    ChosenLine {
        list: list
        rows: root.page.lines
        chosen: root.page.selected
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        LackingHead {
            columns: widths
            Layout.fillWidth: true
        }
        GroupedList {
            id: list

            objectName: "lackingList"
            model: root.page.lines
            focus: true
            cacheBuffer: 0
            reuseItems: true
            keyNavigationEnabled: false
            section.property: "by"
            Accessible.role: Accessible.Table
            Accessible.name: qsTr("what is short, %1 lines").arg(count)
            Layout.fillWidth: true
            Layout.fillHeight: true
            Keys.onUpPressed: root.goTo(currentIndex - 1)
            Keys.onDownPressed: root.goTo(currentIndex + 1)
            Keys.onReturnPressed: root.entered()
            Keys.onEnterPressed: root.entered()
            Keys.onPressed: event => {
                const page = Math.max(1, Math.floor(list.height / 46) - 1);
                const steps = {
                    [Qt.Key_PageUp]: currentIndex - page,
                    [Qt.Key_PageDown]: currentIndex + page,
                    [Qt.Key_Home]: 0,
                    [Qt.Key_End]: count - 1
                };
                if (steps[event.key] !== undefined) {
                    root.goTo(steps[event.key]);
                    event.accepted = true;
                }
            }
            delegate: LackingLine {
                objectName: "lackingLine"
                width: list.width
                columns: widths
                current: ListView.isCurrentItem
                inHand: list.activeFocus
                onClicked: {
                    root.enter();
                    root.page.selected = key;
                }
                onDoubleClicked: root.entered()
            }

            Words {
                objectName: "lackingNothing"
                anchors.centerIn: parent
                width: Math.min(parent.width - 48, 460)
                visible: text !== ""
                text: root.page.nothing
                quiet: true
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
            }
        }
    }
    LackingColumns {
        id: widths

        width: list.width
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
