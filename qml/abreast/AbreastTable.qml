// SPDX-License-Identifier: MIT
//
// The parts that the builds want, each with a cell for each build. The arrows walk the cells; with
// Ctrl, left and right try the day of the build in hand. Enter goes on from a cell.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property AbreastDesk abreast
    required property AbreastColumns columns
    property bool roomy: true

    signal entered()
    signal dayAsked(string build)

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    function goTo(row: int) {
        const to = Math.max(0, Math.min(list.count - 1, row));
        if (list.count > 0)
            root.abreast.part = root.abreast.lines.cell(to, "key");
    }
    function goToColumn(column: int) {
        const to = Math.max(0, Math.min(columns.count - 1, column));
        if (columns.count > 0)
            root.abreast.build = root.abreast.heads.cell(to, "key");
        columns.show(to);
    }
    function move(column: int, days: int) {
        root.goToColumn(column);
        root.abreast.move(root.abreast.build, days);
    }
    function arrow(event: var, by: int) {
        if (event.modifiers & Qt.ControlModifier)
            root.move(root.abreast.column, event.modifiers & Qt.ShiftModifier ? 7 * by : by);
        else
            root.goToColumn(root.abreast.column + by);
    }
    function sync() {
        list.currentIndex = root.abreast.lines.rowOf(root.abreast.part);
        if (root.abreast.column >= 0)
            columns.show(root.abreast.column);
    }

    Component.onCompleted: sync()

    Connections {
        target: root.abreast

        function onInHandChanged() {
            root.sync();
        }
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        AbreastHeads {
            objectName: "abreastHeads"
            heads: root.abreast.heads
            columns: root.columns
            column: root.abreast.column
            implicitHeight: root.roomy ? 122 : 108
            Layout.fillWidth: true
            onStepped: by => root.goToColumn(root.abreast.column + by)
            onChosen: column => root.goToColumn(column)
            onMoved: (column, days) => root.move(column, days)
            onDayAsked: column => {
                root.goToColumn(column);
                root.dayAsked(root.abreast.build);
            }
            onDownAsked: root.enter()
        }
        Rectangle {
            implicitHeight: 1
            color: Theme.ruleStrong
            Layout.fillWidth: true
        }
        GroupedList {
            id: list

            objectName: "abreastList"
            step: root.columns.line
            model: Steps {
                of: root.abreast.lines
                onSettled: root.sync()
            }
            focus: true
            keyNavigationEnabled: false
            section.property: "group"
            Accessible.role: Accessible.Table
            Accessible.name: qsTr("who gets what, %1 parts").arg(count)
            Layout.fillWidth: true
            Layout.fillHeight: true
            Keys.onUpPressed: root.goTo(currentIndex - 1)
            Keys.onDownPressed: root.goTo(currentIndex + 1)
            Keys.onLeftPressed: event => root.arrow(event, -1)
            Keys.onRightPressed: event => root.arrow(event, 1)
            Keys.onReturnPressed: root.entered()
            Keys.onEnterPressed: root.entered()
            Keys.onPressed: event => {
                const page = Math.max(1, Math.floor(list.height / root.columns.line) - 1);
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
            delegate: AbreastLine {
                objectName: "abreastLine"
                width: list.width
                columns: root.columns
                current: ListView.isCurrentItem
                inHand: list.activeFocus
                column: root.abreast.column
                onChosen: column => {
                    root.enter();
                    root.abreast.part = key;
                    root.goToColumn(column);
                }
                onEntered: root.entered()
            }

            Words {
                objectName: "abreastNothing"
                anchors.centerIn: parent
                width: Math.min(parent.width - 48, 480)
                visible: text !== ""
                text: root.abreast.nothing
                quiet: true
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
            }
        }
    }
    FocusFrame {
        visible: list.activeFocus
    }
}
