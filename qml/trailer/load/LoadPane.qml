// SPDX-License-Identifier: MIT
//
// What to bring into the drawers, or to take out of them: ticked by a touch, by the space bar, or
// by typing or scanning its number; what is ticked is noted as one step. A bin or drawer that is
// scanned brings its line into hand, or is where to take what has no bin.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property LoadList load
    property bool outwards: false
    property bool busy: false
    property string problem: "" // Why the last deed was not done.

    signal explained(string sentence)

    function enter() {
        list.forceActiveFocus(Qt.OtherFocusReason);
    }
    /// Whether the code is something of this list.
    function scan(code: string): bool {
        if (!root.load.scan(code))
            return false;
        list.typed = "";
        root.explained(""); // What was said of a code before.
        root.enter();
        return true;
    }
    function refuse(code: string) {
        root.explained(qsTr("%1 is not on this list, or it is ticked already.").arg(code));
    }

    Connections {
        target: root.load

        function onFound(row: int) {
            list.show(row);
        }
        function onChanged() {
            home.follow();
        }
    }
    FileToWrite {
        id: paperFile

        nameFilters: ["PDF (*.pdf)", "XLSX (*.xlsx)", "CSV (*.csv)"]
        onAccepted: root.load.writeTo(selectedFile)
    }
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 6

        TickedList {
            id: list

            objectName: root.outwards ? "unloadList" : "loadList"
            model: root.load.rows
            focus: true
            section.property: "section"
            Accessible.name: root.outwards ? qsTr("what to take out of the drawers")
                                           : qsTr("what to bring into the drawers")
            Layout.fillWidth: true
            Layout.fillHeight: true
            onTicked: row => root.load.tick(row)
            onScanned: code => {
                if (!root.scan(code))
                    root.refuse(code);
            }
            delegate: LoadStop {
                width: list.width
                outwards: root.outwards
                current: ListView.isCurrentItem && list.activeFocus
                onClicked: {
                    list.currentIndex = index;
                    root.enter();
                    root.load.tick(index);
                }
            }

            Words {
                parent: list
                objectName: "loadNothing"
                anchors.centerIn: parent
                width: Math.min(parent.width - 48, 420)
                visible: list.count === 0
                text: root.outwards ? qsTr("Nothing is to be taken out: all that lies in the "
                                           + "drawers belongs there.")
                                    : qsTr("Nothing is to be brought: every drawer holds what it "
                                           + "is to hold.")
                quiet: true
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
            }
        }
        Words {
            visible: list.typed !== ""
            text: qsTr("typed or scanned: %1, Enter looks for it").arg(list.typed)
            Layout.fillWidth: true
            Layout.leftMargin: 12
        }
        Words {
            visible: text !== ""
            text: root.problem
            color: Theme.stop
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
            Layout.fillWidth: true
            Layout.leftMargin: 12
            Layout.rightMargin: 12
        }
        Flow {
            spacing: Theme.gap
            visible: list.count > 0
            Layout.fillWidth: true
            Layout.margins: 8

            ChoiceBox {
                id: home

                function follow() {
                    currentIndex = root.load.home;
                }

                objectName: "unloadHome"
                visible: root.load.wantsHome
                width: 220
                name: qsTr("where what has no bin goes")
                model: root.load.homes
                onModelChanged: follow()
                onActivated: index => root.load.home = index
                displayText: currentIndex < 0 ? qsTr("no bin: where to?")
                                              : qsTr("no bin: to %1").arg(currentText)
            }
            DeskButton {
                objectName: root.outwards ? "takeOutTicked" : "loadTicked"
                text: Gaps.fill(root.outwards ? qsTr("Note as taken out: %1 of %2")
                                              : qsTr("Note as brought: %1 of %2"),
                                root.load.tickedCount, root.load.tickableCount)
                enabled: !root.busy
                onClicked: root.load.finish(root.load.home)
            }
            DeskButton {
                objectName: root.outwards ? "tickAllOut" : "tickAllIn"
                text: root.load.tickedCount === root.load.tickableCount ? qsTr("Tick none")
                                                                        : qsTr("Tick all")
                framed: false
                onClicked: root.load.tickAll()
            }
            DeskButton {
                objectName: root.outwards ? "printOut" : "printIn"
                text: qsTr("Print…")
                framed: false
                Accessible.name: qsTr("write this list to a file")
                onClicked: {
                    paperFile.ask(root.load.fileName());
                }
            }
        }
    }
}
